package workbook

import (
	"dhwcompare/compare"
	"dhwcompare/compare/calendar"

	"github.com/xuri/excelize/v2"
)

// chart is a native chart of months.
type chart struct {
	title, unit, description string
	kind                     excelize.ChartType
	columns                  []string // of the tables of months: one for each option, or several for both
}

const (
	chartWidthPx  = 640
	chartHeightPx = 330
	chartRows     = 18 // rows that a chart covers
	chartColumns  = 8  // columns that a chart covers
)

func (b *book) writeCharts() {
	s := b.sheet(chartsName)
	s.text(place{1, 1}, title, "Charts of the mean year")
	s.text(place{1, 2}, label, "The charts follow the cells of the sheet Months.")
	for side := range sideOrder() {
		s.text(seriesName(side), keyLook(side), blockName(side))
	}
	charts := []chart{
		{title: "Electricity for hot water", unit: "kWh a month", kind: excelize.Col, columns: []string{"electricity_kwh"}, description: "Electricity for hot water of both options, month by month"},
		{title: "Heat delivered per unit of electricity", unit: "kWh per kWh", kind: excelize.Line, columns: []string{"system_efficiency"}, description: "Heat delivered per unit of electricity of both options, month by month"},
		{title: "Compressor starts a day", unit: "starts a day", kind: excelize.Col, columns: []string{"starts_per_day"}, description: "Compressor starts a day of both options, month by month"},
		{title: "Failing showers", unit: "showers a month", kind: excelize.Col, columns: []string{"failing_showers_per_year"}, description: "Failing showers of both options, month by month"},
	}
	for i, c := range charts {
		at := place{1 + i%2*chartColumns, 5 + i/2*chartRows}
		s.monthChart(at, c)
	}
	s.columnWidth(1, 2*chartColumns, 11.5)
	s.lay(page{onePage: true, last: place{2 * chartColumns, 4 + 2*chartRows}})
}

// monthChart draws one column of the months for both options.
func (s *sheet) monthChart(at place, c chart) {
	months := s.book.sheet(monthsName)
	var series []excelize.ChartSeries
	for side := range sideOrder() {
		first, _ := months.columnPlace(side, c.columns[0])
		names := months.absolute(place{1, first.row}, place{1, first.row + calendar.MonthsInAYear - 1})
		values := months.absolute(first, first.down(calendar.MonthsInAYear-1))
		series = append(series, s.optionSeries(side, names, values))
	}
	s.drawChart(at, c, series)
}

// columnPlace finds January of a column.
func (s *sheet) columnPlace(side int, name string) (place, bool) {
	for _, t := range s.book.months.tables {
		for i := range t.columns {
			if t.columns[i].name == name {
				return t.blocks[side].first.right(firstMonthCol - 1 + i), true
			}
		}
	}
	s.book.keep(errNoColumn(name))
	return place{}, false
}

// seriesName is the cell that names an option in the legends of charts.
func seriesName(side int) place { return place{1 + side, 3} }

func keyLook(side int) look {
	if side == int(compare.SideCompact) {
		return keyCompact
	}
	return keyCylinder
}

// optionSeries is one option's series in its colour.
func (s *sheet) optionSeries(side int, categories, values string) excelize.ChartSeries {
	colour := optionColour(side)
	name := s.book.sheet(chartsName).absolute(seriesName(side), seriesName(side))
	return excelize.ChartSeries{
		Name: name, Categories: categories, Values: values, Fill: solid(colour),
		Line:   excelize.LineOptions{Type: excelize.LineSolid, Width: 2, Fill: solid(colour)},
		Marker: excelize.ChartMarker{Symbol: "none"},
	}
}

func (s *sheet) drawChart(at place, c chart, series []excelize.ChartSeries) {
	font := func(size float64, bold bool) *excelize.Font {
		return &excelize.Font{Family: fontName, Size: size, Color: "333333", Bold: bold}
	}
	words := func(text string, size float64, bold bool) []excelize.RichTextRun {
		return []excelize.RichTextRun{{Text: text, Font: font(size, bold)}}
	}
	no, gap, overlap := false, uint(60), 0
	out := &excelize.Chart{
		Type: c.kind, Series: series, VaryColors: &no,
		Title:     excelize.ChartTitle{Paragraph: words(c.title, 12, true)},
		Legend:    excelize.ChartLegend{Position: "top", Font: font(10, false)},
		Dimension: excelize.ChartDimension{Width: chartWidthPx, Height: chartHeightPx},
		Format:    excelize.GraphicOptions{AltText: c.description},
		XAxis:     excelize.ChartAxis{Font: *font(9, false)},
		YAxis: excelize.ChartAxis{Font: *font(9, false), MajorGridLines: true,
			Title: excelize.ChartTitle{Paragraph: words(c.unit, 9, false)}},
	}
	if c.kind == excelize.Col {
		out.GapWidth, out.Overlap = &gap, &overlap
	}
	s.book.keep(s.book.file.AddChart(s.name, at.String(), out))
}
