package climate

import (
	"math"

	"dhwcompare/compare/calendar"
)

// EstimateMains estimates monthly mains water temperatures, deg C, from monthly
// mean outdoor temperatures, deg C, for places whose mains temperature is not
// known. A measured or published local table is always better.
//
// It is the relation of Burch and Christensen (2007) used by the United States'
// Building America programme, taken at the middle of each month. In degrees
// Fahrenheit and degrees of arc, with Ta the annual mean, dT the warmest less the
// coldest monthly mean and d the day of the year:
//
//	T(d)  = (Ta + 6) + ratio (dT/2) sin(0.986 (d - 15 - lag) - 90)
//	ratio = 0.4 + 0.01 (Ta - 44)
//	lag   = 35 - (Ta - 44)
//
// In the southern hemisphere the phase is +90. A place is taken as southern when
// October to March is warmer than April to September.
//
// Known bias: the fit is to supplies in the United States, with annual means
// from about 4 to 25 deg C (from memory). For the average British climate it
// is 0.4 K too warm over the year and 2.9 K too warm in January against the
// national table (10.8 against 8.0 deg C), with half its yearly swing, and so
// flatters hot water in winter. Results below 0 deg C, possible for very cold
// places only, are returned as 0: mains water is liquid.
func EstimateMains(outdoorC Monthly) Monthly {
	mean, warmest, coldest := yearMean(outdoorC), outdoorC[0], outdoorC[0]
	for _, t := range outdoorC {
		warmest, coldest = max(warmest, t), min(coldest, t)
	}
	phase := northernPhaseDeg
	if isSouthern(outdoorC) {
		phase = southernPhaseDeg
	}
	var mains Monthly
	for m := range mains {
		midMonth := float64(30*(m+1) - 15) // the relation's own monthly form
		mains[m] = max(mainsRelationC(mean, warmest-coldest, midMonth, phase), 0)
	}
	return mains
}

// Phases of the yearly wave, degrees: coldest, or warmest, early in the year.
const (
	northernPhaseDeg = -90.0
	southernPhaseDeg = +90.0
)

// mainsRelationC evaluates the relation on a day of the year (1 is 1 January).
func mainsRelationC(meanC, rangeK, day, phaseDeg float64) float64 {
	const (
		fPerK      = 1.8
		dailyDeg   = 0.986 // degrees of arc a day
		referenceF = 44.0
	)
	meanF := meanC*fPerK + 32
	ratio := 0.4 + 0.01*(meanF-referenceF)
	lagDays := 35 - (meanF - referenceF)
	angleDeg := dailyDeg*(day-15-lagDays) + phaseDeg
	swingF := ratio * rangeK * fPerK / 2 * math.Sin(angleDeg*math.Pi/180)
	return (meanF + 6 + swingF - 32) / fPerK
}

func yearMean(monthly Monthly) float64 {
	sum := 0.0
	for m, v := range monthly {
		sum += v * float64(calendar.DaysIn(m))
	}
	return sum / calendar.Days
}

func isSouthern(outdoorC Monthly) bool {
	aprilToSeptember := average(outdoorC[3:9])
	return aprilToSeptember < average(outdoorC[:])
}
