package charts

import (
	"context"
	"sync"
	"testing"

	"dhwcompare/compare"
)

// home is an ordinary comparison of few years, made once for all tests.
func home(t testing.TB) *compare.Comparison {
	t.Helper()
	cmp, err := homeOnce()
	if err != nil {
		t.Fatal(err)
	}
	return copyOf(cmp)
}

var homeOnce = sync.OnceValues(func() (*compare.Comparison, error) {
	c := compare.Default()
	c.Title = "Example home"
	c.Household.People = 3
	c.Years = 3
	c.Climate.OutdoorC = [12]float64{4.3, 4.9, 6.5, 8.9, 11.7, 14.6, 16.6, 16.4, 14.1, 10.6, 7.1, 4.2}
	c.Climate.MainsC = &[12]float64{8.0, 8.2, 9.3, 12.7, 14.6, 16.7, 18.4, 17.6, 16.6, 14.3, 11.1, 8.5}
	return compare.Run(context.Background(), &c, 1, nil)
})

// copyOf copies what tests change; lists and maps are made anew.
func copyOf(cmp *compare.Comparison) *compare.Comparison {
	out := *cmp
	out.Tariffs = append([]compare.TariffCost(nil), cmp.Tariffs...)
	for _, side := range bothSides() {
		o := out.Options.Of(side)
		o.SpaceItems = append([]compare.SpaceItem(nil), o.SpaceItems...)
		d := out.Shown.WinterDay.Of(side)
		d.Points = append([]compare.DayPoint(nil), d.Points...)
		d.Draws = append([]compare.DayDraw(nil), d.Draws...)
	}
	out.Difference.Spread = map[string]compare.DifferenceSpread{}
	for k, v := range cmp.Difference.Spread {
		out.Difference.Spread[k] = v
	}
	return &out
}

// all makes every chart.
func all(t testing.TB, cmp *compare.Comparison) []Chart {
	t.Helper()
	charts, err := All(cmp)
	if err != nil {
		t.Fatal(err)
	}
	return charts
}
