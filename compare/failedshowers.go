package compare

import (
	"dhwcompare/compare/calendar"
	"dhwcompare/compare/household"
	"dhwcompare/compare/plant"
)

// FailedShower is one shower that ran cold.
type FailedShower struct {
	Year     int     `json:"year"` // of the ensemble, counted from 1
	Day      int     `json:"day"`  // 1 is 1 January
	Hour     float64 `json:"hour"` // of the wall clock
	QueuePos int     `json:"queue_position"`
	ColdS    float64 `json:"cold_seconds"`
	LowestC  float64 `json:"lowest_c"`
}

// mostListed bounds the list of an option that fails every day for many years.
const mostListed = 1000

// failedShowers keeps the failing showers of an ensemble in order.
type failedShowers struct {
	first   []FailedShower
	leftOff int
}

func (f *failedShowers) add(year int, outcomes []plant.Outcome, y calendar.Year) {
	for i := range outcomes {
		o := &outcomes[i]
		if !o.Failed || o.Draw.Kind != household.Shower {
			continue
		}
		if len(f.first) == mostListed {
			f.leftOff++
			continue
		}
		local := y.Local(o.Draw.StartS)
		day := calendar.DayOf(local)
		f.first = append(f.first, FailedShower{
			Year: year + 1, Day: calendar.WrapDay(day) + 1, Hour: hourOf(local, day),
			QueuePos: o.Draw.QueuePos, ColdS: o.ColdS, LowestC: o.LowestC,
		})
	}
}
