package casefile

import (
	"fmt"

	"dhwcompare/compare"
	"dhwcompare/compare/calendar"
)

// checkHousehold looks for habits that contradict each other.
func checkHousehold(r *reader, c *compare.Case) {
	h := &c.Household
	r.wanted("shower", h.ShowerMinC, h.ShowerC)
	r.wanted("bath", h.BathMinC, h.BathC)
	r.wanted("tap", h.TapMinC, h.TapC)
	r.perPerson("showers_per_day", h.Showers(), h.People, 3)
	r.perPerson("baths_per_day", h.Baths(), h.People, 2)
	r.perPerson("taps_per_day", h.Taps(), h.People, 25)
	if !h.HasBath && h.Baths() > 0 {
		r.clash(fmt.Sprintf("is %s while household.has_bath is false: leave it out, or say true", plain(h.Baths())),
			"household.baths_per_day", "household.has_bath")
	}
	if (h.Taps() == 0) != (h.TapLitres() == 0) {
		r.clash(fmt.Sprintf("is %s while household.tap_l_per_day is %s: state both, or 0 for both", rounded(h.Taps()), rounded(h.TapLitres())),
			"household.taps_per_day", "household.tap_l_per_day")
	}
}

// wanted holds that the lowest acceptable temperature is below the wanted one.
func (r *reader) wanted(use string, leastC, wantC float64) {
	if leastC < wantC {
		return
	}
	least, want := "household."+use+"_min_c", "household."+use+"_c"
	r.clash(fmt.Sprintf("is %s °C, not below %s, which is %s °C: lower one or raise the other", plain(leastC), want, plain(wantC)), least, want)
}

func (r *reader) perPerson(name string, perDay, people, most float64) {
	if perDay <= most*people {
		return
	}
	r.clash(fmt.Sprintf("is %s with household.people %s, allowed up to %s for each person: state more people, or less a day",
		rounded(perDay), plain(people), plain(most)), "household."+name, "household.people")
}

// checkDays looks at the days away and the visits.
func checkDays(r *reader, c *compare.Case) {
	for i, d := range c.Household.Away {
		r.inOrder(fmt.Sprintf("household.away[%d]", i+1), d.FirstDay, d.LastDay)
	}
	var guests [calendar.Days]int
	for i, s := range c.Household.Guests {
		r.inOrder(fmt.Sprintf("household.guests[%d]", i+1), s.FirstDay, s.LastDay)
		for day := s.FirstDay; day <= s.LastDay; day++ {
			guests[day] += s.People
		}
	}
	const most = 12
	for day, n := range guests {
		if n > most {
			r.clash(fmt.Sprintf("add up to %d people on %s, allowed up to %d: make them fewer or shorter", n, dateValue{at: &day}.yaml(""), most),
				"household.guests")
			return
		}
	}
}

func (r *reader) inOrder(item string, first, last int) {
	if first <= last {
		return
	}
	r.clash(fmt.Sprintf("is %s, before %s.first_date, which is %s: swap them, or split a stay over the new year in two",
		dateValue{at: &last}.yaml(""), item, dateValue{at: &first}.yaml("")), item+".last_date", item+".first_date")
}
