package household

import "dhwcompare/compare/calendar"

const hoursADay = 24

// hourly holds one weight for each hour of the wall clock; only their ratios
// matter.
type hourly [hoursADay]float64

// Hours in which showers and baths begin, on Monday to Friday and at the weekend:
// measured British draw-offs, 2,867 homes, mean over ten use bands weighted by
// homes (event tables of the Home Energy Model wrapper for the Future Homes
// Standard, Crown copyright).
var (
	showerWeekday = hourly{
		0.0031, 0.0021, 0.0020, 0.0052, 0.0174, 0.0589, 0.1068, 0.1130, 0.0907, 0.0653, 0.0460, 0.0323,
		0.0246, 0.0229, 0.0243, 0.0347, 0.0513, 0.0699, 0.0732, 0.0607, 0.0436, 0.0293, 0.0156, 0.0070,
	}
	showerWeekend = hourly{
		0.0036, 0.0021, 0.0015, 0.0021, 0.0057, 0.0173, 0.0443, 0.0840, 0.1129, 0.1124, 0.0858, 0.0615,
		0.0458, 0.0366, 0.0350, 0.0405, 0.0511, 0.0645, 0.0643, 0.0492, 0.0346, 0.0243, 0.0139, 0.0069,
	}
	bathWeekday = hourly{
		0.0023, 0.0014, 0.0013, 0.0034, 0.0168, 0.0559, 0.1017, 0.0992, 0.0771, 0.0607, 0.0464, 0.0355,
		0.0274, 0.0231, 0.0259, 0.0371, 0.0553, 0.0776, 0.0813, 0.0700, 0.0482, 0.0312, 0.0151, 0.0061,
	}
	bathWeekend = hourly{
		0.0026, 0.0014, 0.0008, 0.0010, 0.0034, 0.0142, 0.0391, 0.0715, 0.1002, 0.1038, 0.0882, 0.0679,
		0.0490, 0.0410, 0.0388, 0.0447, 0.0591, 0.0702, 0.0706, 0.0560, 0.0356, 0.0230, 0.0129, 0.0051,
	}
)

// Hours in which taps run, any day, percent: EN 12831-3, Annex B, Table B.2,
// single-family house. The measured British tables are no use here: their hours of
// tap draws are copied from bathing.
var tapAnyDay = hourly{
	1.8, 1.0, 0.6, 0.3, 0.4, 0.6, 2.4, 4.7, 6.8, 5.7, 6.1, 6.1,
	6.3, 6.4, 5.1, 4.4, 4.3, 4.7, 5.7, 6.5, 6.6, 5.8, 4.5, 3.1,
}

// clock is a distribution over the day: the share of draws begun by the end of
// each hour, the last one exactly 1.
type clock [hoursADay]float64

func newClock(h hourly) clock {
	var c clock
	total := 0.0
	for _, weight := range h {
		total += weight
	}
	sum := 0.0
	for i, weight := range h {
		sum += weight
		c[i] = sum / total
	}
	c[hoursADay-1] = 1
	return c
}

// timeS gives the seconds after midnight by which the share u (0 to below 1) of
// the draws has begun. Within an hour they come evenly, so a growing u never gives
// an earlier time. The last second of the day is the latest, lest rounding reach
// midnight.
func (c *clock) timeS(u float64) float64 {
	hour, before := 0, 0.0
	for u >= c[hour] && hour < hoursADay-1 {
		before = c[hour]
		hour++
	}
	return min(calendar.HourS*(float64(hour)+(u-before)/(c[hour]-before)), calendar.DayS-1)
}
