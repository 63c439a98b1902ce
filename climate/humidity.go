package climate

import "math"

// saturationPa is the pressure of water vapour over liquid water at saturation,
// Pa, at a temperature in deg C:
//
//	e = 610.94 exp(17.625 T / (T + 243.04))
//
// the Magnus form with the coefficients of Alduchov and Eskridge 1996 (from
// memory), within 0.4 percent from -40 to 50 deg C. Below 0 deg C it is still
// over liquid water, as relative humidity is reported by convention.
func saturationPa(airC float64) float64 {
	return 610.94 * math.Exp(17.625*airC/(airC+243.04))
}

// fillDayHumidity sets the relative humidity of each hour of a day, percent, for
// air whose dew point stays the same all day. The vapour pressure is the one
// that gives the day the stated mean humidity,
//
//	vapour = RHmean / mean(1/e(T)),  RH(h) = vapour / e(T(h)),
//
// and hours that would pass 100 percent are cut there (mist: the water is then
// not in the vapour), which lowers the day's mean by as much.
func fillDayHumidity(rhPercent, airC []float64, meanPercent float64) {
	sum := 0.0
	for h, t := range airC {
		rhPercent[h] = 1 / saturationPa(t)
		sum += rhPercent[h]
	}
	vapour := meanPercent / (sum / float64(len(airC)))
	for h := range rhPercent {
		rhPercent[h] = min(vapour*rhPercent[h], 100)
	}
}
