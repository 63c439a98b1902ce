package compare

import (
	"context"
	"fmt"
	"math"

	"dhwcompare/tariffs"
)

// Sensitivity says which uncertain inputs move the decision, one at a time; it
// does not show what two of them do together.
type Sensitivity struct {
	Years  int                `json:"years"`
	Base   SensitivityPoint   `json:"base"`
	Inputs []SensitivityInput `json:"inputs"` // by width of the cost difference, widest first
}

// SensitivityInput is one input between a low and a high value.
type SensitivityInput struct {
	Name      string           `json:"name"`
	Label     string           `json:"label"`
	Unit      string           `json:"unit"`
	BaseValue float64          `json:"base_value"`
	LowValue  float64          `json:"low_value"`
	HighValue float64          `json:"high_value"`
	Low       SensitivityPoint `json:"low"`
	High      SensitivityPoint `json:"high"`
	// TurnsAt is the value nearest the base at which the verdict turns, null if it
	// does not turn between low and high.
	TurnsAt *float64 `json:"turns_at"`
	Turns   string   `json:"turns"`
}

// SensitivityPoint is the decision at one value.
type SensitivityPoint struct {
	Recommend       Recommendation `json:"recommend"`
	CostDifference  float64        `json:"cost_difference"` // compact store less cylinder
	FailingCompact  float64        `json:"failing_showers_compact"`
	FailingCylinder float64        `json:"failing_showers_cylinder"`
}

// width is the span of the cost difference.
func (i *SensitivityInput) width() float64 {
	return math.Abs(i.High.CostDifference - i.Low.CostDifference)
}

// lever is an input that can be set.
type lever struct {
	name, label, unit string
	base, low, high   float64
	set               func(c *Case, value float64)
}

// levers lists the uncertain inputs with their ranges. The ranges are judgements
// (practice, no source) unless the key's own documentation says otherwise.
func (c *Case) levers() []lever {
	h := &c.Household
	list := []lever{
		{"household.people", "people", "", h.People, max(1, h.People-1), h.People + 1, func(c *Case, v float64) { c.Household.People = v }},
		{"household.shower_minutes", "length of a shower", "min", h.ShowerMinutes, 0.7 * h.ShowerMinutes, 1.4 * h.ShowerMinutes, func(c *Case, v float64) { c.Household.ShowerMinutes = v }},
		{"household.shower_flow_l_per_min", "flow of a shower", "l/min", h.ShowerFlowLPerMin, h.ShowerFlowLPerMin - 1.5, h.ShowerFlowLPerMin + 2, func(c *Case, v float64) { c.Household.ShowerFlowLPerMin = v }},
		{"climate.mains_c", "mains water warmer by", "K", 0, -2, 2, shiftMains},
		{"climate.outdoor_c", "outdoor air warmer by", "K", 0, -2, 2, func(c *Case, v float64) {
			for m := range c.Climate.OutdoorC {
				c.Climate.OutdoorC[m] += v
			}
		}},
		{"tariffs", "unit rates times", "", 1, 0.75, 1.25, scaleRates},
		{"heat_pump.field_derate", "efficiency in the field over the test bench", "", c.HeatPump.FieldDerate, 0.80, 1, func(c *Case, v float64) { c.HeatPump.FieldDerate = v }},
		{"heat_pump.load_penalty", "efficiency lost at full output", "", c.HeatPump.LoadPenalty, 0.02, 0.12, func(c *Case, v float64) { c.HeatPump.LoadPenalty = v }},
		{"standing_loss", "standing losses of both times", "", 1, 0.7, 1.5, scaleLosses},
		{"pipes.loss", "loop losses times", "", 1, 0.5, 2, func(c *Case, v float64) {
			c.Pipes.IndoorLossWPerK *= v
			c.Pipes.OutdoorLossWPerK *= v
		}},
		{"compact_store.control.setpoint_c", "setpoint of the compact store", "C", c.Compact.Control.SetpointC, c.Compact.Control.SetpointC - 4, min(c.Compact.Control.SetpointC+4, c.highestSetpointC(c.Compact.Control)), func(c *Case, v float64) { c.Compact.Control.SetpointC, c.Compact.Control.MonthSetpointC = v, nil }},
		{"cylinder.control.setpoint_c", "setpoint of the cylinder", "C", c.Cylinder.Control.SetpointC, c.Cylinder.Control.SetpointC - 3, min(c.Cylinder.Control.SetpointC+5, c.highestSetpointC(c.Cylinder.Control)), func(c *Case, v float64) { c.Cylinder.Control.SetpointC, c.Cylinder.Control.MonthSetpointC = v, nil }},
	}
	if c.Compact.CoilUAWPerK == nil && c.Compact.CoilBodyL == nil {
		list = append(list, lever{"compact_store.coil_length_m", "length of the store's coil", "m", c.Compact.CoilLengthM, 0.6 * c.Compact.CoilLengthM, 1.2 * c.Compact.CoilLengthM, func(c *Case, v float64) { c.Compact.CoilLengthM = v }})
	}
	return list
}

func shiftMains(c *Case, byK float64) {
	mains, _ := c.Climate.Mains()
	for m := range mains {
		mains[m] = max(mains[m]+byK, leastMainsC)
	}
	c.Climate.MainsC = &mains
}

// leastMainsC keeps shifted mains water liquid.
const leastMainsC = 2

func scaleRates(c *Case, by float64) {
	scaled := make([]tariffs.Tariff, len(c.Tariffs))
	for i := range c.Tariffs {
		scaled[i] = c.Tariffs[i].Scaled(by)
	}
	c.Tariffs = scaled
}

func scaleLosses(c *Case, by float64) {
	for side := range sides {
		b := c.body(side)
		w := b.StandingLossW() * by
		b.LossW = &w
	}
}

// Sensitivities moves each input to its ends and looks for where the verdict
// turns.
func Sensitivities(ctx context.Context, c *Case, n, workers int, progress Progress) (*Sensitivity, error) {
	s := &Sensitivity{Years: n}
	p := prober{c: c, n: n, workers: workers}
	var err error
	if s.Base, err = p.at(ctx, func(*Case) {}); err != nil {
		return nil, err
	}
	levers := c.levers()
	for i, l := range levers {
		input, err := p.input(ctx, l, s.Base)
		if err != nil {
			return nil, err
		}
		s.insert(input)
		if progress != nil {
			progress(i+1, len(levers))
		}
	}
	return s, nil
}

// insert keeps the inputs in order of width; equals stay in the order of the list.
func (s *Sensitivity) insert(in SensitivityInput) {
	i := len(s.Inputs)
	for i > 0 && s.Inputs[i-1].width() < in.width() {
		i--
	}
	s.Inputs = append(s.Inputs, SensitivityInput{})
	copy(s.Inputs[i+1:], s.Inputs[i:])
	s.Inputs[i] = in
}

// prober evaluates changed cases.
type prober struct {
	c          *Case
	n, workers int
}

func (p *prober) at(ctx context.Context, change func(*Case)) (SensitivityPoint, error) {
	changed := *p.c
	change(&changed)
	changed.Years = p.n
	cmp, err := Compare(ctx, &changed, p.workers, nil)
	if err != nil {
		return SensitivityPoint{}, err
	}
	return SensitivityPoint{
		Recommend: cmp.Verdict.Recommend, CostDifference: cmp.Difference.CostPerYear,
		FailingCompact: cmp.Options.Compact.FailingShowers, FailingCylinder: cmp.Options.Cylinder.FailingShowers,
	}, nil
}

func (p *prober) input(ctx context.Context, l lever, base SensitivityPoint) (SensitivityInput, error) {
	in := SensitivityInput{Name: l.name, Label: l.label, Unit: l.unit, BaseValue: l.base, LowValue: l.low, HighValue: l.high}
	at := func(v float64) (SensitivityPoint, error) { return p.at(ctx, func(c *Case) { l.set(c, v) }) }
	var err error
	if in.Low, err = at(l.low); err != nil {
		return in, err
	}
	if in.High, err = at(l.high); err != nil {
		return in, err
	}
	for _, end := range []struct {
		value float64
		point SensitivityPoint
	}{{l.low, in.Low}, {l.high, in.High}} {
		if end.point.Recommend == base.Recommend {
			continue
		}
		turn, err := turning(l.base, end.value, base.Recommend, at)
		if err != nil {
			return in, err
		}
		if in.TurnsAt == nil || math.Abs(turn-l.base) < math.Abs(*in.TurnsAt-l.base) {
			in.TurnsAt = &turn
		}
	}
	in.Turns = in.turnsText()
	return in, nil
}

// turnSteps halves the interval in which the verdict turns so often: the answer is
// good to a thirty-second of it.
const turnSteps = 5

// turning finds where the verdict leaves that of the base, between the base and an
// end where it is another.
func turning(base, end float64, kept Recommendation, at func(float64) (SensitivityPoint, error)) (float64, error) {
	for range turnSteps {
		middle := (base + end) / 2
		point, err := at(middle)
		if err != nil {
			return 0, err
		}
		if point.Recommend == kept {
			base = middle
		} else {
			end = middle
		}
	}
	return (base + end) / 2, nil
}

func (i *SensitivityInput) turnsText() string {
	if i.TurnsAt == nil {
		return "does not turn"
	}
	unit := i.Unit
	if unit != "" {
		unit = " " + unit
	}
	return fmt.Sprintf("turns at about %.3g%s", *i.TurnsAt, unit)
}
