package workbook

import (
	"dhwcompare/compare"
	"dhwcompare/compare/calendar"

	"github.com/xuri/excelize/v2"
)

// chart is a native chart.
type chart struct {
	title, description string // the title gives the unit
	kind               excelize.ChartType
	column             string  // of the tables of months, for a chart of months
	width, height      uint    // pixels
	upright            bool    // labels of the horizontal axis stand on end
	stacked            bool    // bars of one name lie over each other
	plain              bool    // one series, which needs no legend
	floor              float64 // where the upright axis begins; 0: as the program that shows it likes
}

// Size of the charts of months, and the cells that one covers.
const (
	chartWidthPx  = 700
	chartHeightPx = 330
	chartRows     = 18
	chartColumns  = 8
)

func monthCharts() []chart {
	return []chart{
		{title: "Electricity for hot water, kWh a month", kind: excelize.Col, column: "electricity_kwh", description: "Electricity for hot water of both options, month by month"},
		{title: "Heat delivered per unit of electricity, kWh per kWh", kind: excelize.Line, column: "system_efficiency", description: "Heat delivered per unit of electricity of both options, month by month"},
		{title: "Starts for hot water, per day", kind: excelize.Col, column: "starts_per_day", description: "Compressor starts a day of both options, month by month"},
		{title: "Failing showers, per month", kind: excelize.Col, column: "failing_showers_per_year", description: "Failing showers of both options, month by month"},
		{title: "Heat lost in vessel, kWh a month", kind: excelize.Col, column: "vessel_loss_kwh", description: "Heat lost from the vessel of both options, month by month"},
	}
}

func (b *book) writeCharts() {
	s := b.sheet(chartsName)
	s.columnWidth(1, 2*chartColumns, 12)
	s.head("Charts of the mean year", "The charts follow the cells of the sheets Months, and Tariff and bills.")
	for side := range sideOrder() {
		s.text(seriesName(side), keyLook(side), blockName(side))
	}
	all := monthCharts()
	for i, c := range all {
		s.monthChart(chartPlace(i), c)
	}
	s.costChart(chartPlace(len(all)))
	rows := (len(all) + 2) / 2 * chartRows
	s.lay(page{onePage: true, last: place{2 * chartColumns, 4 + rows}})
}

// chartPlace lays charts out two by two.
func chartPlace(i int) place { return place{1 + i%2*chartColumns, 5 + i/2*chartRows} }

// monthChart draws one column of the months for both options.
func (s *sheet) monthChart(at place, c chart) {
	months := s.book.sheet(monthsName)
	var series []excelize.ChartSeries
	for side := range sideOrder() {
		first := months.columnPlace(side, c.column)
		series = append(series, s.optionSeries(side, months.monthNames(first.row), months.absolute(first, first.down(calendar.MonthsInAYear-1))))
	}
	s.drawChart(at, c, series)
}

// monthNames is the range of the names of the months of a table.
func (s *sheet) monthNames(row int) string {
	return s.absolute(place{1, row}, place{1, row + calendar.MonthsInAYear - 1})
}

// costChart draws the months' costs on the primary tariff.
func (s *sheet) costChart(at place) {
	bills := s.book.sheet(billsName)
	var series []excelize.ChartSeries
	for side := range sideOrder() {
		first := s.book.bills.tariffs[0].monthCost[side]
		series = append(series, s.optionSeries(side, bills.monthNames(first.row), bills.absolute(first, first.down(calendar.MonthsInAYear-1))))
	}
	s.drawChart(at, chart{title: "Cost on the first tariff, " + s.book.currency() + " a month", kind: excelize.Col,
		description: "Cost of each month on the first tariff, both options"}, series)
}

// columnPlace finds January of a column.
func (s *sheet) columnPlace(side int, name string) place {
	for _, t := range s.book.months.tables {
		for i := range t.columns {
			if t.columns[i].name == name {
				return t.blocks[side].first.right(firstMonthCol - 1 + i)
			}
		}
	}
	s.book.keep(errNoColumn(name))
	return place{1, 1}
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
	return excelize.ChartSeries{
		Name:       s.book.sheet(chartsName).absolute(seriesName(side), seriesName(side)),
		Categories: categories, Values: values, Fill: solid(colour),
		Line:   excelize.LineOptions{Type: excelize.LineSolid, Width: 2, Fill: solid(colour)},
		Marker: excelize.ChartMarker{Symbol: "none"},
	}
}

func (s *sheet) drawChart(at place, c chart, series []excelize.ChartSeries) {
	font := func(size float64, bold bool) *excelize.Font {
		return &excelize.Font{Family: fontName, Size: size, Color: "333333", Bold: bold}
	}
	if c.width == 0 {
		c.width, c.height = chartWidthPx, chartHeightPx
	}
	const wholly = 100 // per cent
	no, gap, overlap := false, uint(60), 0
	out := &excelize.Chart{
		Type: c.kind, Series: series, VaryColors: &no,
		Title:     excelize.ChartTitle{Paragraph: []excelize.RichTextRun{{Text: c.title, Font: font(12, true)}}},
		Legend:    excelize.ChartLegend{Position: "top", Font: font(10, false)},
		Dimension: excelize.ChartDimension{Width: c.width, Height: c.height},
		Format:    excelize.GraphicOptions{AltText: c.description},
		XAxis:     excelize.ChartAxis{Font: *font(9, false)},
		YAxis:     excelize.ChartAxis{Font: *font(9, false), MajorGridLines: true},
	}
	if c.upright {
		out.XAxis.Alignment.TextRotation = -90
	}
	switch c.kind {
	case excelize.Col:
		out.GapWidth, out.Overlap = &gap, &overlap
	case excelize.Bar:
		// Names stay clear of bars below zero, and read from the top.
		out.GapWidth, out.Overlap = &gap, &overlap
		out.XAxis.TickLabelPosition, out.XAxis.ReverseOrder = excelize.ChartTickLabelLow, true
	}
	if c.stacked {
		overlap = wholly
	}
	if c.plain {
		out.Legend.Position = "none"
	}
	if c.floor != 0 {
		out.YAxis.Minimum = &c.floor
	}
	s.book.keep(s.book.file.AddChart(s.name, at.String(), out))
}
