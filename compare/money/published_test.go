package money

import (
	"math"
	"testing"

	"dhwcompare/compare/checkvalues"
)

// near fails unless two values agree to an absolute tolerance.
func near(t *testing.T, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s: got %.10g, want %.10g within %g", what, got, want, tolerance)
	}
}

func TestFactorsOfThePublishedTable(t *testing.T) {
	const tolerance = 0.5000001e-6 // printed to six decimals
	for _, row := range checkvalues.Published(t, "lcc_factors.csv") {
		rate, years := row.Number(t, "real_rate"), int(row.Number(t, "years"))
		name := row["real_rate"] + " over " + row["years"]
		near(t, name+", discount", DiscountFactor(rate, years), row.Number(t, "discount_factor"), tolerance)
		near(t, name+", present value", PresentValueFactor(rate, years), row.Number(t, "present_value_factor"), tolerance)
		near(t, name+", annuity", AnnuityFactor(rate, years), row.Number(t, "annuity_factor"), tolerance)
	}
}

func TestFactorsOfASpreadsheet(t *testing.T) {
	for _, row := range checkvalues.Published(t, "lcc_spreadsheet.csv") {
		rate, years := row.Number(t, "rate"), int(row.Number(t, "years"))
		name := row["rate"] + " over " + row["years"]
		// A spreadsheet loses digits for rates close to 0, where it subtracts two
		// numbers that are nearly alike: (1e-16/|rate|) of the result.
		relative := 1e-14 + 4e-16/math.Max(math.Abs(rate), 1e-9)*boolean(rate != 0)
		for _, v := range []struct {
			name      string
			got, want float64
		}{
			{"PV", PresentValueFactor(rate, years), row.Number(t, "pv")},
			{"PMT", AnnuityFactor(rate, years), row.Number(t, "pmt")},
			{"PV of one payment", DiscountFactor(rate, years), row.Number(t, "pv_of_one")},
		} {
			near(t, name+", "+v.name, v.got, v.want, relative*math.Abs(v.want))
		}
	}
}

func boolean(b bool) float64 {
	if b {
		return 1
	}
	return 0
}

func TestPlansOfThePublishedTable(t *testing.T) {
	const penny = 0.00501 // printed to the penny
	for _, row := range checkvalues.Published(t, "lcc_check_values.csv") {
		p := Plan{
			Capital: row.Number(t, "capital"), LifeYears: int(row.Number(t, "life_years")),
			ServicePerYear: row.Number(t, "service_per_year"), EnergyPerYear: row.Number(t, "energy_per_year"),
		}
		terms := Terms{Years: int(row.Number(t, "years")), Rate: row.Number(t, "rate"), EnergyGrowth: row.Number(t, "energy_growth")}
		cost := costOf(t, p, terms)
		near(t, row["check"]+", residual", cost.Residual, row.Number(t, "residual"), penny)
		near(t, row["check"]+", replacement", cost.Replacement, row.Number(t, "replacement"), penny)
		near(t, row["check"]+", net present cost", cost.Net(), row.Number(t, "net_present_cost"), penny)
		near(t, row["check"]+", a year", terms.PerYear(cost.Net()), row.Number(t, "equivalent_annual_cost"), penny)
	}
}
