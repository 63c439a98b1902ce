package compare

import (
	"context"
	"math"
)

// WindowChoice says in which hours of the day an option heats when its windows
// follow the first tariff, what that saves, and what it risks. Both are against
// the windows as stated, over the few years that the choice was made on.
type WindowChoice struct {
	Tariff    string   `json:"tariff"`
	Windows   []string `json:"windows"` // of the wall clock, such as 03:00-06:00; empty: at any time
	HoursADay float64  `json:"hours_per_day"`
	RaisedC   float64  `json:"raised_setpoint_c"` // in the windows, of an option that heats at any time; 0: it heats in them only
	Years     int      `json:"years_tried"`
	// SavedPerYear is money on that tariff, ExtraFailing what is risked for it.
	SavedPerYear float64       `json:"saved_per_year"`
	ExtraFailing float64       `json:"extra_failing_showers_per_year"`
	ExtraUnmet   float64       `json:"extra_unmet_share"`
	Tried        []WindowTrial `json:"tried"` // the windows as stated come first
}

// WindowTrial is one set of windows that was tried.
type WindowTrial struct {
	Windows   []string `json:"windows"`
	HoursADay float64  `json:"hours_per_day"`
	Cost      float64  `json:"cost_per_year"`
	Failing   float64  `json:"failing_showers_per_year"`
	Unmet     float64  `json:"unmet_share"`
	Serves    bool     `json:"serves"` // keeps the service rule, or does no worse than the windows as stated
}

// windowYears is the number of years that windows are tried on: both options and
// all windows meet the same, so that few tell them apart.
const windowYears = 3

// SolveWindows gives the case with windows in place of the wish for the cheapest
// hours, and what was chosen for each option; a case without such a wish comes
// back as it is. The same case gives the same windows whatever the workers.
func (c *Case) SolveWindows(ctx context.Context, workers int) (*Case, [sides]*WindowChoice, error) {
	var choices [sides]*WindowChoice
	solved := c
	for side := range sides {
		if c.control(side).Cheapest.Hours <= 0 || len(c.Tariffs) == 0 {
			continue
		}
		windows, choice, err := c.cheapestWindows(ctx, side, workers)
		if err != nil {
			return nil, choices, err
		}
		solved, choices[side] = solved.withWindows(side, windows), choice
	}
	return solved, choices, nil
}

// cheapestWindows tries windows for one option and picks those that cost least
// among those that serve.
func (c *Case) cheapestWindows(ctx context.Context, side Side, workers int) ([]Window, *WindowChoice, error) {
	rates, err := c.rates()
	if err != nil {
		return nil, nil, err
	}
	first := rates[0]
	k := c.control(side)
	candidates := windowCandidates(slotPrices(c.marginalPrices(first), c.Climate.Year()), k.Cheapest.Hours)
	scout, err := newScout(c, newWorlds(c))
	if err != nil {
		return nil, nil, err
	}
	choice := &WindowChoice{Tariff: first.Name(), RaisedC: k.Cheapest.RaisedC, Years: min(c.Years, windowYears)}
	trials := make([]Trial, len(candidates))
	err = inParallel(workers, len(candidates), func(i int) (err error) {
		trials[i], err = scout.trial(ctx, c.withWindows(side, candidates[i]), side, choice.Years)
		return err
	})
	if err != nil {
		return nil, nil, err
	}
	for i, windows := range candidates {
		if i == 0 {
			windows = k.Windows
		}
		choice.try(c, windows, &trials[i])
	}
	return candidates[choice.pick()], choice, nil
}

// try notes what a set of windows brought.
func (w *WindowChoice) try(c *Case, windows []Window, t *Trial) {
	tried := WindowTrial{
		Windows: windowTexts(windows), HoursADay: hoursOpen(windows),
		Cost: t.Cost, Failing: t.Failing.Mean, Unmet: t.UnmetShare, Serves: true,
	}
	if len(w.Tried) > 0 {
		stated := &w.Tried[0]
		tried.Serves = tried.Failing <= math.Max(c.Service.FailuresPerYear, stated.Failing) &&
			tried.Unmet <= math.Max(LargestUnmetShare, stated.Unmet)
	}
	w.Tried = append(w.Tried, tried)
}

// pick chooses the cheapest windows that serve, the earlier of equals.
func (w *WindowChoice) pick() int {
	best := 0
	for i := range w.Tried {
		if w.Tried[i].Serves && w.Tried[i].Cost < w.Tried[best].Cost {
			best = i
		}
	}
	stated, chosen := &w.Tried[0], &w.Tried[best]
	w.Windows, w.HoursADay = chosen.Windows, chosen.HoursADay
	w.SavedPerYear = stated.Cost - chosen.Cost
	w.ExtraFailing = chosen.Failing - stated.Failing
	w.ExtraUnmet = chosen.Unmet - stated.Unmet
	return best
}

// withWindows gives the case with one option's wish for the cheapest hours
// answered: by windows, by a raised setpoint in them, or, without windows, by
// what is stated.
func (c *Case) withWindows(side Side, windows []Window) *Case {
	return c.withControl(side, func(k *Control) {
		raisedC := k.Cheapest.RaisedC
		k.Cheapest = Cheapest{}
		switch {
		case len(windows) == 0:
		case raisedC == 0:
			k.Windows = windows
		default:
			k.Raised = append([]Raised(nil), k.Raised...)
			for _, w := range windows {
				k.Raised = append(k.Raised, Raised{Window: w, SetpointC: raisedC})
			}
		}
	})
}

// keepChoices makes the comparison one of the case as stated, with what was
// chosen for it.
func (cmp *Comparison) keepChoices(stated *Case, choices [sides]*WindowChoice) (err error) {
	for side := range sides {
		cmp.Options.Of(side).CheapestWindows = choices[side]
	}
	cmp.CaseDigest, err = stated.Digest()
	return err
}
