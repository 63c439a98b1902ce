package compare

import "context"

// EqualService is the cheapest way in which an option keeps the service rule: the
// setpoint, and if need be a flow limiter on the showers, found by a bounded search
// and confirmed over the whole ensemble.
type EqualService struct {
	Meets       bool    `json:"meets"`
	SetpointC   float64 `json:"setpoint_c"`
	ShowerLimit float64 `json:"shower_limit_l_per_min"` // 0: none
	Trial       *Trial  `json:"trial"`                  // nil where nothing within limits keeps the rule
	Note        string  `json:"note"`
	// Remedied is what it costs; null where nothing keeps the rule.
	Remedied *Remedied `json:"costs"`
}

// Bounds of the search.
const (
	screenYears      = 3
	equalStepK       = 1.0
	equalBelowK      = 6.0 // how far below the case's setpoint it looks
	leastSetpointC   = 40.0
	noLimiter        = 0.0
	limiterStepLPMin = 1.0
)

// equalService searches one option. Failures fall and cost rises with the
// setpoint, so the lowest setpoint that keeps the rule is the cheapest; a limiter
// is tried only where no setpoint does. The years already lived as the case states
// it, if any are given, are not lived again.
func (c *Case) equalService(ctx context.Context, s *scout, side Side, asStated []YearRecord) (EqualService, error) {
	grid := c.setpointGrid(side)
	for _, limiter := range c.limiters() {
		found, err := c.lowestServing(ctx, s, side, grid, limiter, asStated)
		if err != nil || found.Meets {
			return found, err
		}
	}
	return EqualService{Note: "no setpoint that heat pump and controller allow keeps the rule, with or without a flow limiter"}, nil
}

// setpointGrid lists the setpoints to look at, rising.
func (c *Case) setpointGrid(side Side) []float64 {
	k := c.control(side)
	low := max(leastSetpointC, k.SetpointC-equalBelowK)
	var grid []float64
	for t := low; t <= c.highestSetpointC(k); t += equalStepK {
		grid = append(grid, t)
	}
	return grid
}

// limiters lists the flow limiters to try, from none to the tightest.
func (c *Case) limiters() []float64 {
	const tightest = 5
	list := []float64{noLimiter}
	for f := c.Household.ShowerFlowLPerMin - limiterStepLPMin; f >= tightest; f -= limiterStepLPMin {
		list = append(list, f)
	}
	return list
}

// lowestServing finds the lowest setpoint of a grid that keeps the rule.
func (c *Case) lowestServing(ctx context.Context, s *scout, side Side, grid []float64, limiter float64, asStated []YearRecord) (EqualService, error) {
	r := &rungs{at: make([]*lived, len(grid)), screen: min(c.Years, screenYears), years: c.Years, asStated: none}
	for i, setpointC := range grid {
		r.at[i] = s.begin(c.withSetpoint(side, setpointC, limiter), side, func() {})
		if limiter == noLimiter && len(asStated) > 0 && c.control(side).keptAllYear(setpointC) {
			r.at[i].recall(asStated)
			r.asStated = i
		}
	}
	lowest, err := r.lowest(ctx)
	if err != nil || lowest == len(grid) {
		return EqualService{}, err
	}
	home := r.at[lowest]
	t := home.trial(c.Years)
	return EqualService{Meets: true, SetpointC: grid[lowest], ShowerLimit: home.c.control(side).ShowerLimit, Trial: &t}, nil
}

// withSetpoint gives the case with one option kept at a setpoint all year, and with a
// flow limiter where one is given.
func (c *Case) withSetpoint(side Side, setpointC, limiter float64) *Case {
	return c.withControl(side, func(k *Control) {
		k.SetpointC, k.MonthSetpointC = setpointC, nil
		if limiter > 0 {
			k.ShowerLimit = limiter
		}
	})
}

// keptAllYear reports whether the control as stated keeps one setpoint all year.
func (k Control) keptAllYear(setpointC float64) bool {
	return k.SetpointC == setpointC && k.MonthSetpointC == nil
}
