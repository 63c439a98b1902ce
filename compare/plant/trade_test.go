package plant

import (
	"math"
	"testing"

	"dhwcompare/compare/household"
)

// Facts of the trade about a store of 60 litres at 55 C with mains at 19 C, in
// summer: common practice, no source, and bands, never targets to tune to. The unit
// is the small one of the map on a day of 26 C, on which it gives about 9 kW; capped
// it gives 4 kW. "Usable" is 38 C, "hot" 40 C. The facts speak of the water at the
// store, so there is no dead leg and the tap mixes by hand (margin 0); what a
// thermostatic shower (5 K) makes of it is logged beside.
const (
	tradeOutdoorC = 26
	tradeMainsC   = 19
	tradeCap      = 0.45
)

func sixtyLitres(t testing.TB, outputCap, marginK float64) Params {
	t.Helper()
	p := atTheStore(compactParams(t), marginK)
	p.Control.OutputCap = outputCap
	return p
}

// taken draws from the store and logs the same with a thermostatic mixer.
func taken(t *testing.T, outputCap float64, mode Mode, d household.Draw) course {
	t.Helper()
	manual := drawn(t, sixtyLitres(t, outputCap, 0), mode, d, tradeOutdoorC, tradeMainsC)
	thermostatic := drawn(t, sixtyLitres(t, outputCap, 5), mode, d, tradeOutdoorC, tradeMainsC)
	for _, c := range []struct {
		mixer string
		course
	}{{"manual", manual}, {"thermostatic", thermostatic}} {
		t.Logf("%s mixer, %g l/min: hot for %.1f min, usable for %.1f min and %.0f l, coldest %.1f C; return below 40 C after %.1f min, unit on after %.0f s",
			c.mixer, d.FlowLPerMin, c.fullMin, c.lastsMin, c.litres, c.coldestC, c.returnMin, c.firstRunS)
	}
	return manual
}

// Heat pump off: 6 l/min for 5 minutes still hot, then 8 to 9 l/min to 7 or 8
// minutes; 45 to 70 litres of 40 C in all. The flow is turned up by a second draw
// from the same outlet.
func TestTradeHeatPumpOff(t *testing.T) {
	p := sixtyLitres(t, 1, 0)
	slow, fast := shower(6, 5), shower(8.5, 15)
	fast.StartS = slow.StartS + slow.End.Amount
	litres, hotS, firstHalfC := 0.0, math.NaN(), math.Inf(1)
	watch := func(s *Sample) {
		if len(s.Draws) != 1 || !math.IsNaN(hotS) {
			return
		}
		d := s.Draws[0]
		if d.DeliveredC < slow.MinC {
			hotS = s.T - slow.StartS
			return
		}
		if s.T < fast.StartS {
			firstHalfC = math.Min(firstHalfC, d.DeliveredC)
		}
		litres += d.FlowLPerMin * s.Dt / secondsPerMinute
	}
	in := Inputs{Weather: steady(tradeOutdoorC, tradeMainsC), Draws: []household.Draw{slow, fast}}
	if err := New(p).Run(t.Context(), noon, noon+1200, in, Override{Mode: Off}, Recorder{Trace: watch}); err != nil {
		t.Fatal(err)
	}
	band{39.9, 40}.check(t, "coldest of the first 5 minutes", firstHalfC)
	band{7, 9}.check(t, "minutes in all", hotS/secondsPerMinute)
	band{45, 70}.check(t, "litres", litres)
}

// Capped at 4 kW and running, 5 l/min: usable beyond 7 minutes with the return not
// below 40 C until then. The unit is in the midst of a run as the store passes 55 C;
// one that has first to warm the 11 litres in its cold pipes, which takes 9 K from
// such a store, is logged beside.
func TestTradeCapped(t *testing.T) {
	taken(t, tradeCap, On, shower(5, 30))
	p := sixtyLitres(t, tradeCap, 0)
	p.Control.SetpointC = 60
	c := drawnFrom(t, running(t, p, 55, tradeOutdoorC, tradeMainsC), On, shower(5, 30), tradeOutdoorC, tradeMainsC)
	band{7, 30}.check(t, "usable for, min", c.lastsMin)
	band{7, 30}.check(t, "return at 40 C and above for, min", c.returnMin)
}

// Full output, 5 l/min: at least 10 minutes, by its own controls and also when it
// runs from the start.
func TestTradeFullOutput(t *testing.T) {
	for _, mode := range []Mode{Normal, On} {
		c := taken(t, 1, mode, shower(5, 30))
		band{10, 30}.check(t, "hot for, min", c.fullMin)
	}
}

// Full output from the start, 7 l/min: 40 C held for 15 minutes, which is a bath.
func TestTradeBathAtFullOutput(t *testing.T) {
	c := taken(t, 1, On, shower(7, 20))
	band{15, 20}.check(t, "40 C for, min", c.fullMin)
}

// Full bore, 15 to 20 l/min with the limit of the mains lifted: below 38 C within
// 1.3 to 3.5 minutes, with about a third of a bath drawn. A bath is 100 to 150
// litres at 40 C; a third, give or take a quarter of it, is 25 to 62.
func TestTradeFullBore(t *testing.T) {
	for _, mode := range []Mode{Off, Normal} {
		for _, flow := range []float64{15, 20} {
			p := sixtyLitres(t, 1, 0)
			p.Supply.LargestFlowLPerMin = 2 * flow
			c := drawn(t, p, mode, shower(flow, 10), tradeOutdoorC, tradeMainsC)
			band{1.3, 3.5}.check(t, "usable for, min", c.lastsMin)
			band{25, 62}.check(t, "litres", c.litres)
		}
	}
}

// A short shower with the heat pump off can be as good as one with it running
// capped, because circulation flattens the layers: off, the top stays hot while the
// bottom cools. As good: not less than 95 % of the minutes.
func TestTradeOffIsAsGoodAsCapped(t *testing.T) {
	short := shower(7, 20)
	off := taken(t, tradeCap, Off, short)
	for _, mode := range []Mode{On, Normal} {
		capped := taken(t, tradeCap, mode, short)
		band{0.95, 2}.check(t, "minutes off over minutes capped", off.lastsMin/capped.lastsMin)
		band{0, 12}.check(t, "spread of the store while it runs, K", capped.topOverBtm)
	}
	// Without circulation the spread is most of the way from mains to store.
	if got := spreadAfter(t, 4); got < 25 {
		t.Errorf("spread after 4 minutes with the heat pump off: %.1f K", got)
	}
}

// spreadAfter gives top less bottom after some minutes of 7 l/min with the heat
// pump off.
func spreadAfter(t *testing.T, minutes float64) float64 {
	t.Helper()
	pl := New(sixtyLitres(t, 1, 0))
	in := Inputs{Weather: steady(tradeOutdoorC, tradeMainsC), Draws: []household.Draw{shower(7, 20)}}
	marched(t, pl, noon, noon+minutes*secondsPerMinute, in, Override{Mode: Off})
	return pl.vessel.AtC(1) - pl.vessel.AtC(0)
}

// The same shower by the unit's own controls. The sensor at half height reads hot
// until half the store is spent, so the unit comes on after three minutes and more,
// and its circulation then mixes what was left on top: the water dips before heat
// comes. Logged for comparison; what is asked for is only that the dip is there and
// that a unit that runs from the start avoids it.
func TestLateStartDipsTheOutlet(t *testing.T) {
	late := taken(t, 1, Normal, shower(7, 20))
	early := taken(t, 1, On, shower(7, 20))
	band{100, 300}.check(t, "unit on after, s", late.firstRunS)
	if !(late.fullMin < early.fullMin) {
		t.Errorf("late start: hot for %.1f min; early: %.1f min", late.fullMin, early.fullMin)
	}
}
