package workbook

import (
	"fmt"
	"math"
	"slices"

	"dhwcompare/compare"

	"github.com/xuri/excelize/v2"
)

// Rows and columns of the sheet: sums above, the table of temperatures below them.
const (
	showerSumsRow  = 4
	showerTopRow   = 9
	showerTableRow = showerTopRow + 1
	showerShareCol = 5
	showerCols     = 17
)

// showerMinuteFormat shows crumbs of a minute too: the coldest water comes rarely.
const showerMinuteFormat = "#,##0.00"

// writeShowers shows how long showers run how warm.
func (b *book) writeShowers() {
	s := b.sheet(showersName)
	s.head("Shower temperatures: how long showers run colder than each temperature", "Mean year, from every simulated shower, once the cooled water in the pipe is out. Simulated (italic); differences and shares are formulas.")
	s.widths(30, 14, 14, 14, 14, 14)
	s.tops(place{1, showerSumsRow}, 30, "Minutes of shower a year", "Compact store", "Cylinder", "Difference")
	all := s.showerRow(place{1, showerSumsRow + 1}, "All showers", func(side int) float64 { return b.showers(side).Minutes })
	s.showerRow(place{1, showerSumsRow + 2}, fmt.Sprintf("Colder than wanted by over %g K", compare.AsWantedWithinK), func(side int) float64 { return b.showers(side).NotAsWanted() })
	s.showerRow(place{1, showerSumsRow + 3}, "Too cold by the rules of the case", func(side int) float64 { return b.showers(side).TooCold() })
	s.tops(place{1, showerTopRow}, 44, "Colder than, °C", "Compact store, min a year", "Cylinder, min a year", "Difference, min a year", "Compact store, share", "Cylinder, share")
	list := b.showerTemperatures()
	for i, c := range list {
		s.showerTemperature(place{1, showerTableRow + i}, c, all)
	}
	last := showerTableRow + len(list) - 1
	s.showerChart(place{showerShareCol + 3, showerTableRow + 1}, list) // below the rows that each page repeats
	s.lay(page{freeze: place{2, showerTableRow}, titleRows: showerTopRow, last: place{showerCols, last}})
}

// showerRow writes minutes of both options that stand for themselves.
func (s *sheet) showerRow(p place, words string, of func(side int) float64) [2]term {
	s.text(p, label, words)
	var out [2]term
	for side := range sideOrder() {
		out[side] = s.number(p.right(1+side), style{simulated, showerMinuteFormat}, of(side))
	}
	s.live(p.right(3), style{derived, signed(showerMinuteFormat)}, minus(out[0], out[1]))
	return out
}

// showerTemperatures lists the temperatures at which either option has anything to
// tell, rising.
func (b *book) showerTemperatures() []float64 {
	var out []float64
	for side := range sideOrder() {
		for _, q := range b.showers(side).Colder {
			out = append(out, q.C)
		}
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// showerTemperature writes the time below one temperature. At that below which water
// is too cold it must be the minutes too cold of the months.
func (s *sheet) showerTemperature(p place, c float64, all [2]term) {
	b := s.book
	s.number(p, style{simulated, formatOne}, c)
	var of [2]term
	for side := range sideOrder() {
		t := b.showers(side)
		of[side] = s.number(p.right(1+side), style{simulated, showerMinuteFormat}, t.ColderThan(c))
		s.live(place{showerShareCol + side, p.row}, style{derived, "0.00 %"}, quotient(of[side], all[side]))
		if months, ok := b.yearOf(side, "too_cold_minutes_per_year"); ok && c == t.LeastC && t.LeastC < t.WantC {
			b.expect(capital(blockName(side))+": minutes of shower that are too cold = those of the months", of[side], months)
		}
	}
	s.live(p.right(3), style{derived, signed(showerMinuteFormat)}, minus(of[0], of[1]))
}

// showerChart draws the coldest end, in which nearly all that differs lies.
func (s *sheet) showerChart(at place, list []float64) {
	const beyond = 1.3 // of the last minute that is not as warm as wanted
	var series []excelize.ChartSeries
	end := 0.0
	for side := range sideOrder() {
		end = max(end, beyond*s.book.showers(side).NotAsWanted())
	}
	for side := range sideOrder() {
		rows := 1
		for rows < len(list) && s.book.showers(side).ColderThan(list[rows]) <= end {
			rows++
		}
		first, last := place{1, showerTableRow}, place{1, showerTableRow + rows - 1}
		series = append(series, s.optionSeries(side, s.absolute(first.right(1+side), last.right(1+side)), s.absolute(first, last)))
	}
	s.drawChart(at, chart{title: "Temperature of shower water, °C, over minutes of shower a year that are colder, min", kind: excelize.Scatter, width: 580, height: 380,
		description: "Minutes of shower a year colder than each temperature, both options", floor: math.Floor(list[0])}, series)
}
