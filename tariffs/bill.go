package tariffs

import (
	"fmt"

	"dhwcompare/compare/calendar"
)

// Line is what one band contributes to a bill.
type Line struct {
	Label string
	KWh   float64
	Cost  float64
}

// Month is one month of a bill, or the whole year.
type Month struct {
	KWh          float64
	EnergyCost   float64 // money, without the standing charge
	StandingCost float64
	Bands        []Line // as the tariff states them, then the remaining rate, then own surplus
}

// Total is the energy and the standing charge together.
func (m *Month) Total() float64 { return m.EnergyCost + m.StandingCost }

// Bill is the cost of a year's profile, tax included.
//
// Order of summation: each month's band adds up its half hours in time; a month
// adds up its bands; the year adds up its months, band by band and in total. All
// ways of adding up agree to rounding (about 1e-13 of the sum of magnitudes).
type Bill struct {
	Year   Month
	Months [calendar.MonthsInAYear]Month
}

// Bill prices a profile of 17,520 half hours in kWh. The values may be negative
// (the difference of two profiles), but own surplus serves positive ones only. A
// profile of another length, or with values that are not finite, is an error.
func (r *Rates) Bill(profileKWh []float64) (Bill, error) {
	if len(profileKWh) != calendar.HalfHours {
		return Bill{}, fmt.Errorf("tariff %q: profile has %d values: must have %d, one for each half hour of 365 days",
			r.name, len(profileKWh), calendar.HalfHours)
	}
	b := r.blankBill()
	for m := range b.Months {
		r.fillMonth(b.Months[m].Bands, m, profileKWh)
		b.Months[m].sumBands()
		b.Months[m].StandingCost = r.standingPerDay * float64(calendar.DaysIn(m))
		b.Year.add(&b.Months[m])
	}
	if !finite(b.Year.KWh) || !finite(b.Year.EnergyCost) {
		return Bill{}, r.blameProfile(profileKWh)
	}
	return b, nil
}

// blankBill makes a bill whose lines all lie in one allocation.
func (r *Rates) blankBill() Bill {
	n := len(r.labels)
	if r.own != nil {
		n++
	}
	lines := make([]Line, n*(calendar.MonthsInAYear+1))
	for i := range lines {
		lines[i].Label = r.label(i % n)
	}
	var b Bill
	b.Year.Bands = lines[:n:n]
	for m := range b.Months {
		from := n * (m + 1)
		b.Months[m].Bands = lines[from : from+n : from+n]
	}
	return b
}

func (r *Rates) label(i int) string {
	if i < len(r.labels) {
		return r.labels[i]
	}
	return r.own.label
}

func (r *Rates) fillMonth(lines []Line, month int, profileKWh []float64) {
	from := calendar.MonthStartDay(month) * calendar.HalfHoursADay
	to := calendar.MonthStartDay(month+1) * calendar.HalfHoursADay
	for i := from; i < to; i++ {
		kWh := profileKWh[i]
		if r.own != nil {
			kWh -= r.own.serve(&lines[len(lines)-1], i, kWh)
		}
		for _, p := range r.parts[r.first[i]:r.first[i+1]] {
			bought := kWh * p.share
			lines[p.band].KWh += bought
			lines[p.band].Cost += bought * p.perKWh
		}
	}
}

func (m *Month) sumBands() {
	for _, l := range m.Bands {
		m.KWh += l.KWh
		m.EnergyCost += l.Cost
	}
}

func (m *Month) add(n *Month) {
	m.KWh += n.KWh
	m.EnergyCost += n.EnergyCost
	m.StandingCost += n.StandingCost
	for i := range m.Bands {
		m.Bands[i].KWh += n.Bands[i].KWh
		m.Bands[i].Cost += n.Bands[i].Cost
	}
}

func (r *Rates) blameProfile(profileKWh []float64) error {
	for i, v := range profileKWh {
		if !finite(v) {
			return fmt.Errorf("tariff %q: profile, half hour %d: %g kWh: must be a finite number", r.name, i, v)
		}
	}
	return fmt.Errorf("tariff %q: the bill is too large for a number: check the profile and the rates", r.name)
}
