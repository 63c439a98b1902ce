package compare

import (
	"context"
	"fmt"

	"dhwcompare/compare/household"
	"dhwcompare/compare/plant"
	"dhwcompare/compare/wording"
)

// Alternative is the same home with one thing changed, lived through for a few
// years.
type Alternative struct {
	Name     string        `json:"name"`
	Years    int           `json:"years"`
	Compact  *Trial        `json:"compact"` // null where it does not apply
	Cylinder *Trial        `json:"cylinder"`
	Lines    [sides]string `json:"lines"` // one sentence for each option
	absent   string        // why it does not apply to an option that is left out
}

// Of gives a place for one option's trial.
func (a *Alternative) of(side Side) **Trial {
	if side == SideCompact {
		return &a.Compact
	}
	return &a.Cylinder
}

// alternative is a change to try.
type alternative struct {
	name   string
	change func(*Case)
	make   func(*Case, Side) maker // makes a plant otherwise, nil leaves the option out; without it, as the case states it
	absent string                  // why make leaves an option out
}

// Sizes of the changes: practice, no source.
const (
	alternativeYears = 2
	fittedLimit      = 6.0 // l/min
	turnedDownShare  = 0.7
	waitingMin       = 20.0
	winterExtraK     = 3.0
	visitors         = 2
	visitFirst       = 10 // 11 January
	visitDays        = 7
	firstWinterMonth = 10 // November
	lastWinterMonth  = 2  // March
)

// nothingChanged is the name of the alternative in which nothing is changed.
const nothingChanged = "as it is"

// alternatives lists the changes to try, the case itself first.
func (c *Case) alternatives() []alternative {
	list := []alternative{{name: nothingChanged, change: func(*Case) {}}}
	list = append(list, c.storeAsVolumiser()...)
	if c.Household.LoadProfile != "" {
		return list
	}
	if c.Household.ShowerFlowLPerMin > fittedLimit {
		list = append(list, alternative{name: wording.Sprintf("a %.0f l/min flow limiter on the showers", fittedLimit), change: func(c *Case) {
			c.Compact.Control.ShowerLimit, c.Cylinder.Control.ShowerLimit = fittedLimit, fittedLimit
		}})
	} else {
		less := c.Household.ShowerFlowLPerMin - 1
		list = append(list, alternative{name: wording.Sprintf("a %.0f l/min flow limiter on the showers", less), change: func(c *Case) {
			c.Compact.Control.ShowerLimit, c.Cylinder.Control.ShowerLimit = less, less
		}})
	}
	return append(list,
		alternative{name: "people turning a cooling shower down by a third", change: func(c *Case) { c.Household.TurnDownShare = turnedDownShare }},
		alternative{name: wording.Sprintf("people waiting up to %.0f minutes for hot water", waitingMin), change: func(c *Case) { c.Household.PatienceMin = waitingMin }},
		alternative{name: wording.Sprintf("setpoints %.0f K higher from November to March", winterExtraK), change: winterSetpoint},
		alternative{name: fmt.Sprintf("%d visitors for a week in January", visitors), change: func(c *Case) {
			stay := household.Stay{DayRange: household.DayRange{FirstDay: visitFirst, LastDay: visitFirst + visitDays - 1}, People: visitors}
			c.Household.Guests = append(append([]household.Stay(nil), c.Household.Guests...), stay)
		}},
		alternative{name: "hot water from the immersion heater alone", change: func(*Case) {}, make: immersionAlone, absent: "it has no immersion heater"},
	)
}

// storeAsVolumiser is the compact store in the defrost circuit, where that would
// spare it a volumiser.
func (c *Case) storeAsVolumiser() []alternative {
	inCircuit := *c
	inCircuit.Compact.InDefrostCircuit = true
	if c.VolumiserL(SideCompact) == 0 || inCircuit.VolumiserL(SideCompact) > 0 {
		return nil
	}
	return []alternative{{
		name:   "the store in the defrost circuit in place of a volumiser",
		change: func(c *Case) { c.Compact.InDefrostCircuit = true },
		make:   storeAlone,
		absent: "it holds no heating water",
	}}
}

func storeAlone(c *Case, side Side) maker {
	if side != SideCompact {
		return nil
	}
	return c.asStated(side)
}

// winterSetpoint raises both setpoints in winter as far as the unit allows.
func winterSetpoint(c *Case) {
	for side := range sides {
		k := c.control(side)
		months := [12]float64{}
		for m := range months {
			months[m] = k.SetpointC
			if k.MonthSetpointC != nil {
				months[m] = k.MonthSetpointC[m]
			}
			if m >= firstWinterMonth || m <= lastWinterMonth {
				months[m] = min(months[m]+winterExtraK, c.highestSetpointC(k))
			}
		}
		*c = *c.withControl(side, func(k *Control) { k.MonthSetpointC = &months })
	}
}

// alternativeSearch lives through each of them. What the case does as it is has been
// lived already.
func (cmp *Comparison) alternativeSearch(ctx context.Context, c *Case, s *scout) search {
	list := c.alternatives()
	out := make([]Alternative, len(list))
	out[0] = c.asItIs(cmp, list[0].name)
	var parts []func() error
	for i := 1; i < len(list); i++ {
		out[i] = Alternative{Name: list[i].name, Years: out[0].Years, absent: list[i].absent}
		for side := range sides {
			parts = append(parts, func() (err error) {
				*out[i].of(side), err = list[i].try(ctx, s, c, side, out[i].Years)
				return err
			})
		}
	}
	return search{parts: parts, whole: func() {
		for i := range out {
			out[i].describe(&out[0])
		}
		cmp.Alternatives = out
	}}
}

// asItIs sums up the first years of the comparison.
func (c *Case) asItIs(cmp *Comparison, name string) Alternative {
	a := Alternative{Name: name, Years: min(c.Years, alternativeYears)}
	for side := range sides {
		years := make([]Totals, a.Years)
		for i := range years {
			years[i] = cmp.EachYear[side][i].Totals
		}
		t := trialOf(&c.Service, years)
		*a.of(side) = &t
	}
	return a
}

// try lives through one option of a change; nil where it does not apply.
func (a *alternative) try(ctx context.Context, s *scout, c *Case, side Side, n int) (*Trial, error) {
	changed := *c
	a.change(&changed)
	of := changed.asStated(side)
	if a.make != nil {
		of = a.make(&changed, side)
	}
	if of == nil {
		return nil, nil
	}
	years, err := s.years(ctx, &changed, of, n)
	if err != nil {
		return nil, err
	}
	t := trialOf(&changed.Service, years)
	return &t, nil
}

// immersionAlone makes the plants of a home whose heat pump cannot make hot water,
// though it still heats the house: the immersion heater alone keeps the vessel near
// its setpoint. An option without an immersion heater is left out.
func immersionAlone(c *Case, side Side) maker {
	if c.body(side).Immersion.PowerKW == 0 {
		return nil
	}
	return func() (plant.Params, error) {
		p, err := c.plantParams(side)
		p.Control.Allowed = plant.Never()
		p.Hygiene = plant.Hygiene{}
		p.Immersion.BoostBelowC = p.Control.SetpointC - p.Immersion.BoostK
		return p, err
	}
}

// describe puts the change beside the case as it is.
func (a *Alternative) describe(base *Alternative) {
	for side := range sides {
		was, is := *base.of(side), *a.of(side)
		if is == nil {
			a.Lines[side] = fmt.Sprintf("%s with %s: %s", side, a.Name, a.absent)
			continue
		}
		if a.Name == nothingChanged {
			a.Lines[side] = fmt.Sprintf("%s as it is: %s a year", side, failingText(is.Failing.Mean))
			continue
		}
		a.Lines[side] = wording.Sprintf("%s with %s: %s a year instead of %.1f", side, a.Name, failingText(is.Failing.Mean), was.Failing.Mean)
	}
}

func failingText(n float64) string {
	if n > 0.95 && n < 1.05 {
		return "1 failing shower"
	}
	return wording.Sprintf("%.1f failing showers", n)
}
