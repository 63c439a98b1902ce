package workbook

import (
	"fmt"

	"dhwcompare/compare/calendar"

	"github.com/xuri/excelize/v2"
)

// halfHourRefs are the sums of the profile.
type halfHourRefs struct{ total [2]term }

// Columns of the sheet: the profile to the left, the day of half hours to the
// right.
const (
	slotCol    = 3 // half hour of the day, from 1
	profileCol = 5 // of the compact store; the cylinder's is beside it
	dayCol     = 8
	halfTop    = 5 // row of the headings
)

func (b *book) writeHalfHours() {
	s := b.sheet(halfHoursName)
	b.halves = &halfHourRefs{}
	s.head("Half-hours: electricity of the mean year", "Mean over the simulated years of each half hour, on standard time. Simulated; bills are worked out from these. The print shows the first day only.")
	s.text(place{1, 3}, sentence, "Of "+b.comparison().CostBoundary+".")
	s.widths(7, 6, 10, 9, 12, 12, 3, 9, 12, 12)
	s.tops(place{1, halfTop}, 42, "Month", "Day", "Half hour of the day", "Begins at", "Compact store, kWh", "Cylinder, kWh")
	for i := range calendar.HalfHoursADay {
		for _, c := range b.halfHour(i) {
			s.number(c.at, c.style, c.value)
		}
	}
	s.rest = bulk{rows: calendar.HalfHours - calendar.HalfHoursADay, row: func(i int) []cell { return b.halfHour(calendar.HalfHoursADay + i) }}
	s.text(place{4, halfTop - 1}, total, "Year")
	for side, profile := range b.comparison().Profiles {
		year := span{text: s.halfHours(profileCol + side)}
		for _, kWh := range profile {
			year.values = append(year.values, finite(kWh))
		}
		b.halves.total[side] = s.live(place{profileCol + side, halfTop - 1}, style{total, formatOne}, sum(year))
	}
	s.meanDay()
	s.lay(page{onePage: true, freeze: place{1, halfTop + 1}, last: place{dayCol + 12, halfTop + calendar.HalfHoursADay}})
}

// halfHour is the row of one half hour of the year.
func (b *book) halfHour(i int) []cell {
	day := i / calendar.HalfHoursADay
	month, slot := calendar.MonthOfDay(day), i%calendar.HalfHoursADay
	p := place{1, halfTop + 1 + i}
	row := []cell{
		{p, style{label, formatWhole}, float64(month + 1)},
		{p.right(1), style{label, formatWhole}, float64(day - calendar.MonthStartDay(month) + 1)},
		{p.right(slotCol - 1), style{label, formatWhole}, float64(slot + 1)},
		{p.right(slotCol), style{label, formatTime}, float64(slot) / calendar.HalfHoursADay},
	}
	for side, profile := range b.comparison().Profiles {
		row = append(row, cell{p.right(profileCol - 1 + side), style{simulated, "0.000"}, profile[i]})
	}
	return row
}

// halfHours is the range of a column of the year.
func (s *sheet) halfHours(col int) string {
	return s.prefix() + place{col, halfTop + 1}.String() + ":" + place{col, halfTop + calendar.HalfHours}.String()
}

// meanDay gives the mean of each half hour of the day over the year.
func (s *sheet) meanDay() {
	top := place{dayCol, halfTop}
	s.tops(top, 42, "Begins at", "Compact store, mean kWh", "Cylinder, mean kWh")
	for h := range calendar.HalfHoursADay {
		p := top.down(1 + h)
		s.text(p, label, fmt.Sprintf("%02d:%02d", h/2, h%2*30))
		for side := range sideOrder() {
			mean := 0.0
			for d := range calendar.Days {
				mean += s.book.comparison().Profiles[side][d*calendar.HalfHoursADay+h] / calendar.Days
			}
			s.live(p.right(1+side), style{derived, "0.000"}, call("AVERAGEIF", mean, s.halfHours(slotCol), s.prefix()+place{slotCol, p.row}.String(), s.halfHours(profileCol+side)))
		}
	}
	s.dayChart(top)
}

func (s *sheet) dayChart(top place) {
	var series []excelize.ChartSeries
	for side := range sideOrder() {
		from, to := top.down(1), top.down(calendar.HalfHoursADay)
		series = append(series, s.optionSeries(side, s.absolute(from, to), s.absolute(from.right(1+side), to.right(1+side))))
	}
	s.drawChart(top.right(4), chart{title: "Electricity by time of day, mean of the year, kWh in half an hour", kind: excelize.Line, upright: true, width: 560, height: 340,
		description: "Mean electricity of each half hour of the day, both options"}, series)
}
