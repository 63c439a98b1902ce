package household

import (
	"errors"
	"fmt"

	"dhwcompare/compare/calendar"
)

// Bounds that several checks share.
const (
	minPeople = 1.0 // SAP's relations begin at one person
	maxPeople = 12.0
	maxGuests = 12
	// maxTapsAPerson keeps a full home with guests within what poisson can do.
	maxTapsAPerson = 25.0
	maxMainsC      = 30.0
	maxBathrooms   = 6.0
)

// limit is the allowed range of one number, ends included.
type limit struct {
	name         string
	value        float64
	lowest, most float64
	unit, remedy string
}

func (l limit) check() error {
	if l.value >= l.lowest && l.value <= l.most { // false for NaN
		return nil
	}
	return fmt.Errorf("%s: %g is outside %g to %g%s%s", l.name, l.value, l.lowest, l.most, l.unit, l.remedy)
}

// Check reports every value that Draws cannot take, joined into one error; mainsC
// are the monthly means of the cold water. It returns nil when all are in range.
func (p *Params) Check(mainsC [calendar.MonthsInAYear]float64) error {
	var found []error
	for _, group := range [][]limit{p.peopleLimits(), p.showerLimits(), p.bathLimits(), p.tapLimits(), mainsLimits(mainsC)} {
		for _, l := range group {
			if err := l.check(); err != nil {
				found = append(found, err)
			}
		}
	}
	found = append(found, p.checkTapCounts(), p.checkRhythm(), p.checkDays())
	return errors.Join(found...)
}

func (p *Params) peopleLimits() []limit {
	return []limit{
		{"people", p.People, minPeople, maxPeople, "", ""},
		{"bathrooms", float64(p.Bathrooms), 1, maxBathrooms, "", ""},
		{"back-to-back share of showers", p.BackToBackShare, 0, 1, "", ""},
		{"gap between showers back to back", p.BackToBackGapMinutes, 1, 60, " minutes",
			"; even a quick change takes a minute"},
	}
}

func (p *Params) showerLimits() []limit {
	return []limit{
		{"showers a day", p.ShowersPerDay, 0, maxShowersAPerson * p.People, "",
			"; at most three for each person, state more people"},
		{"minutes of a shower", p.ShowerMinutes, 0.5, 60, " minutes", ""},
		{"spread of shower minutes", p.ShowerMinutesSpread, 0, 0.8, "", ""},
		{"shower flow", p.ShowerFlowLPerMin, 2, 30, " l/min", ""},
		{"spread of shower flow", p.ShowerFlowSpread, 0, 0.5, "", ""},
		{"shower temperature", p.ShowerC, 35, 48, " C", ""},
		{"lowest shower temperature", p.ShowerMinC, 30, p.ShowerC, " C", "; it must not exceed the wanted one"},
	}
}

func (p *Params) bathLimits() []limit {
	return []limit{
		{"baths a day", p.BathsPerDay, 0, maxBathsAPerson * p.People, "",
			"; at most two for each person, state more people"},
		{"litres of a bath", p.BathLitres, 20, 400, " litres", ""},
		{"spread of bath litres", p.BathLitresSpread, 0, 0.5, "", ""},
		{"bath flow", p.BathFlowLPerMin, 3, 40, " l/min", ""},
		{"bath temperature", p.BathC, 35, 48, " C", ""},
		{"lowest bath temperature", p.BathMinC, 30, p.BathC, " C", "; it must not exceed the wanted one"},
	}
}

func (p *Params) tapLimits() []limit {
	return []limit{
		{"tap litres a day", p.TapLitresPerDay, 0, 500, " hot litres", ""},
		{"tap draws a day", p.TapsPerDay, 0, maxTapsAPerson * p.People, "",
			"; count only those that wait for hot water"},
		{"share of long tap draws", p.LongTapShare, 0, 1, "", ""},
		{"tap flow", p.TapFlowLPerMin, 1, 20, " l/min", ""},
		{"tap temperature", p.TapC, 35, 60, " C", ""},
		{"lowest tap temperature", p.TapMinC, 30, p.TapC, " C", "; it must not exceed the wanted one"},
	}
}

func mainsLimits(mainsC [calendar.MonthsInAYear]float64) []limit {
	list := make([]limit, len(mainsC))
	for month, coldC := range mainsC {
		name := fmt.Sprintf("mains water of month %d", month+1)
		list[month] = limit{name, coldC, 0, maxMainsC, " C", ""}
	}
	return list
}

func (p *Params) checkTapCounts() error {
	if (p.TapsPerDay == 0) != (p.TapLitresPerDay == 0) {
		return fmt.Errorf("tap draws a day %g and tap litres a day %g: state both, or 0 for both",
			p.TapsPerDay, p.TapLitresPerDay)
	}
	return nil
}

func (p *Params) checkRhythm() error {
	if int(p.Rhythm) >= len(rhythmNames) {
		return fmt.Errorf("rhythm %d is not known: there are %d", p.Rhythm, len(rhythmNames))
	}
	return nil
}

func (p *Params) checkDays() error {
	var found []error
	for _, away := range p.Away {
		found = append(found, away.check("days away"))
	}
	for _, stay := range p.Guests {
		found = append(found, stay.check("days with guests"))
		if stay.People < 1 {
			found = append(found, fmt.Errorf("guests: %d is below 1; leave the visit out", stay.People))
		}
	}
	for day := range calendar.Days {
		if n := p.guestsOn(day); n > maxGuests {
			found = append(found, fmt.Errorf("guests: %d on day %d of the year, at most %d fit in", n, day+1, maxGuests))
			break
		}
	}
	return errors.Join(found...)
}

func (d DayRange) check(what string) error {
	if d.FirstDay >= 0 && d.FirstDay <= d.LastDay && d.LastDay < calendar.Days {
		return nil
	}
	return fmt.Errorf("%s: day %d to day %d is no run of days within 1 to %d; split one that crosses the new year",
		what, d.FirstDay+1, d.LastDay+1, calendar.Days)
}
