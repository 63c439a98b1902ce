package charts

import (
	"fmt"
	"math"
	"slices"

	"dhwcompare/compare"
	"dhwcompare/compare/calendar"
)

// showerStrips is the picture of the water's temperature through a long shower:
// a row of panels for each month, a panel for each option.
type showerStrips struct {
	draws     *compare.Drawoff
	months    []int // 1 is January
	coldC     float64
	low, high float64 // C
}

const mostStripMonths = 3

func stripsChart(d *compare.Drawoff, coldC float64) Chart {
	s := showerStrips{draws: d, coldC: coldC, months: stripMonths(d)}
	s.low, s.high = s.reach()
	flow := ""
	if list := s.all(); len(list) > 0 {
		flow = sensible(list[0].FlowLPerMin) + " l/min "
	}
	return Chart{
		Name:     "shower-strips",
		Title:    s.finding(),
		Alt:      s.inWords(),
		subtitle: fmt.Sprintf("Temperature of a shower of %sfrom a fully warm store or cylinder. Lines: what the heat pump does meanwhile. A cross marks where one falls below %s °C, too cold.", flow, sensible(coldC)),
		room:     stripsHeight(len(s.months)),
		body:     s.draw,
	}
}

// stripMonths lists the months that were tested, in their order.
func stripMonths(d *compare.Drawoff) []int {
	var out []int
	for _, side := range bothSides() {
		for i := range d.Of(side).Strips {
			if m := d.Of(side).Strips[i].Month; m >= 1 && m <= 12 && !slices.Contains(out, m) {
				out = append(out, m)
			}
		}
	}
	slices.Sort(out)
	return out[:min(len(out), mostStripMonths)]
}

func (s *showerStrips) all() []compare.Strip {
	return append(slices.Clone(s.draws.Compact.Strips), s.draws.Cylinder.Strips...)
}

// reach gives the ends of the axis of temperature, on round values.
func (s *showerStrips) reach() (low, high float64) {
	low, high = s.coldC, s.coldC
	for _, strip := range s.all() {
		for _, q := range strip.Points {
			if finite(q.C) {
				low, high = min(low, q.C), max(high, q.C)
			}
		}
	}
	low, high = aroundK*math.Floor(low/aroundK), aroundK*math.Ceil(high/aroundK)
	if low == high {
		high += aroundK
	}
	return low, high
}

// of finds the strips of a panel.
func (s *showerStrips) of(side compare.Side, month int) []*compare.Strip {
	var out []*compare.Strip
	list := s.draws.Of(side).Strips
	for i := range list {
		if list[i].Month == month {
			out = append(out, &list[i])
		}
	}
	return out
}

// coldAt gives when a shower that was warm falls below the least temperature, min;
// false if it does not, or never was warm.
func (s *showerStrips) coldAt(strip *compare.Strip) (minute float64, cold bool) {
	warm := false
	for _, q := range strip.Points {
		switch {
		case !finite(q.Minute, q.C):
		case q.C >= s.coldC:
			warm = true
		case warm:
			return q.Minute, true
		}
	}
	return 0, false
}

// finding is of the first month with store or cylinder alone.
func (s *showerStrips) finding() string {
	if len(s.months) == 0 {
		return "How warm a long shower is"
	}
	state := s.draws.States[alone(s.draws.States)]
	text := fmt.Sprintf("In %s with the %s", calendar.MonthNames()[s.months[0]-1], withPump(state))
	a, b := s.lasts(compare.SideCompact, state), s.lasts(compare.SideCylinder, state)
	if a == "" || b == "" {
		return "How warm a long shower is"
	}
	if a == b {
		return fmt.Sprintf("%s, a shower %s with either option", text, a)
	}
	return fmt.Sprintf("%s, a shower from the compact store %s; from the cylinder it %s", text, a, b)
}

// lasts says how long a shower stays warm in a state of the first month; empty for
// one that was not tested.
func (s *showerStrips) lasts(side compare.Side, state string) string {
	for _, strip := range s.of(side, s.months[0]) {
		if strip.State == state && len(strip.Points) > 0 {
			return s.course(strip)
		}
	}
	return ""
}

func (s *showerStrips) course(strip *compare.Strip) string {
	if minute, cold := s.coldAt(strip); cold {
		return fmt.Sprintf("turns too cold after %s minutes", number(minute, 0))
	}
	if len(strip.Points) > 0 && strip.Points[len(strip.Points)-1].C < s.coldC {
		return "is never warm"
	}
	return fmt.Sprintf("stays warm for %s minutes or more", number(s.draws.LongestMin, 0))
}

func (s *showerStrips) inWords() string {
	text := fmt.Sprintf("Panels of lines, temperature against minutes of shower up to %s.", number(s.draws.LongestMin, 0))
	for _, month := range s.months {
		for _, side := range bothSides() {
			text += fmt.Sprintf(" %s, %v:", calendar.MonthNames()[month-1], side)
			for i, strip := range s.of(side, month) {
				if i > 0 {
					text += ";"
				}
				text += fmt.Sprintf(" %s, %s", withPump(strip.State), s.course(strip))
			}
			text += "."
		}
	}
	return text
}
