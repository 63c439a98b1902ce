package climate

const hoursADay = 24

// rangeBelowMax is the share of the day's range by which each hour of standard
// time lies below the day's maximum, hour 0-1 first. Source: ASHRAE Handbook of
// Fundamentals, 2009 and later, chapter Climatic Design Information, the
// daily profile that serves all seasons and climates. The mean day of five
// British sites is within 0.08 of it at every hour; a British winter day is
// flatter, with its minimum anywhere from 03 to 09.
var rangeBelowMax = [hoursADay]float64{
	0.88, 0.92, 0.95, 0.98, 1.00, 0.98, 0.91, 0.74, 0.55, 0.38, 0.23, 0.13,
	0.05, 0.00, 0.00, 0.06, 0.14, 0.24, 0.39, 0.50, 0.59, 0.68, 0.75, 0.82,
}

// airShape gives each hour's departure from the daily mean as a share of the
// day's range, highest minus lowest. Its mean is zero.
func airShape() [hoursADay]float64 {
	mean := average(rangeBelowMax[:])
	var shape [hoursADay]float64
	for h, below := range rangeBelowMax {
		shape[h] = mean - below
	}
	return shape
}

// mainsShape gives each hour's departure of the mains temperature from the
// daily mean as a share of the dip's depth: level from 15:00 to midnight, sinking
// to 06:00, recovering to 15:00. The level part stands 15/48 above the mean, so
// the mean departure is zero. Source: cold water feed of the UK Home Energy
// Model, as published in the government's code.
func mainsShape() [hoursADay]float64 {
	const (
		level                = 15.0 / 48
		coldestHour, endHour = 6, 15
	)
	var shape [hoursADay]float64
	for h := range shape {
		switch {
		case h < coldestHour:
			shape[h] = level - float64(h)/coldestHour
		case h < endHour:
			shape[h] = level - float64(endHour-h)/(endHour-coldestHour)
		default:
			shape[h] = level
		}
	}
	return shape
}
