package household

import "dhwcompare/compare/calendar"

// HotSupplyC is the temperature at which hot litres are counted, deg C (SAP 10.2,
// appendix J: hot supply 52 C).
const HotSupplyC = 52.0

// Defaults that do not depend on the number of people.
const (
	// SAP 10.2, appendix J: 6 minutes a shower. The spread lies between that of
	// ordinary showers (0.33, from mean and median litres in use band 5 of the
	// measured British draw-offs) and that of ordinary and long showers together
	// (about 0.65).
	defaultShowerMinutes       = 6.0
	defaultShowerMinutesSpread = 0.5

	// SAP 10.2, appendix J: 7 l/min for a vented mixer. Spread: common practice, no
	// source.
	defaultShowerFlowLPerMin = 7.0
	defaultShowerFlowSpread  = 0.15

	// Common practice, no source. SAP 10.2 reckons showers at 41 C, which takes
	// about 4 % more hot litres at the year's mean mains temperature.
	defaultShowerC    = 40.0
	defaultShowerMinC = 38.0

	// SAP 10.2, appendix J: 73 litres at 42 C. Spread from mean and median litres
	// in use bands 5 to 10 of the measured British draw-offs (0.2 to 0.27). Flow and
	// lowest temperature: common practice, no source.
	defaultBathLitres       = 73.0
	defaultBathLitresSpread = 0.2
	defaultBathFlowLPerMin  = 10.0
	defaultBathC            = 42.0
	defaultBathMinC         = 39.0

	// Common practice, no source; between the 38 C (basin) and 45 C (kitchen) that
	// the European water label assumes.
	defaultTapFlowLPerMin = 6.0
	defaultTapC           = 42.0
	defaultTapMinC        = 40.0

	// Common practice, no source.
	defaultBathrooms            = 1
	defaultBackToBackShare      = 0.3
	defaultBackToBackGapMinutes = 4.0
)

// Measured British draw-offs, 2,867 homes in ten use bands, mean weighted by
// homes: small and long tap draws a home and day, and hot litres of one. Event
// tables of the Home Energy Model wrapper for the Future Homes Standard (Crown
// copyright).
const (
	measuredSmallTapsPerDay = 18.27
	measuredLongTapsPerDay  = 2.11
	measuredSmallTapLitres  = 1.40
	measuredLongTapLitres   = 10.5
	// People in the mean home of those data: not stated; mean British household,
	// from memory.
	measuredPeople = 2.3
)

// Details that are no keys of a case.
const (
	// Spread of the litres of one tap draw: from mean and median litres of small and
	// long taps in use band 5 of the measured British draw-offs.
	smallTapSpread = 0.4
	longTapSpread  = 0.25
	// Spread of flows from draw to draw, and share of small tap draws at the kitchen
	// tap; long ones are all taken there. Common practice, no source.
	tapFlowSpread     = 0.3
	bathFlowSpread    = 0.15
	kitchenShare      = 0.5
	bathSoakMinutes   = 20.0
	morningShare      = 0.8 // of the bathing, for the morning and evening rhythms
	evenFirstHour     = 6
	evenLastHour      = 22
	maxShowersAPerson = 3.0
	maxBathsAPerson   = 2.0
)

// bathingByMonth scales how often people shower and bathe (SAP 10.2, Table J5).
var bathingByMonth = [calendar.MonthsInAYear]float64{
	1.035, 1.021, 1.007, 0.993, 0.979, 0.965, 0.965, 0.979, 0.993, 1.007, 1.021, 1.035,
}

// tapsByMonth scales how often people use the taps (SAP 10.2, Table J2).
var tapsByMonth = [calendar.MonthsInAYear]float64{
	1.10, 1.06, 1.02, 0.98, 0.94, 0.90, 0.90, 0.94, 0.98, 1.02, 1.06, 1.10,
}

// DefaultShowersPerDay gives the showers a day of a home with this many people
// (SAP 10.2, appendix J, step 1c): 0.45 N + 0.65 where there is a bath, else
// 0.58 N + 0.83.
func DefaultShowersPerDay(people float64, hasBath bool) float64 {
	if hasBath {
		return 0.45*people + 0.65
	}
	return 0.58*people + 0.83
}

// DefaultBathsPerDay gives the baths a day of a home that has a shower as well
// (SAP 10.2, appendix J): 0.13 N + 0.19, or none without a bath.
func DefaultBathsPerDay(people float64, hasBath bool) float64 {
	if !hasBath {
		return 0
	}
	return 0.13*people + 0.19
}

// DefaultTapLitresPerDay gives the hot litres a day, at HotSupplyC, of all uses
// other than showers and baths (SAP 10.2, appendix J): 9.8 N + 14.
func DefaultTapLitresPerDay(people float64) float64 { return 9.8*people + 14 }

// DefaultTapsPerDay gives the tap draws a day: the measured number for the mean
// British home, in proportion to the hot litres, so that the litres of one draw do
// not depend on the number of people.
func DefaultTapsPerDay(people float64) float64 {
	measured := measuredSmallTapsPerDay + measuredLongTapsPerDay
	return measured * DefaultTapLitresPerDay(people) / DefaultTapLitresPerDay(measuredPeople)
}

// Defaults gives the habits of a home of which only the number of people is
// known, and whether it has a bath.
func Defaults(people float64, hasBath bool) Params {
	return Params{
		People:               people,
		ShowersPerDay:        DefaultShowersPerDay(people, hasBath),
		ShowerMinutes:        defaultShowerMinutes,
		ShowerMinutesSpread:  defaultShowerMinutesSpread,
		ShowerFlowLPerMin:    defaultShowerFlowLPerMin,
		ShowerFlowSpread:     defaultShowerFlowSpread,
		ShowerC:              defaultShowerC,
		ShowerMinC:           defaultShowerMinC,
		BathsPerDay:          DefaultBathsPerDay(people, hasBath),
		BathLitres:           defaultBathLitres,
		BathLitresSpread:     defaultBathLitresSpread,
		BathFlowLPerMin:      defaultBathFlowLPerMin,
		BathC:                defaultBathC,
		BathMinC:             defaultBathMinC,
		TapLitresPerDay:      DefaultTapLitresPerDay(people),
		TapsPerDay:           DefaultTapsPerDay(people),
		LongTapShare:         measuredLongTapsPerDay / (measuredSmallTapsPerDay + measuredLongTapsPerDay),
		TapFlowLPerMin:       defaultTapFlowLPerMin,
		TapC:                 defaultTapC,
		TapMinC:              defaultTapMinC,
		Bathrooms:            defaultBathrooms,
		BackToBackShare:      defaultBackToBackShare,
		BackToBackGapMinutes: defaultBackToBackGapMinutes,
		Rhythm:               MeasuredRhythm,
	}
}
