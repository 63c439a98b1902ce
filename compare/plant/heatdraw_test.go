package plant

import (
	"testing"

	"dhwcompare/compare/calendar"
	"dhwcompare/compare/checkvalues"
	"dhwcompare/compare/household"
	"dhwcompare/compare/vessel"
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

// A draw-off that ends by heat may get a little more than it asks for, from water that
// warms while it flows: then it is over, and nothing is taken back.
func TestHeatDrawsFromWaterThatWarms(t *testing.T) {
	v := tallCylinder()
	v.VolumeL, v.Layers, v.CoilBottom, v.CoilTop, v.InletMixingShare = 90, 10, 0.5, 1, 0.7
	p := cylinderParams(t)
	p.Vessel = vessel.NewCylinder(v)
	pl, more := New(p), 0
	for i := range 1000 {
		d := shower(3+float64(i%9), 0)
		d.End = household.End{By: household.ByJoules, Amount: 1e5 + 7777*float64(i)}
		pl.Charge(20 + float64(i%17))
		l := marched(t, pl, noon, noon+6*calendar.HourS, Inputs{Weather: steady(15, 10), Draws: []household.Draw{d}}, Override{Mode: On})
		o := l.Outcomes[0]
		if !(o.DeliveredJ >= 0 && o.DeliveredJ < 1.05*d.End.Amount) {
			t.Fatalf("%+v", o)
		}
		if o.DeliveredJ > d.End.Amount*(1+rounding) {
			more++
		}
	}
	if more == 0 {
		t.Error("none got more, which says nothing")
	}
}
