package charts

import (
	"fmt"

	"dhwcompare/compare"
	"dhwcompare/compare/calendar"
)

// showerMap is the picture of how long a shower lasts at each flow in each month:
// a row of panels for each heat-pump state, a panel for each option.
type showerMap struct {
	draws  *compare.Drawoff
	states []int   // drawn: full output, and store or cylinder alone
	needs  float64 // min, the household's shower
}

func showerMapChart(d *compare.Drawoff, flowLPerMin, needsMin float64) Chart {
	m := showerMap{draws: d, states: []int{0}, needs: needsMin}
	if off := alone(d.States); off != 0 {
		m.states = append(m.states, off)
	}
	flow := d.NearestFlow(flowLPerMin)
	return Chart{
		Name:     "shower-map",
		Title:    m.finding(flow),
		Alt:      m.inWords(flow),
		subtitle: m.subtitle(),
		room:     m.room(),
		body:     m.draw,
	}
}

func (m *showerMap) subtitle() string {
	text := fmt.Sprintf("Minutes until a shower from a fully warm store or cylinder runs too cold, by flow (rows, l/min) and month; tests end at %s. The darker, the shorter.", number(m.draws.LongestMin, 0))
	for _, state := range m.states {
		for _, side := range bothSides() {
			for flow := range m.draws.FlowsLPerMin {
				if m.served(side, state, flow) < calendar.MonthsInAYear {
					return text + fmt.Sprintf(" Framed in red: shorter than the household's shower of %s minutes.", sensible(m.needs))
				}
			}
		}
	}
	return text
}

// serves reports whether the household's shower stays warm.
func (m *showerMap) serves(side compare.Side, month, state, flow int) bool {
	minutes := m.draws.Of(side).ShowerMin[month][state][flow]
	return minutes >= min(m.needs, m.draws.LongestMin)
}

// served counts the months in which it does.
func (m *showerMap) served(side compare.Side, state, flow int) int {
	n := 0
	for month := range calendar.MonthsInAYear {
		if m.serves(side, month, state, flow) {
			n++
		}
	}
	return n
}

// finding is of the household's flow in the last state drawn, which asks most.
func (m *showerMap) finding(flow int) string {
	state := m.states[len(m.states)-1]
	text := fmt.Sprintf("With the %s, a shower of %s minutes at %s l/min stays warm",
		withPump(m.draws.States[state]), sensible(m.needs), sensible(m.draws.FlowsLPerMin[flow]))
	a, b := m.served(compare.SideCompact, state, flow), m.served(compare.SideCylinder, state, flow)
	if a == b {
		return fmt.Sprintf("%s %s with either option", text, inMonths(a))
	}
	return fmt.Sprintf("%s %s with the compact store, %s with the cylinder", text, inMonths(a), inMonths(b))
}

func (m *showerMap) inWords(flow int) string {
	text := fmt.Sprintf("Panels of numbers, minutes of shower by flow and month. At %s litres a minute", sensible(m.draws.FlowsLPerMin[flow]))
	for _, state := range m.states {
		for _, side := range bothSides() {
			low, high := m.extremes(side, state, flow)
			text += fmt.Sprintf("; %v, %s: from %s to %s minutes, the household's shower stays warm %s",
				side, withPump(m.draws.States[state]), low, high, inMonths(m.served(side, state, flow)))
		}
	}
	return text + "."
}

// extremes writes the shortest and the longest month.
func (m *showerMap) extremes(side compare.Side, state, flow int) (low, high string) {
	months := &m.draws.Of(side).ShowerMin
	least, most := months[0][state][flow], months[0][state][flow]
	for month := range months {
		v := months[month][state][flow]
		least, most = min(least, v), max(most, v)
	}
	s := showerMinutes{draws: m.draws}
	return s.written(least), s.written(most)
}
