package compare

import (
	"context"
	"math"

	"dhwcompare/compare/plant"
)

// DesignRule is the rule of practice that a store should bridge a defrost and
// the restart: so many minutes of shower from the store alone in the month of
// the coldest mains (common practice, no source).
type DesignRule struct {
	NeedMin float64 `json:"need_minutes"`
	Month   int     `json:"month"` // 1 is January
	HaveMin float64 `json:"have_minutes"`
	Holds   bool    `json:"holds"`
	// SetpointC and FlowLPerMin each meet the rule with all else as it is; zero
	// where nothing within limits does.
	SetpointC   float64 `json:"setpoint_that_meets_it_c"`
	FlowLPerMin float64 `json:"flow_that_meets_it_l_per_min"`
}

const (
	ruleMinutes     = 8
	setpointStepK   = 0.5
	flowResolution  = 0.1
	leastShowerFlow = 3
)

func (b *testBench) designRule(ctx context.Context) (DesignRule, error) {
	month := b.c.coldestMains()
	at := b.c.ofMonth(month)
	rule := DesignRule{NeedMin: ruleMinutes, Month: month + 1}
	off := plant.Override{Mode: plant.Off}
	have, err := b.showerMinutes(ctx, at, off, b.meanFlow())
	if err != nil {
		return rule, err
	}
	rule.HaveMin, rule.Holds = have, have >= ruleMinutes
	rule.FlowLPerMin, err = largest(leastShowerFlow, largestTestFlow, flowResolution, func(flow float64) (bool, error) {
		minutes, err := b.showerMinutes(ctx, at, off, flow)
		return minutes >= ruleMinutes, err
	})
	if err != nil {
		return rule, err
	}
	rule.SetpointC, err = b.ruleSetpoint(ctx, at)
	return rule, err
}

// ruleSetpoint finds the lowest setpoint that meets the rule, 0 for none.
func (b *testBench) ruleSetpoint(ctx context.Context, at conditions) (float64, error) {
	defer func(kept Control) { b.control = kept }(b.control)
	b.control.MonthSetpointC = nil
	for setpoint := b.c.Household.ShowerMinC; setpoint <= b.c.highestSetpointC(b.control); setpoint += setpointStepK {
		b.control.SetpointC = setpoint
		minutes, err := b.showerMinutes(ctx, at, plant.Override{Mode: plant.Off}, b.meanFlow())
		if err != nil || minutes >= ruleMinutes {
			return setpoint, err
		}
	}
	return 0, nil
}

// coldestMains gives the month of the coldest mains water.
func (c *Case) coldestMains() int {
	mains, _ := c.Climate.Mains()
	coldest := 0
	for m, t := range mains {
		if t < mains[coldest] {
			coldest = m
		}
	}
	return coldest
}

// highestSetpointC is the highest setpoint that heat pump and controller allow.
func (c *Case) highestSetpointC(k Control) float64 {
	return math.Min(c.HeatPump.Limits.LargestSetpointC, c.HeatPump.HighestFlowC-k.FlowAboveK)
}
