package tariffs

import (
	"errors"
	"fmt"
	"strings"

	"dhwcompare/compare/calendar"
)

// matrixProblems gathers what is wrong with a schedule file, by key.
type matrixProblems struct {
	file string
	list []error
}

func (p *matrixProblems) add(key, format string, args ...any) {
	p.list = append(p.list, fmt.Errorf("%s: %s: %s", p.file, key, fmt.Sprintf(format, args...)))
}

func (p *matrixProblems) err() error { return errors.Join(p.list...) }

func (p *matrixProblems) check(m *matrixFile) {
	if len(m.Items) > 0 {
		p.add("items", "the file is a list of tariffs: cut out the one wanted, as an object of its own")
		return
	}
	p.structure(m.Structure)
	p.schedule("energyweekdayschedule", m.Weekday, len(m.Structure))
	p.schedule("energyweekendschedule", m.Weekend, len(m.Structure))
	if m.Fixed < 0 {
		p.add("fixedchargefirstmeter", "%g: must be zero or more", m.Fixed)
	}
	if m.Fixed != 0 && perDay(m.FixedUnits) == 0 {
		p.add("fixedchargeunits", "%q is not known: give $/day, $/month or $/year", m.FixedUnits)
	}
}

func (p *matrixProblems) structure(periods [][]matrixTier) {
	const key = "energyratestructure"
	if len(periods) == 0 {
		p.add(key, "is missing or empty: give one list of tiers per period")
	}
	for i, tiers := range periods {
		if len(tiers) != 1 {
			p.add(key, "period %d has %d tiers: rates by monthly use are not supported, give one tier per period", i, len(tiers))
			continue
		}
		if u := tiers[0].Unit; u != "" && !strings.EqualFold(u, "kWh") {
			p.add(key, "period %d has the unit %q: give rates per kWh", i, u)
		}
		if !finite(tiers[0].Rate + tiers[0].Adj) {
			p.add(key, "period %d: rate %g and adj %g are too large for a price", i, tiers[0].Rate, tiers[0].Adj)
		}
	}
}

func (p *matrixProblems) schedule(key string, rows [][]int, periods int) {
	if len(rows) != calendar.MonthsInAYear {
		p.add(key, "has %d rows: must have 12, January first", len(rows))
	}
	for m, row := range rows {
		if len(row) != hoursADay {
			p.add(key, "row %d has %d hours: must have 24, midnight first", m+1, len(row))
		}
		for h, period := range row {
			if period < 0 || period >= periods {
				p.add(key, "row %d, hour %d: period %d is not in energyratestructure, which has %d (the first is 0)", m+1, h, period, periods)
			}
		}
	}
}
