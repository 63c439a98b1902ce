package money

import (
	"encoding/csv"
	"math"
	"os"
	"path/filepath"
	"strconv"
	"testing"
)

// published reads a table of testdata/published; the lines before its head are
// its source.
func published(t *testing.T, name string) []map[string]string {
	t.Helper()
	f, err := os.Open(filepath.Join("..", "..", "testdata", "published", name))
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	r := csv.NewReader(f)
	r.Comment = '#'
	lines, err := r.ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	var rows []map[string]string
	for _, line := range lines[1:] {
		row := map[string]string{}
		for i, name := range lines[0] {
			row[name] = line[i]
		}
		rows = append(rows, row)
	}
	if len(rows) == 0 {
		t.Fatalf("%s is empty", name)
	}
	return rows
}

func number(t *testing.T, text string) float64 {
	t.Helper()
	v, err := strconv.ParseFloat(text, 64)
	if err != nil {
		t.Fatal(err)
	}
	return v
}

func whole(t *testing.T, text string) int { return int(number(t, text)) }

// near fails unless two values agree to an absolute tolerance.
func near(t *testing.T, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s: got %.10g, want %.10g within %g", what, got, want, tolerance)
	}
}

func TestFactorsOfThePublishedTable(t *testing.T) {
	const tolerance = 0.5000001e-6 // printed to six decimals
	for _, row := range published(t, "lcc_factors.csv") {
		rate, years := number(t, row["real_rate"]), whole(t, row["years"])
		name := row["real_rate"] + " over " + row["years"]
		near(t, name+", discount", DiscountFactor(rate, years), number(t, row["discount_factor"]), tolerance)
		near(t, name+", present value", PresentValueFactor(rate, years), number(t, row["present_value_factor"]), tolerance)
		near(t, name+", annuity", AnnuityFactor(rate, years), number(t, row["annuity_factor"]), tolerance)
	}
}

func TestFactorsOfASpreadsheet(t *testing.T) {
	for _, row := range published(t, "lcc_spreadsheet.csv") {
		rate, years := number(t, row["rate"]), whole(t, row["years"])
		name := row["rate"] + " over " + row["years"]
		// A spreadsheet loses digits for rates close to 0, where it subtracts two
		// numbers that are nearly alike: (1e-16/|rate|) of the result.
		relative := 1e-14 + 4e-16/math.Max(math.Abs(rate), 1e-9)*boolean(rate != 0)
		for _, v := range []struct {
			name      string
			got, want float64
		}{
			{"PV", PresentValueFactor(rate, years), number(t, row["pv"])},
			{"PMT", AnnuityFactor(rate, years), number(t, row["pmt"])},
			{"PV of one payment", DiscountFactor(rate, years), number(t, row["pv_of_one"])},
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
	for _, row := range published(t, "lcc_check_values.csv") {
		p := Plan{
			Capital: number(t, row["capital"]), LifeYears: whole(t, row["life_years"]),
			ServicePerYear: number(t, row["service_per_year"]), EnergyPerYear: number(t, row["energy_per_year"]),
		}
		terms := Terms{Years: whole(t, row["years"]), Rate: number(t, row["rate"]), EnergyGrowth: number(t, row["energy_growth"])}
		cost := costOf(t, p, terms)
		near(t, row["check"]+", residual", cost.Residual, number(t, row["residual"]), penny)
		near(t, row["check"]+", replacement", cost.Replacement, number(t, row["replacement"]), penny)
		near(t, row["check"]+", net present cost", cost.Net(), number(t, row["net_present_cost"]), penny)
		near(t, row["check"]+", a year", terms.PerYear(cost.Net()), number(t, row["equivalent_annual_cost"]), penny)
	}
}
