package tariffs

import (
	"fmt"
	"slices"
	"time"
)

// bands turns one schedule matrix into bands: months with the same day share
// theirs, and a run of hours in one period is one band.
func (m *matrixFile) bands(schedule [][]int, days Days) []Band {
	var bands []Band
	done := make([]bool, len(schedule))
	for i, day := range schedule {
		if done[i] {
			continue
		}
		var months []time.Month
		for j := i; j < len(schedule); j++ {
			if slices.Equal(schedule[j], day) {
				done[j] = true
				months = append(months, time.Month(j+1))
			}
		}
		bands = append(bands, m.dayBands(day, days, months)...)
	}
	return bands
}

func (m *matrixFile) dayBands(day []int, days Days, months []time.Month) []Band {
	var bands []Band
	for from := 0; from < len(day); {
		to := from + 1
		for to < len(day) && day[to] == day[from] {
			to++
		}
		tier := m.Structure[day[from]][0]
		bands = append(bands, Band{
			Label:    fmt.Sprintf("period %d", day[from]),
			Days:     days,
			Months:   months,
			StartMin: from * minutesAnHour,
			EndMin:   to * minutesAnHour,
			PerKWh:   tier.Rate + tier.Adj,
		})
		from = to
	}
	return bands
}
