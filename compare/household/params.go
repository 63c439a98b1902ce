package household

import "math"

// Params are the people of a home and their habits. Defaults gives a full set
// from the number of people; Check holds the allowed ranges.
//
// Minutes, litres and flows are means. They spread log-normally, so the median
// lies below the mean by the factor exp(-spread^2/2); the mean is what the key
// says because published totals are products of means, and a wider spread then
// leaves the year's litres alone.
type Params struct {
	People float64 // may be a fraction: the last person is there part of the time

	ShowersPerDay       float64 // of all residents together, mean of the year
	ShowerMinutes       float64 // mean time under running water
	ShowerMinutesSpread float64 // standard deviation of the logarithm of the minutes
	ShowerFlowLPerMin   float64 // mean mixed flow
	ShowerFlowSpread    float64 // standard deviation of the logarithm of the flow
	ShowerC             float64 // mixed temperature that is wanted
	ShowerMinC          float64 // lowest mixed temperature that is acceptable

	BathsPerDay      float64 // of all residents together, mean of the year; 0 in a home without a bath
	BathLitres       float64 // mean mixed litres of one bath, at BathC
	BathLitresSpread float64 // standard deviation of the logarithm of the litres
	BathFlowLPerMin  float64 // mean mixed flow
	BathC            float64 // mixed temperature that is wanted
	BathMinC         float64 // lowest mixed temperature that is acceptable

	TapLitresPerDay float64 // of all residents together, hot litres at HotSupplyC, mean of the year
	TapsPerDay      float64 // number of tap draws in which hot water runs, mean of the year
	LongTapShare    float64 // share of the tap draws that are long ones
	TapFlowLPerMin  float64 // mean mixed flow
	TapC            float64 // mixed temperature that is wanted
	TapMinC         float64 // lowest mixed temperature that is acceptable

	Bathrooms int // each has a shower that one person uses at a time; the bath stands in the first

	// BackToBackShare is the share, among the showers of one day other than the
	// first person's, that join the queue behind another person's shower instead of
	// coming at a time of their own.
	BackToBackShare float64
	// BackToBackGapMinutes is the time from the end of one use of a bathroom to the
	// start of the next when somebody waits for it.
	BackToBackGapMinutes float64

	Rhythm Rhythm // when in the day showers and baths are taken

	Away   []DayRange // days on which the home is empty; they win over guests
	Guests []Stay     // visits
}

// DayRange is a run of whole days by the wall clock, both ends included; day 0
// is 1 January.
type DayRange struct{ FirstDay, LastDay int }

func (d DayRange) holds(day int) bool { return day >= d.FirstDay && day <= d.LastDay }

// Stay is a visit: while it lasts each guest showers, bathes and uses the taps as
// often as a resident does.
type Stay struct {
	DayRange
	People int
}

// residents is the number of different people who live in the home, a part-time
// one counted as one.
func (p *Params) residents() int { return int(math.Ceil(p.People)) }

// presence is the share of the time for which a resident is there: 1, or less
// for the last one of a fractional number of people.
func (p *Params) presence(person int) float64 {
	return min(1, p.People-float64(person))
}

func (p *Params) isAway(day int) bool {
	for _, away := range p.Away {
		if away.holds(day) {
			return true
		}
	}
	return false
}

func (p *Params) guestsOn(day int) int {
	n := 0
	for _, stay := range p.Guests {
		if stay.holds(day) {
			n += stay.People
		}
	}
	return n
}
