package household

import (
	"fmt"
	"math"
	"testing"

	"dhwcompare/compare/calendar"
	"dhwcompare/compare/checkvalues"
)

// asPublished gives the defaults with the shower temperature of SAP 10.2, 41 C.
func asPublished(people float64) Params {
	p := Defaults(people, true)
	p.ShowerC = 41
	return p
}

// The defaults must give the published worked values by plain arithmetic, before
// any chance enters.
func TestDefaultsGiveWorkedJanuaryValues(t *testing.T) {
	const tolerance = 0.0005 // people are published with four decimals
	hot := func(wantC float64) float64 { return (wantC - britishMainsC[0]) / (HotSupplyC - britishMainsC[0]) }
	for _, row := range checkvalues.Published(t, "sap_appendix_j_january.csv") {
		p := asPublished(row.Number(t, "people"))
		for _, c := range []struct {
			heading string
			got     float64
		}{
			{"showers_l_per_day", p.ShowersPerDay * bathingByMonth[0] * p.ShowerMinutes * p.ShowerFlowLPerMin * hot(p.ShowerC)},
			{"baths_l_per_day", p.BathsPerDay * bathingByMonth[0] * p.BathLitres * hot(p.BathC)},
			{"other_l_per_day", p.TapLitresPerDay * tapsByMonth[0]},
		} {
			if want := row.Number(t, c.heading); math.Abs(c.got-want) > tolerance {
				t.Errorf("%.4f people, %s: %.4f, published %.4f", p.People, c.heading, c.got, want)
			}
		}
	}
}

// Generated Januaries must come to the same worked values.
func TestJanuariesKeepWorkedValues(t *testing.T) {
	const years = 200
	heading := map[Kind]string{Shower: "showers_l_per_day", Bath: "baths_l_per_day", Tap: "other_l_per_day"}
	for _, row := range checkvalues.Published(t, "sap_appendix_j_january.csv") {
		p := asPublished(row.Number(t, "people"))
		totals := map[Kind]sample{}
		for year := range years {
			january := map[Kind]float64{}
			for _, d := range yearOf(p, year) {
				if calendar.MonthOfDay(calendar.DayOf(d.StartS)) == 0 {
					january[d.Kind] += hotLitres(d) / 31
				}
			}
			for kind := range heading {
				totals[kind] = append(totals[kind], january[kind])
			}
		}
		for _, kind := range []Kind{Shower, Bath, Tap} {
			what := fmt.Sprintf("%.4f people, hot litres a day in January, %s", p.People, kind)
			totals[kind].expect(t, what, row.Number(t, heading[kind]))
		}
	}
}

// The year's mixed litres follow SAP 10.2, appendix J, for any number of people,
// with and without a bath.
func TestYearsKeepNationalLitres(t *testing.T) {
	const years = 30
	for _, c := range []struct {
		people  float64
		hasBath bool
	}{{1, true}, {2.3, true}, {3, false}, {5, true}} {
		p := Defaults(c.people, c.hasBath)
		var showers, baths, taps sample
		for year := range years {
			var litres [3]float64
			for _, d := range yearOf(p, year) {
				if d.Kind == Tap {
					litres[Tap] += hotLitres(d)
				} else {
					litres[d.Kind] += mixedLitres(d)
				}
			}
			showers = append(showers, litres[Shower]/calendar.Days)
			baths = append(baths, litres[Bath]/calendar.Days)
			taps = append(taps, litres[Tap]/calendar.Days)
		}
		j5, j2 := yearMean(bathingByMonth), yearMean(tapsByMonth)
		name := fmt.Sprintf("%g people, bath %t, ", c.people, c.hasBath)
		showers.expect(t, name+"mixed shower litres a day", j5*6*7*DefaultShowersPerDay(c.people, c.hasBath))
		taps.expect(t, name+"hot tap litres a day", j2*(9.8*c.people+14))
		if c.hasBath {
			baths.expect(t, name+"mixed bath litres a day", j5*73*(0.13*c.people+0.19))
		} else if mean, _ := baths.meanAndError(); mean != 0 {
			t.Errorf("a home without a bath draws %g litres a day from it", mean)
		}
	}
}

func yearMean(factor [calendar.MonthsInAYear]float64) float64 {
	sum := 0.0
	for month, f := range factor {
		sum += f * float64(calendar.DaysIn(month))
	}
	return sum / calendar.Days
}

// A wider spread changes single draws and leaves the mean alone.
func TestSpreadKeepsTheMean(t *testing.T) {
	p := Defaults(3, true)
	for _, spread := range []float64{0, 0.8} {
		p.ShowerMinutesSpread = spread
		var minutes sample
		for year := range 20 {
			sum, n := 0.0, 0
			for _, d := range only(yearOf(p, year), Shower) {
				sum += d.End.Amount / 60
				n++
			}
			minutes = append(minutes, sum/float64(n))
		}
		if spread > 0 {
			minutes.expect(t, "mean minutes with a wide spread", p.ShowerMinutes)
		} else if mean, _ := minutes.meanAndError(); math.Abs(mean-p.ShowerMinutes) > 1e-9 {
			t.Errorf("without spread a shower takes %g minutes, not %g", mean, p.ShowerMinutes)
		}
	}
}
