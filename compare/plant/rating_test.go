package plant

import (
	"context"
	"math"
	"strconv"
	"testing"

	"gonum.org/v1/gonum/mathext"

	"dhwcompare/compare/calendar"
	"dhwcompare/compare/checkvalues"
	"dhwcompare/compare/household"
	"dhwcompare/compare/vessel"
	"dhwcompare/compare/water"
)

const (
	ratingC   = 52 // C; certified packages: rated_packages.csv
	usefulC   = 40 // a V40 draw is stopped when the outlet falls below this
	drawLPMin = 10
	// certifiedDays is how many days are averaged, after two to settle: reheats
	// do not fall on the same draw each day.
	certifiedDays = 10
)

// rated is the test home's cylinder as a package is rated: outlet at the vessel,
// no clock, the whole standby power counted.
func rated(t testing.TB, setpointC float64) Params {
	t.Helper()
	p := atTheStore(cylinderParams(t), 0)
	p.Control.SetpointC, p.Control.HysteresisK, p.Control.Allowed = setpointC, 6, Schedule{}
	p.Power.StandbyW = 15 // certified median 13 W, 10-20 W common practice
	return p
}

// ratedDays lives through the days of a load profile at 7 C outdoors.
func ratedDays(t testing.TB, p Params, profile string, watch func(*Sample)) *Ledger {
	t.Helper()
	draws, err := household.Profile(profile)
	if err != nil {
		t.Fatal(err)
	}
	in := Inputs{Weather: steady(7, household.RatingColdC), Draws: draws}
	const from = 100 * calendar.DayS
	const settled = from + 2*calendar.DayS
	pl := New(p)
	marched(t, pl, from, settled, in, Override{})
	l := NewLedger()
	err = pl.Run(context.Background(), settled, settled+certifiedDays*calendar.DayS, in, Override{}, Recorder{Ledger: l, Trace: watch})
	if err != nil {
		t.Fatal(err)
	}
	return l
}

// COP over the day of 220 litres at 52 C with load profile L and 7 C outdoors lies
// between the 10th and 90th percentile of certified packages. A sanity band: most
// packages have no indirect coil.
func TestRatingDayCOP(t *testing.T) {
	l := ratedDays(t, rated(t, ratingC), "L", nil)
	for _, row := range checkvalues.Published(t, "rated_packages.csv") {
		if row["profile"] == "L" {
			band{row.Number(t, "cop_p10"), row.Number(t, "cop_p90")}.check(t, "COP over the day", efficiency(l))
			return
		}
	}
	t.Error("no certified packages for profile L")
}

// v40 draws from a cylinder until its outlet falls below 40 C and gives the mass
// of water at 40 C that the heat above 10 C would make, over the mass held.
func v40(c *vessel.Cylinder, litres float64) float64 {
	const kgPerS = drawLPMin * water.VesselKgPerLitre / secondsPerMinute
	const longestS = 10 // as the plant steps while water is drawn
	heatK := 0.0
	for {
		dt := math.Min(longestS, c.StepLimitS(kgPerS, 0))
		r := c.Step(&vessel.Flows{DtS: dt, DrawKgPerS: kgPerS, MainsC: household.RatingColdC, RoomC: 20})
		if !(r.DrawOutC >= usefulC) {
			return heatK / (usefulC - household.RatingColdC) / (litres * water.VesselKgPerLitre)
		}
		heatK += kgPerS * dt * (r.DrawOutC - household.RatingColdC)
	}
}

// tanksInSeries is V40 over volume of n stirred tanks in series that start at hotC:
// the outlet has cooled by the share P(n, n theta), the regularised incomplete
// gamma function, when theta volumes are out.
func tanksInSeries(n, hotC float64) float64 {
	const (
		step  = 1e-4 // volumes; the midpoint rule is then good to 1e-6
		coldC = household.RatingColdC
	)
	sum := 0.0
	for theta := step / 2; ; theta += step {
		outC := hotC - (hotC-coldC)*mathext.GammaIncReg(n, n*theta)
		if outC < usefulC {
			return sum / (usefulC - coldC)
		}
		sum += step * (outC - coldC)
	}
}

// V40 over volume of a store at 50 C, evaluated independently to four decimals.
func TestTanksInSeriesWorkedValues(t *testing.T) {
	rows := checkvalues.Published(t, "stirred_tanks_in_series.csv")
	if len(rows) < 6 {
		t.Errorf("%d rows", len(rows))
	}
	for _, row := range rows {
		n, err := strconv.ParseFloat(row["tanks"], 64)
		if err != nil {
			continue // plug flow
		}
		if got, want := tanksInSeries(n, 50), row.Number(t, "v40_over_volume"); math.Abs(got-want) > 2e-4 { // rounding and the last step
			t.Errorf("%g tanks: %.4f, want %.4f", n, got, want)
		}
	}
}

// An inlet that stirs a share s of the volume makes a stirred tank of s followed by
// plug flow, of which
//
//	V40/V = (T-10)/30 - s
//
// is exact. The variance of the time that water spends in it is s^2 of the mean
// squared, in N tanks in series it is 1/N: so N = 1/s^2 tanks stand for a share s.
// V40 agrees with both within the 2 % asked for. Equal variance is not equal shape:
// at a share of 0.30 the two closed forms are themselves 1.9 % apart, so tanks are
// asked for up to 0.20 (0.15 is the test home's).
func TestV40FollowsInletMixing(t *testing.T) {
	for _, s := range []float64{0.05, 0.10, 0.15, 0.20, 0.30} {
		p := tallCylinder()
		p.InletMixingShare = s
		c := vessel.NewCylinder(p)
		c.Fill(ratingC)
		got := v40(c, p.VolumeL)
		tanks := tanksInSeries(1/(s*s), ratingC)
		stirred := (ratingC-household.RatingColdC)/30.0 - s
		t.Logf("share %.2f: V40/V %.4f, %.0f tanks in series %.4f, stirred tank and plug %.4f", s, got, 1/(s*s), tanks, stirred)
		near(t, "against stirred tank and plug flow", got, stirred, 0.02)
		if s <= 0.20 {
			near(t, "against tanks in series", got, tanks, 0.02)
		}
	}
}

// After a reheat V40 lies between 1.05 and 1.25 of the volume: common practice, no
// source, for a store near 52 C. Median of certified packages (profile L, average
// climate): 245 litres from packages of 200 to 270.
func TestV40AfterReheat(t *testing.T) {
	p, params := rated(t, ratingC), tallCylinder()
	c := vessel.NewCylinder(params)
	p.Vessel = c
	pl := New(p)
	pl.Charge(20)
	in := Inputs{Weather: steady(7, household.RatingColdC)}
	marched(t, pl, noon, noon+6*calendar.HourS, in, Override{})
	band{1.05, 1.25}.check(t, "V40 over volume", v40(c, params.VolumeL))
}

// Every draw reaches the temperature that the table asks for in its course, or is
// counted: at 52 C the two dish-washing draws, which ask for 55 C, never do; at 60 C
// all do.
func TestDrawsReachTheirPublishedTemperature(t *testing.T) {
	const degree = 0.1 // K, by which a thermometer may miss it
	for _, c := range []struct {
		setpointC float64
		notMet    map[float64]int // wanted temperature and draws a day that miss it
	}{{ratingC, map[float64]int{55: 2}}, {62, nil}} {
		for _, profile := range []string{"M", "L"} {
			reached := map[float64]int{}
			lastMet := -1.0
			watch := func(s *Sample) {
				// Draws of a profile never overlap, so a gap in the trace parts them.
				if len(s.Draws) == 0 {
					lastMet = -1
				} else if d := s.Draws[0]; d.DeliveredC >= d.WantC-degree && lastMet != d.WantC {
					lastMet = d.WantC
					reached[d.WantC]++
				}
			}
			l := ratedDays(t, rated(t, c.setpointC), profile, watch)
			asked := map[float64]int{}
			for i := range l.Outcomes {
				asked[l.Outcomes[i].Draw.WantC]++
			}
			for wantC, n := range asked {
				if missed := n - reached[wantC]; missed != certifiedDays*c.notMet[wantC] {
					t.Errorf("profile %s at %g C: %d of %d draws at %g C not met, want %d a day", profile, c.setpointC, missed, n, wantC, c.notMet[wantC])
				}
			}
		}
	}
}
