package plant

import (
	"testing"

	"dhwcompare/compare/calendar"
	"dhwcompare/compare/checkvalues"
	"dhwcompare/compare/household"
	"dhwcompare/compare/water"
)

// Profiles M and L draw their energy of the day within 0.5 %.
func TestProfilesDrawTheirEnergy(t *testing.T) {
	for _, row := range checkvalues.Published(t, "load_profile_totals.csv") {
		profile := row["profile"]
		if profile != "M" && profile != "L" {
			continue
		}
		l := ratedDays(t, rated(t, ratingC), profile, nil)
		wanted := 0.0
		for i := range l.Outcomes {
			wanted += l.Outcomes[i].WantedJ
		}
		near(t, "profile "+profile+", wanted of the months and of the draws", total(l, func(m *Month) float64 { return m.Wanted }), wanted, rounding)
		got := total(l, func(m *Month) float64 { return m.Delivered }) / joulesPerKWh / certifiedDays
		near(t, "profile "+profile+", kWh a day", got, row.Number(t, "reference_kwh"), 0.005)
	}
}

// A draw that asks for no more than its least temperature, and gets it, has not
// failed: its mean may lie below it by rounding.
func TestProfileDrawsDoNotFailByRounding(t *testing.T) {
	const thermometerK = 0.05
	for _, profile := range []string{"S", "M", "L"} {
		for _, setpointC := range []float64{ratingC, 62} {
			l := ratedDays(t, rated(t, setpointC), profile, nil)
			for i := range l.Outcomes {
				if o := &l.Outcomes[i]; o.Failed && o.MeanC > o.Draw.MinC-thermometerK && o.ColdS == 0 {
					t.Errorf("profile %s: failed at a mean of %.15g C: %+v", profile, o.MeanC, *o)
				}
			}
		}
	}
}

// A draw that ends by heat ends when the heat is out, to a millionth.
func TestHeatDrawEndsByHeat(t *testing.T) {
	d := shower(6, 0)
	d.End = household.End{By: household.ByJoules, Amount: joulesPerKWh}
	proper := joulesPerKWh / (6 * water.KgPerLitre(40) / secondsPerMinute * water.CpJPerKgK * (40 - testMainsC))
	o := served(t, atTheStore(still(t), 0), 55, d).Outcomes[0]
	near(t, "seconds from a hot store", o.FlowingS, proper, 2e-6) // a draw ends within a millionth of its amount
	near(t, "heat from a hot store", o.DeliveredJ, joulesPerKWh, 2e-6)

	o = served(t, atTheStore(still(t), 0), 25, d).Outcomes[0]
	near(t, "seconds from a lukewarm store", o.FlowingS, 2*proper, 2e-6) // at half the difference
	near(t, "heat from a lukewarm store", o.DeliveredJ, joulesPerKWh, 2e-6)
}

// A draw-off that is given up is over, though what is left of its patience may be too
// short to change the time that it has flowed.
func TestHeatDrawsAreGivenUp(t *testing.T) {
	pl := New(atTheStore(still(t), 0))
	for i := range 3000 {
		d := shower(6+float64(i%7), 0)
		d.End = household.End{By: household.ByJoules, Amount: 1e6 + 777.7*float64(i)}
		d.StartS = noon + 0.37*float64(i)
		pl.Charge(testMainsC)
		l := marched(t, pl, noon, noon+2*calendar.HourS, Inputs{Weather: steady(7, testMainsC), Draws: []household.Draw{d}}, Override{Mode: Off})
		if len(l.Outcomes) != 1 || l.Outcomes[0].DeliveredJ != 0 {
			t.Fatalf("draw-off %d: %+v", i, l.Outcomes)
		}
	}
}
