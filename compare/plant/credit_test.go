package plant

import (
	"testing"

	"dhwcompare/compare/calendar"
)

// In steady weather that needs heat at every hour of the year, all that hot water
// loses into the rooms spares heating: nothing is aired, so all of it is credited.
func TestSteadyColdCreditsAllLosses(t *testing.T) {
	eachOption(t, func(t *testing.T, params func(testing.TB) Params) {
		p := housed(t, params)
		l := marched(t, New(p), 0, calendar.YearS, Inputs{Weather: steady(5, 10), Draws: twoPeople().Draws}, Override{})
		if aired := total(l, func(m *Month) float64 { return m.HouseAired }); aired != 0 {
			t.Fatalf("%g J aired", aired)
		}
		near(t, "credited heat", total(l, func(m *Month) float64 { return m.Credited }),
			total(l, func(m *Month) float64 { return m.HouseFromWater }), 0.02)
	})
}
