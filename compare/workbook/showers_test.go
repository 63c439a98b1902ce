package workbook

import (
	"slices"
	"strings"
	"testing"

	"dhwcompare/compare"
)

// tooColdCheck is the row of the check that holds the sheet against the months.
const tooColdCheck = "Compact store: minutes of shower that are too cold = those of the months"

func TestShowerTemperaturesAgreeWithTheMonths(t *testing.T) {
	f := open(t, baseBook(t))
	if got := raw(t, f, checksName, beside(t, f, checksName, tooColdCheck, checkResultCol)); got != passWord {
		t.Errorf("the check says %q", got)
	}
	doc := *baseDocument(t)
	wrong := *doc.Comparison
	showers := &wrong.Options.Compact.ShowerTime
	showers.Colder = slices.Clone(showers.Colder)
	for i := range showers.Colder {
		if showers.Colder[i].C == showers.LeastC {
			showers.Colder[i].Minutes += 0.01
		}
	}
	doc.Comparison = &wrong
	f = open(t, written(t, &doc))
	if got := raw(t, f, checksName, beside(t, f, checksName, tooColdCheck, checkResultCol)); got != failWord {
		t.Errorf("with another figure the check says %q", got)
	}
}

func TestShowerTemperaturesOfBothOptionsInOneTable(t *testing.T) {
	doc := *baseDocument(t)
	other := *doc.Comparison
	curve := func(from float64) []compare.TimeColder {
		return []compare.TimeColder{{C: from}, {C: from + 1, Minutes: 5, Share: 0.05}, {C: 40.1, Minutes: 100, Share: 1}}
	}
	other.Options.Compact.ShowerTime = compare.ShowerTime{WantC: 40, LeastC: 38, Minutes: 100, Colder: curve(36)}
	other.Options.Cylinder.ShowerTime = compare.ShowerTime{WantC: 40, LeastC: 38, Minutes: 100, Colder: curve(33)}
	doc.Comparison = &other
	b := newBook(&doc)
	if got, want := b.showerTemperatures(), []float64{33, 34, 36, 37, 40.1}; !slices.Equal(got, want) {
		t.Errorf("temperatures %v, want %v", got, want)
	}
}

// Rows of years beyond the horizon show nothing, whatever the horizon becomes, and all
// that there may be go on one printed page: 52 rows of 15 points did before they were
// made lower.
func TestYearsBeyondTheHorizonShowNothing(t *testing.T) {
	f := open(t, baseBook(t))
	rules, err := f.GetConditionalFormats(lifeName)
	must(t, err)
	hidden := 0
	for area, list := range rules {
		for _, r := range list {
			if strings.Contains(r.Criteria, ">Horizon_years") {
				hidden++
				first := beside(t, f, lifeName, "0", 1)
				if !strings.HasPrefix(area, first+":") || !strings.Contains(r.Criteria, "$"+first) {
					t.Errorf("%s is hidden by %s, the first year is %s", area, r.Criteria, first)
				}
			}
		}
	}
	if hidden != 1 {
		t.Errorf("%d rules hide years", hidden)
	}
	const page, heads = 52 * 15.0, 24 + 16 + 15 + 44
	if all := heads + (longestHorizon+1)*lifeYearHeight; all > page+heads {
		t.Errorf("the years take %g points, a page has %g", all, page+heads)
	}
}
