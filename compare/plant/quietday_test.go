package plant

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/stat"

	"dhwcompare/compare/calendar"
)

// quietDay lives through a day without draws in unchanging weather.
func quietDay(t *testing.T, p Params, outdoorC float64) *Month {
	t.Helper()
	l := marched(t, New(p), 0, calendar.DayS, Inputs{Weather: steady(outdoorC, 10)}, Override{})
	return &l.Months[0]
}

// alwaysAllowed lets an option heat at any hour, so that a day is not one run.
func alwaysAllowed(p Params) Params {
	p.Control.Allowed = Schedule{}
	return p
}

// On a day without draws a wider hysteresis never raises the starts, exactly.
func TestQuietDayStartsFallWithHysteresis(t *testing.T) {
	eachOption(t, func(t *testing.T, params func(testing.TB) Params) {
		for _, outdoorC := range []float64{-5, 7, 20} {
			before := math.MaxInt
			var counts []int
			for k := 1.0; k <= 12; k += 0.25 {
				p := alwaysAllowed(params(t))
				p.Control.HysteresisK = k
				starts := quietDay(t, p, outdoorC).Starts
				if starts > before {
					t.Errorf("%g C outdoors: %d starts at %g K, %d at %g K", outdoorC, starts, k, before, k-0.25)
				}
				before = starts
				counts = append(counts, starts)
			}
			t.Logf("%g C outdoors: starts %v", outdoorC, counts)
			if counts[0] <= counts[len(counts)-1] {
				t.Errorf("%g C outdoors: the hysteresis does nothing: %v", outdoorC, counts)
			}
		}
	})
}

// quietLoop lives through days without draws with a loop of so many litres. The
// cylinder has a narrower hysteresis than its own here, or it would not run at all
// on most days.
func quietLoop(t *testing.T, p Params, litres, outdoorC float64, days int) *Month {
	t.Helper()
	const narrowK = 1.5
	p = alwaysAllowed(p)
	p.Loop.WaterL = litres
	if p.Control.HysteresisK > 3 {
		p.Control.HysteresisK = narrowK
	}
	l := marched(t, New(p), 0, float64(days)*calendar.DayS, Inputs{Weather: steady(outdoorC, 10)}, Override{})
	return &l.Months[0]
}

// On a day without draws a larger loop never lowers electricity, exactly: loops of
// 1 to 32 litres, each twice the one before. Loops that differ by a few per cent may
// change places by as much as a run is longer or shorter by one step of the engine,
// or by a run that falls past midnight.
func TestQuietDayElectricityRisesWithTheLoop(t *testing.T) {
	eachOption(t, func(t *testing.T, params func(testing.TB) Params) {
		for _, outdoorC := range []float64{-5, 7, 20} {
			before := 0.0
			for litres := 1.0; litres <= 32; litres *= 2 {
				m := quietLoop(t, params(t), litres, outdoorC, 1)
				t.Logf("%g C outdoors, %g l: %d starts, %.3f kWh", outdoorC, litres, m.Starts, m.Electricity()/joulesPerKWh)
				if m.Starts == 0 || m.Electricity() <= before {
					t.Errorf("%g C outdoors: %.1f J at %g l, %.1f J at half of it", outdoorC, m.Electricity(), litres, before)
				}
				before = m.Electricity()
			}
		}
	})
}

// Over ten such days the cut of the days hardly counts, once the heat that is kept at
// the end is valued at the run's COP: electricity rises with every larger loop.
func TestQuietDaysElectricityRisesWithTheLoop(t *testing.T) {
	const days = 10
	eachOption(t, func(t *testing.T, params func(testing.TB) Params) {
		for _, outdoorC := range []float64{-5, 20} {
			before := 0.0
			for litres := 1.0; litres <= 40; litres *= 1.5 {
				m := quietLoop(t, params(t), litres, outdoorC, days)
				kWh := (m.Electricity() - m.StoreGain*m.ElectricRun/m.HeatPumpHeat) / joulesPerKWh / days
				if kWh <= before {
					t.Errorf("%g C outdoors: %.4f kWh a day at %.2f l, with a smaller loop %.4f kWh", outdoorC, kWh, litres, before)
				}
				before = kWh
			}
		}
	})
}

// gapOf gives a figure of two variants of a plant over the same years: the mean of
// the differences, second less first, and its standard error.
func gapOf(first, second [referenceYears]*Ledger, of func(*Ledger) float64) (mean, standardError float64) {
	var gaps [referenceYears]float64
	for i := range gaps {
		gaps[i] = of(second[i]) - of(first[i])
	}
	mean, sd := stat.MeanStdDev(gaps[:], nil)
	return mean, stat.StdErr(sd, referenceYears)
}

func starts(l *Ledger) float64 {
	return total(l, func(m *Month) float64 { return float64(m.Starts) })
}

// Over an ensemble of years with draws the same holds within two standard errors:
// a wider hysteresis does not raise starts, a larger loop does not lower
// electricity.
func TestYearsFollowHysteresisAndLoop(t *testing.T) {
	if testing.Short() {
		t.Skip("thirty years")
	}
	for _, o := range options() {
		with := func(change func(*Params)) func() Params {
			return func() Params {
				p := alwaysAllowed(o.params(t))
				change(&p)
				return p
			}
		}
		asIs := ledgers(t, with(func(*Params) {}))
		gap, se := gapOf(asIs, ledgers(t, with(func(p *Params) { p.Control.HysteresisK *= 2 })), starts)
		t.Logf("%s, hysteresis doubled: %+.0f starts a year (standard error %.1f)", o.name, gap, se)
		if gap > 2*se {
			t.Errorf("%s: a wider hysteresis raises starts", o.name)
		}
		gap, se = gapOf(asIs, ledgers(t, with(func(p *Params) { p.Loop.WaterL *= 2 })), electricityKWh)
		t.Logf("%s, loop doubled: %+.1f kWh a year (standard error %.2f)", o.name, gap, se)
		if gap < -2*se {
			t.Errorf("%s: a larger loop lowers electricity", o.name)
		}
	}
}
