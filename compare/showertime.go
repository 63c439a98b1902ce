package compare

import (
	"dhwcompare/compare/household"
	"dhwcompare/compare/plant"
)

// ShowerTime says how long showers run how warm, in the mean year, once the cooled
// water of the pipe is out: a load duration, from the coldest on.
type ShowerTime struct {
	WantC   float64 `json:"want_c"`  // the warmest that any shower asks for
	LeastC  float64 `json:"least_c"` // below which water is too cold
	Minutes float64 `json:"minutes_per_year"`
	// Colder rises from a temperature that no water is colder than to one that all
	// of it is colder than; empty without showers.
	Colder []TimeColder `json:"colder"`
}

// TimeColder is the time in which showers run colder than a temperature.
type TimeColder struct {
	C       float64 `json:"c"`
	Minutes float64 `json:"minutes_per_year"`
	Share   float64 `json:"share"` // of all time of showers
}

// AsWantedWithinK is how far below the wanted temperature water still is as warm as
// wanted, for most hands: common practice, no source.
const AsWantedWithinK = 0.5

// NotAsWanted gives the minutes of the year in which showers run noticeably colder
// than wanted. Nearly all that decides between two options lies in them.
func (t *ShowerTime) NotAsWanted() float64 { return t.ColderThan(t.WantC - AsWantedWithinK) }

// TooCold gives the minutes of the year in which showers run too cold.
func (t *ShowerTime) TooCold() float64 { return t.ColderThan(t.LeastC) }

// showerClock adds up the years of one option.
type showerClock struct {
	wantC, leastC float64
	seconds       plant.ShowerTime // of the mean year
}

// take adds a year, weighted.
func (k *showerClock) take(l *plant.Ledger, weight float64) {
	for m := range l.Months {
		for i, s := range l.Months[m].ShowerTime {
			k.seconds[i] += weight * s
		}
	}
	for i := range l.Outcomes {
		if d := &l.Outcomes[i].Draw; d.Kind == household.Shower {
			k.wantC, k.leastC = max(k.wantC, d.WantC), max(k.leastC, d.MinC)
		}
	}
}

// time gives the load duration.
func (k *showerClock) time() ShowerTime {
	t := ShowerTime{WantC: k.wantC, LeastC: k.leastC}
	first, last := len(k.seconds), -1
	for i, s := range k.seconds {
		if s > 0 {
			first, last = min(first, i), i
			t.Minutes += s / secondsPerMinute
		}
	}
	colder := 0.0
	for i := first; i <= last; i++ {
		t.Colder = append(t.Colder, TimeColder{plant.ShowerClassC(i), colder, ratio(colder, t.Minutes)})
		colder += k.seconds[i] / secondsPerMinute
	}
	if last >= first {
		t.Colder = append(t.Colder, TimeColder{plant.ShowerClassC(last + 1), t.Minutes, 1})
	}
	return t
}

// ColderThan gives the minutes of the year in which showers run colder than a
// temperature; between two that are listed it goes straight.
func (t *ShowerTime) ColderThan(c float64) float64 {
	for i := range t.Colder {
		b := &t.Colder[i]
		if c > b.C {
			continue
		}
		if i == 0 {
			return 0
		}
		a := &t.Colder[i-1]
		return a.Minutes + (b.Minutes-a.Minutes)*(c-a.C)/(b.C-a.C)
	}
	return t.Minutes
}
