package tariffs

import "dhwcompare/compare/calendar"

// Rates is a tariff laid over one year: what a kilowatt-hour costs in each half
// hour, tax included. It never changes once made, so it may be shared.
type Rates struct {
	name           string
	labels         []string
	standingPerDay float64 // with tax
	perKWh         []float64
	// The parts of half hour i are parts[first[i]:first[i+1]].
	first []int32
	parts []part
	own   *ownSurplus
}

// part is the share of a half hour in which one rate holds.
type part struct {
	band   int32
	share  float64
	perKWh float64
}

func newRates(t *Tariff, labels []string) *Rates {
	r := &Rates{
		name:           t.Name,
		labels:         labels,
		standingPerDay: t.StandingPerDay * t.taxFactor(),
		perKWh:         make([]float64, 0, calendar.HalfHours),
		first:          make([]int32, 1, calendar.HalfHours+1),
		parts:          make([]part, 0, calendar.HalfHours),
	}
	return r
}

func (r *Rates) addHalfHour(parts ...part) {
	mean := 0.0
	for _, p := range parts {
		mean += p.share * p.perKWh
	}
	r.parts = append(r.parts, parts...)
	r.first = append(r.first, int32(len(r.parts)))
	r.perKWh = append(r.perKWh, mean)
}

// Name is the name of the tariff.
func (r *Rates) Name() string { return r.name }

// StandingPerDay is the standing charge, money per day, tax included.
func (r *Rates) StandingPerDay() float64 { return r.standingPerDay }

// PerKWh is the price of bought electricity in half hour i (0..17519), tax
// included, weighted by minutes where a band edge falls inside the half hour.
// Indices outside the year wrap round.
func (r *Rates) PerKWh(i int) float64 { return r.perKWh[calendar.WrapHalfHour(i)] }
