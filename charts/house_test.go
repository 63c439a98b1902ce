package charts

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"dhwcompare/compare"
)

func TestHouseTitle(t *testing.T) {
	cmp := home(t)
	want := "A cold day (21 January, −1 °C outside): the room stays at 19.6 °C or above with the compact store, 19.1 °C with the cylinder"
	if got := named(t, cmp, "winter-day-house").Title; got != want {
		t.Errorf("title %q, want %q", got, want)
	}
	cmp.Shown.WinterDay.Cylinder = cmp.Shown.WinterDay.Compact
	want = "A cold day (21 January, −1 °C outside): the room stays at 19.6 °C or above with either option"
	if got := named(t, cmp, "winter-day-house").Title; got != want {
		t.Errorf("title %q, want %q", got, want)
	}
}

// TestDaysOnlyWhereLived holds that a house without heating and a summer that was
// not followed have no picture.
func TestDaysOnlyWhereLived(t *testing.T) {
	cmp := home(t)
	cmp.Shown.SummerDay = compare.Day{}
	for _, side := range bothSides() {
		points := cmp.Shown.WinterDay.Of(side).Points
		for i := range points {
			points[i].HouseW = min(points[i].HouseW, 0)
		}
	}
	for _, c := range all(t, cmp) {
		if c.Name == "winter-day-house" || c.Name == "summer-day" {
			t.Errorf("%s is drawn", c.Name)
		}
	}
}

func TestSummerDay(t *testing.T) {
	c := named(t, home(t), "summer-day")
	want := "A summer day with many showers (9 July, 17 °C outside): the heat pump runs 8 times for the compact store, twice for the cylinder"
	if c.Title != want {
		t.Errorf("title %q, want %q", c.Title, want)
	}
}

// TestDefrostsAreMarked counts the dark marks of the two strips: an hour holds a
// defrost, unless the heat pump makes hot water then.
func TestDefrostsAreMarked(t *testing.T) {
	cmp := home(t)
	want := 0
	for _, side := range bothSides() {
		want += len(spans(cmp.Shown.WinterDay.Of(side).Points, defrosting))
	}
	svg := string(svgOf(t, named(t, cmp, "winter-day-house")))
	if got := strings.Count(svg, `Z" style="fill:#1B1B22"`); got != want || want < 30 {
		t.Errorf("%d marks, want %d", got, want)
	}
}

// TestPowerIsToScale holds that twice the output is drawn twice as high.
func TestPowerIsToScale(t *testing.T) {
	cmp := home(t)
	cmp.Shown.WinterDay.Compact = compare.DayTrace{Points: []compare.DayPoint{
		{Hour: 1, RoomC: 20}, {Hour: 6, HouseW: 2000, RoomC: 20}, {Hour: 12, HeatW: 4000, RoomC: 20}, {Hour: 24, RoomC: 20},
	}}
	svg := string(svgOf(t, named(t, cmp, "winter-day-house")))
	high := func(colour string) float64 {
		path, _, found := strings.Cut(svg, `Z" style="fill:#`+colour)
		if !found {
			t.Fatal("no area in ", colour)
		}
		path = path[strings.LastIndex(path, `d="M`)+len(`d="M`):]
		least, most := math.Inf(1), math.Inf(-1)
		for _, pair := range strings.Split(path, "L") {
			_, y, _ := strings.Cut(pair, ",")
			v, err := strconv.ParseFloat(y, 64)
			if err != nil {
				t.Fatal(err)
			}
			least, most = min(least, v), max(most, v)
		}
		return most - least
	}
	// Coordinates are written with five digits.
	if r := high("D4752A") / high("DCDCE2"); math.Abs(r-2) > 0.01 {
		t.Errorf("4 kW is drawn %.3f times as high as 2 kW", r)
	}
}
