package plant

import (
	"testing"

	"dhwcompare/compare/calendar"
)

// Weather wraps round the year; windows have to, or a stretch that crosses the new
// year, such as days lived through beforehand, finds its heat pump shut out.
func TestWindowsWrapRoundTheYear(t *testing.T) {
	s := windows(t, Window{clock(13, 0), clock(16, 0)})
	for _, day := range []int{-7, -1, calendar.Days, calendar.Days + 7} {
		got := openSpans(s, on(day, 0, 0), on(day, 24, 0))
		if len(got) != 1 || got[0] != (span{on(day, 13, 0), on(day, 16, 0)}) {
			t.Errorf("day %d: open %v", day, got)
		}
	}
}
