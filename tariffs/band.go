package tariffs

import (
	"time"

	"dhwcompare/compare/calendar"
)

// Minutes of a clock day and of a half hour.
const (
	minutesADay      = 24 * 60
	minutesAnHour    = 60
	minutesAHalfHour = 30
	secondsAMinute   = 60
	halfHoursPerHour = 2
	quartersPerHalf  = 2
	secondsAQuarter  = calendar.HalfHourS / quartersPerHalf
	minutesInTheYear = calendar.Days * minutesADay
	allMonthsMask    = 1<<calendar.MonthsInAYear - 1
	clockKinds       = 2
)

// Clock says which clock a band keeps.
type Clock int

// The clocks of a meter. Many two-rate meters do not follow summer time; their
// clock is the standard one, which in Britain is UTC.
const (
	LocalClock    Clock = iota // the wall clock, with summer time
	StandardClock              // standard time all year
)

// Days says on which days of the week a band holds.
type Days int

// The kinds of day. Bank holidays count as the day of the week that they fall on.
const (
	AllDays  Days = iota
	Weekdays      // Monday to Friday
	Weekends      // Saturday and Sunday
)

// Band is a rate that holds at certain minutes of the day, on certain days, in
// certain months, all read from the band's own clock. Each minute is judged by
// the date on which it falls: the small hours of a band 22:00-06:00 on weekdays
// are those of Monday to Friday, not those that follow Monday to Friday.
type Band struct {
	// Label names the band; bands that share a label are added up in one line.
	Label string
	Days  Days
	// Months lists the months in which the band holds; empty means all.
	Months []time.Month
	// StartMin (0..1439) and EndMin (1..1440) are minutes since midnight; an end
	// before the start lies on the next day.
	StartMin, EndMin int
	Clock            Clock
	PerKWh           float64
}

// window is a band made ready for matching.
type window struct {
	days       Days
	months     uint16 // bit 0 is January
	start, end int
	clock      Clock
	part       part // share is set where it is used
}

func newWindow(b Band, p part) window {
	mask := uint16(0)
	for _, m := range b.Months {
		mask |= 1 << (m - 1)
	}
	if len(b.Months) == 0 {
		mask = allMonthsMask
	}
	return window{days: b.Days, months: mask, start: b.StartMin, end: b.EndMin, clock: b.Clock, part: p}
}

// moment is one minute as a clock shows it.
type moment struct {
	month   int // 0 is January
	weekend bool
	minute  int // since midnight
}

// clocks holds the same minute as each clock shows it.
type clocks [clockKinds]moment

func readClocks(y calendar.Year, standardMin int) clocks {
	local := standardMin
	if y.SummerOffsetS(float64(standardMin*secondsAMinute)) > 0 {
		local += minutesAnHour
	}
	return clocks{
		LocalClock:    momentAt(y, local),
		StandardClock: momentAt(y, standardMin),
	}
}

func momentAt(y calendar.Year, minute int) moment {
	day := minute / minutesADay
	return moment{
		month:   calendar.MonthOfDay(day),
		weekend: y.IsWeekend(day),
		minute:  minute % minutesADay,
	}
}

func (w *window) covers(c *clocks) bool {
	m := &c[w.clock]
	return w.months>>m.month&1 == 1 && w.onDay(m.weekend) && w.atMinute(m.minute)
}

func (w *window) onDay(weekend bool) bool {
	switch w.days {
	case Weekdays:
		return !weekend
	case Weekends:
		return weekend
	default:
		return true
	}
}

func (w *window) atMinute(minute int) bool {
	if w.start < w.end {
		return w.start <= minute && minute < w.end
	}
	return minute >= w.start || minute < w.end
}
