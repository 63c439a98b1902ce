package compare

import (
	"context"
	"math"

	"dhwcompare/compare/calendar"
	"dhwcompare/compare/household"
	"dhwcompare/compare/plant"
)

// meanFlow is the flow of the household's showers, behind a limiter if one is
// fitted.
func (b *testBench) meanFlow() float64 {
	flow := b.c.Household.ShowerFlowLPerMin
	if limit := b.control.ShowerLimit; limit > 0 {
		return math.Min(flow, limit)
	}
	return flow
}

// secondShower takes two mean showers with a pause between them, the heat pump on
// its controls.
func (b *testBench) secondShower(ctx context.Context, at conditions, pauseMin float64) (SecondShower, error) {
	length := b.c.Household.ShowerMinutes
	lasts := func(pause float64) (float64, error) {
		first := b.shower(1, b.meanFlow(), length)
		second := b.shower(1+(length+pause)*secondsPerMinute, b.meanFlow(), longestShowerMin)
		return b.lasts(ctx, at, plant.Override{}, []household.Draw{first, second})
	}
	minutes, err := lasts(pauseMin)
	if err != nil {
		return SecondShower{}, err
	}
	s := SecondShower{Minutes: minutes, Serves: minutes >= length, ShortestPauseMin: -1}
	for pause := 0.0; pause <= longestPauseMin; pause += 2.5 {
		got, err := lasts(pause)
		if err != nil {
			return s, err
		}
		if got >= length {
			s.ShortestPauseMin = pause
			break
		}
	}
	return s, nil
}

// steadyFlow finds the largest shower flow that never runs cold with the heat
// pump at the output that its control allows.
func (b *testBench) steadyFlow(ctx context.Context, at conditions) (float64, error) {
	return largest(1, largestTestFlow, 0.1, func(flow float64) (bool, error) { return b.goesOn(ctx, at, flow) })
}

// steadyHours is long enough for what a vessel holds at the start to be spent: 300 l
// at 45 C give no more than 1 l/min for so long, and less than half of that where
// the flow itself keeps most of the vessel warm.
const steadyHours = 6

// goesOn reports whether a shower stays warm for hours on end. It starts from a
// vessel that is just hot enough for it, lest what is stored pass for output.
func (b *testBench) goesOn(ctx context.Context, at conditions, flow float64) (bool, error) {
	h := &b.c.Household
	watch := coldWatch{minC: h.ShowerMinC, patienceS: b.c.Service.ColdSeconds}
	barelyC := math.Min(b.setpoint(at.month), h.ShowerC+h.ShowerMixerMargin)
	p, start := b.set(at, barelyC)
	in := b.inputs(start, b.shower(1, flow, steadyHours*minutesPerHour))
	err := runUntil(ctx, p, start, start+steadyHours*calendar.HourS, in, plant.Override{Mode: plant.On}, func(s *plant.Sample) bool {
		watch.see(s)
		return watch.failed
	})
	return !watch.failed, err
}

// largest finds the largest value up to high that holds, when all below it do, to
// the given resolution; 0 if not even low holds.
func largest(low, high, resolution float64, holds func(float64) (bool, error)) (float64, error) {
	if ok, err := holds(low); err != nil || !ok {
		return 0, err
	}
	if ok, err := holds(high); err != nil || ok {
		return high, err
	}
	for high-low > resolution {
		middle := (low + high) / 2
		ok, err := holds(middle)
		if err != nil {
			return 0, err
		}
		if ok {
			low = middle
		} else {
			high = middle
		}
	}
	return low, nil
}

// bath fills the household's mean bath at several flows with the heat pump on its
// controls.
func (b *testBench) bath(ctx context.Context, at conditions) (BathTest, error) {
	h := &b.c.Household
	outlet := household.Outlets(h.Bathrooms)
	best := BathTest{}
	for flow := 14.0; flow >= 4; flow -= 2 {
		d := household.Draw{
			StartS: 1, Kind: household.Bath, FlowLPerMin: flow, WantC: h.BathC, MinC: h.BathMinC,
			End: household.End{By: household.ByLitres, Amount: h.BathLitres},
		}
		for i, o := range outlet {
			if o.Place == household.AtBath {
				d.Outlet = i
			}
		}
		l, err := b.run(ctx, at, plant.Override{}, 2*calendar.HourS, []household.Draw{d}, nil)
		if err != nil {
			return best, err
		}
		o := l.Outcomes[0]
		test := BathTest{FlowLPerMin: flow, Minutes: (o.WaitS + o.FlowingS) / secondsPerMinute, MeanC: o.MeanC, Serves: !o.Failed}
		if test.Serves {
			return test, nil
		}
		if test.MeanC > best.MeanC {
			best = test
		}
	}
	return best, nil
}

// recharge times the heat pump from the end of a mean shower until it stops.
func (b *testBench) recharge(ctx context.Context, at conditions) (float64, error) {
	length := b.c.Household.ShowerMinutes * secondsPerMinute
	return b.runsFor(ctx, at, 1+length, []household.Draw{b.shower(1, b.meanFlow(), b.c.Household.ShowerMinutes)})
}

// heatUp times the heat pump from a vessel of mains water until it stops.
func (b *testBench) heatUp(ctx context.Context, at conditions) (float64, error) {
	p, start := b.set(at, b.setpoint(at.month))
	p.Charge(at.mainsC)
	p.WarmLoop(b.c.Dwelling.RoomC)
	return timed(ctx, p, b.inputs(start), start, start)
}

func (b *testBench) runsFor(ctx context.Context, at conditions, afterS float64, draws []household.Draw) (float64, error) {
	p, start := b.set(at, b.setpoint(at.month))
	return timed(ctx, p, b.inputs(start, draws...), start, start+afterS)
}

// timed runs a plant with the heat pump on and gives the minutes from the stated
// moment until it stands still; negative when it did not within the test.
func timed(ctx context.Context, p *plant.Plant, in plant.Inputs, start, from float64) (float64, error) {
	const longestS = 12 * calendar.HourS
	stop := -1.0
	ran := false
	err := runUntil(ctx, p, start, start+longestS, in, plant.Override{Mode: plant.On}, func(s *plant.Sample) bool {
		ran = ran || s.Running
		if ran && !s.Running && s.T >= from {
			stop = s.T
		}
		return stop >= 0
	})
	if stop < 0 {
		return -1, err
	}
	return (stop - from) / secondsPerMinute, err
}

// strips follows some showers: January and July, heat pump full and off, at the
// household's flow.
func (b *testBench) strips(ctx context.Context, r *DrawoffResults) error {
	for _, month := range []int{0, 6} {
		for _, state := range pumpStates() {
			strip := Strip{Month: month + 1, State: state.name, FlowLPerMin: b.meanFlow()}
			flowing := 0.0
			draws := []household.Draw{b.shower(1, b.meanFlow(), longestShowerMin)}
			_, err := b.run(ctx, b.c.ofMonth(month), state.override, longestShowerMin*secondsPerMinute, draws, func(s *plant.Sample) {
				if len(s.Draws) == 0 || s.Draws[0].Waiting {
					return
				}
				const spacingMin = 0.25
				if n := len(strip.Points); n == 0 || flowing/secondsPerMinute-strip.Points[n-1].Minute >= spacingMin {
					strip.Points = append(strip.Points, StripPoint{Minute: flowing / secondsPerMinute, C: s.Draws[0].DeliveredC})
				}
				flowing += s.Dt
			})
			if err != nil {
				return err
			}
			r.Strips = append(r.Strips, strip)
		}
	}
	return nil
}
