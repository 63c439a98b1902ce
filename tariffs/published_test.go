package tariffs

import (
	"math"
	"testing"

	"dhwcompare/compare/calendar"
	"dhwcompare/compare/checkvalues"
)

const pence = 0.01 // pounds

// A typical bill is electricity and gas, unit rates and standing charges. The
// published totals are rounded to a pound and come from unrounded rates.
func TestTypicalBillsOfThePriceCap(t *testing.T) {
	for _, row := range checkvalues.Published(t, "price_cap.csv") {
		total := 0.0
		for fuel, kWh := range map[string]float64{"electricity": 2700, "gas": 11500} {
			unit := row.Number(t, fuel+"_p_per_kwh") * pence
			standing := row.Number(t, fuel+"_p_per_day") * pence
			b := billOf(t, compile(t, Flat(fuel, unit, standing)), even(kWh))
			total += b.Year.Total()
		}
		want := row.Number(t, "typical_bill_gbp")
		const tolerance = 1.5 // half a pound of rounding, one pound of rounded rates
		if math.Abs(total-want) > tolerance {
			t.Errorf("%s: bill %.2f, published %.0f", row["from"], total, want)
		}
	}
}

// nightShare is a profile that takes a share of its energy in the night window
// 00:30-07:30 of standard time.
func nightShare(kWh, share float64) []float64 {
	const nightHalves, dayHalves = 14, 34
	p := make([]float64, calendar.HalfHours)
	for i := range p {
		half := i % calendar.HalfHoursADay
		if half >= 1 && half < 1+nightHalves {
			p[i] = kWh * share / (nightHalves * calendar.Days)
		} else {
			p[i] = kWh * (1 - share) / (dayHalves * calendar.Days)
		}
	}
	return p
}

func standardNight() Window { return Window{StartMin: 30, EndMin: 7*60 + 30, Clock: StandardClock} }

func TestTwoRateBreakEvenAndBlend(t *testing.T) {
	const kWh = 1000.0
	for _, row := range checkvalues.Published(t, "two_rate_figures.csv") {
		night, day := row.Number(t, "night_p_per_kwh"), row.Number(t, "day_p_per_kwh")
		two := compile(t, TwoRate("two-rate", night*pence, day*pence, 0, standardNight()))
		single := billOf(t, compile(t, Flat("single", row.Number(t, "single_p_per_kwh")*pence, 0)), even(kWh)).Year.EnergyCost
		allNight := billOf(t, two, nightShare(kWh, 1)).Year.EnergyCost
		allDay := billOf(t, two, nightShare(kWh, 0)).Year.EnergyCost

		share := (allDay - single) / (allDay - allNight)
		// The published shares carry one decimal of a percent.
		if want := row.Number(t, "break_even_night_percent"); math.Abs(100*share-want) > 0.06 {
			t.Errorf("%s: break-even night share %.2f %%, want %.1f", row["rates"], 100*share, want)
		}
		near(t, "bill at the break-even share", billOf(t, two, nightShare(kWh, share)).Year.EnergyCost, single, 1e-12)

		if row["blend_p_per_kwh"] == "" {
			continue
		}
		blend := billOf(t, two, nightShare(kWh, 1-row.Number(t, "high_rate_share"))).Year.EnergyCost / kWh / pence
		if want := row.Number(t, "blend_p_per_kwh"); math.Abs(blend-want) > 0.005 {
			t.Errorf("%s: blend %.4f p/kWh, want %.2f", row["rates"], blend, want)
		}
	}
}

// The weekday of the multi-band example has 6 cheap, 15 day and 3 peak hours:
// (6 x 15 + 15 x 26.11 + 3 x 39)/24 = 24.94 p.
func TestTimeWeightedMeanOfTheMultiBandDay(t *testing.T) {
	r := compile(t, multiBand())
	total := 0.0
	for half := range calendar.HalfHoursADay {
		total += r.PerKWh(half) / calendar.HalfHoursADay
	}
	if math.Abs(total/pence-24.94) > 0.005 {
		t.Errorf("time-weighted mean %.4f p/kWh, want 24.94", total/pence)
	}
}

// One kilowatt-hour of own solar at an export rate of 12 p costs those 12 p, and
// against 26.11 p bought it saves 14.11 p, not 26.11 p.
func TestOwnSurplusSavesTheDifferenceToExport(t *testing.T) {
	noon := 24 + 180*calendar.HalfHoursADay
	profile, surplus := make([]float64, calendar.HalfHours), make([]float64, calendar.HalfHours)
	profile[noon], surplus[noon] = 1, 1
	bought := compile(t, Flat("flat", 0.2611, 0))
	own, err := bought.WithSurplus("own solar", surplus, 0.12)
	if err != nil {
		t.Fatal(err)
	}
	saved := billOf(t, bought, profile).Year.EnergyCost - billOf(t, own, profile).Year.EnergyCost
	near(t, "saving", saved, 0.1411, 1e-12)
}
