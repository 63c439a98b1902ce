package main

import (
	"slices"
	"strings"
)

// reason is why a change of a line cannot be noticed.
type reason struct{ file, was, is, why string }

// reasons lists the changes that are argued away, as their lines stand without their
// indent.
func reasons() []reason {
	return slices.Concat(heatpumpReasons(), vesselReasons(), plantReasons(), tariffReasons())
}

func heatpumpReasons() []reason {
	return []reason{
		{
			"compare/heatpump/unit.go", "if share <= kneeShare {", "if share < kneeShare {",
			"at the knee both branches give the same: a lightness of exactly 1",
		},
		{
			"compare/heatpump/unit.go", "atMinimum := outputW < c.minOutputW(maxW)", "atMinimum := outputW <= c.minOutputW(maxW)",
			"an output equal to the smallest to the last bit is the smallest either way",
		},
		{
			"compare/heatpump/grid.go", "if belowC := returnC + leftW/capacityRateWPerK; belowC <= first {", "if belowC := returnC + leftW/capacityRateWPerK; belowC < first {",
			"water at exactly the first column solves the first stretch too",
		},
		{
			"compare/heatpump/start.go", "return 0", "return (-1)",
			"less than nothing missing counts as nothing missing",
		},
	}
}

func vesselReasons() []reason {
	return []reason{
		{
			"compare/vessel/compact.go", "if drawKgPerS > 0 {", "if drawKgPerS >= 0 {",
			"no flow takes for ever to fill a cell",
		},
		{
			"compare/vessel/advect.go", "if slope*rise <= 0 {", "if slope*rise < 0 {",
			"where one of the two is zero both schemes give zero",
		},
		{
			"compare/vessel/advect.go", "if way > 0 {", "if way > (-1) {",
			"there are two ways, 1 and -1",
		},
		{
			"compare/vessel/through.go", "for left > 0 && left > wholeCell*kg {", "for left > 0 && left >= wholeCell*kg {",
			"a crumb of a step's water is rounding",
		},
		{
			"compare/vessel/through.go", "whole := c.layerKg * (1 - wholeCell)", "whole := c.layerKg * (1 + wholeCell)",
			"what is short of a layer by rounding moves it all the same, and is then complete",
		},
		{
			"compare/vessel/settle.go", "if below > temps[i] {", "if below >= temps[i] {",
			"layers of one temperature take their common mean, which is theirs",
		},
		{
			"compare/vessel/cylinder.go",
			"if last := len(c.overlap) - 1; last >= 0 && math.Abs(share-c.overlap[last]) < rounding {",
			"if last := len(c.overlap) - 1; last >= 0 && math.Abs(share-c.overlap[last]) <= rounding {",
			"rounding is no exact bound",
		},
		{
			"compare/vessel/advect.go", "if a < b {", "if a <= b {",
			"of two equal numbers either is the lesser",
		},
		{
			"compare/vessel/cylinder.go",
			"if last := len(c.overlap) - 1; last >= 0 && math.Abs(share-c.overlap[last]) < rounding {",
			"if last := len(c.overlap) - 2; last >= 0 && math.Abs(share-c.overlap[last]) < rounding {",
			"shares that differ by rounding give the same to rounding; being equal only saves work",
		},
		{
			"compare/vessel/settle.go", "case high+1 < len(temps) && temps[high+1]*count < sum:", "case high+1 < len(temps) && temps[high+1]*count <= sum:",
			"a layer that has the mean leaves it as it is",
		},
	}
}

func plantReasons() []reason {
	return []reason{
		{
			"compare/plant/charge.go", "slope, intercept := m.vessel.ReturnLine(m.primaryKgPerS, 0)", "slope, intercept := m.vessel.ReturnLine(m.primaryKgPerS, (-1))",
			"a step of less than no length is one of no length",
		},
		{
			"compare/plant/leg.go", "if l.inUse > 0 || t <= l.atS {", "if l.inUse > 0 || t < l.atS {",
			"in no time nothing cools",
		},
		{
			"compare/plant/drawing.go", "if g.flushKg > 0 || g.holdS > 0 {", "if g.flushKg > 1 || g.holdS > 0 {",
			"while cold water runs out nothing of the draw is counted, so that it cannot be over",
		},
		{
			"compare/plant/frost.go", "case outdoorC <= noneBelowC || outdoorC >= noneAboveC:", "case outdoorC <= noneBelowC || outdoorC > noneAboveC:",
			"the line of the last branch reaches nothing there",
		},
		{
			"compare/plant/frost.go", "case outdoorC < slowC:", "case outdoorC <= slowC:",
			"both lines meet there",
		},
		{
			"compare/plant/heating.go",
			"return m.heating.needsHeating && m.room.deficitJ(&m.params.House) > bands*m.heating.bandJ",
			"return m.heating.needsHeating && m.room.deficitJ(&m.params.House) >= bands*m.heating.bandJ",
			"a deficit is never equal to a band to the last bit, but for none at the very start",
		},
		{
			"compare/plant/step.go", "if end > m.t {", "if end >= m.t {",
			"a moment that is now has been acted on: the step is cut to the shortest once, and nothing else",
		},
		{
			"compare/plant/trace.go",
			"s.BottomC, s.MiddleC, s.TopC = m.vessel.AtC(0), m.vessel.AtC(0.5), m.vessel.AtC(1)",
			"s.BottomC, s.MiddleC, s.TopC = m.vessel.AtC((-1)), m.vessel.AtC(0.5), m.vessel.AtC(1)",
			"below the bottom there is the bottom",
		},
	}
}

func tariffReasons() []reason {
	return []reason{
		{
			"tariffs/series_rows.go", "return 0", "return (-1)",
			"the value of a file that is refused is never looked at",
		},
		{
			"tariffs/series_rows.go",
			"return time.Unix(atS-t.offsetS, 0).UTC().Format(stampLayouts[0])", "return time.Unix(atS-t.offsetS, 1).UTC().Format(stampLayouts[0])",
			"a nanosecond is not shown",
		},
		{
			"tariffs/series.go",
			"func yearStart(year int) time.Time { return time.Date(year, time.January, 1, 0, 0, 0, 0, time.UTC) }",
			"func yearStart(year int) time.Time { return time.Date(year, time.January, 1, 0, 0, 0, 1, time.UTC) }",
			"only whole seconds of it are used",
		},
		{
			"tariffs/series_grid.go", "after := g.t.lastLine() + 1", "after := g.t.lastLine() + 2",
			"beyond the last line there is none",
		},
		{
			"tariffs/rates.go", "first:          make([]int32, 1, calendar.HalfHours+1),", "first:          make([]int32, 1, calendar.HalfHours+(0)),",
			"a capacity to start from, which grows as needed",
		},
		{
			"tariffs/bill.go", "lines := make([]Line, n*(calendar.MonthsInAYear+1))", "lines := make([]Line, n*(calendar.MonthsInAYear+2))",
			"only memory that nobody uses",
		},
		{
			"tariffs/series.go", "half := make([]float64, 0, len(hourly)*halfHoursPerHour)", "half := make([]float64, 0, len(hourly)/halfHoursPerHour)",
			"a capacity to start from, which grows as needed",
		},
		{
			"tariffs/rates.go", "parts:          make([]part, 0, calendar.HalfHours),", "parts:          make([]part, 1, calendar.HalfHours),",
			"a part of no length in the first half hour adds nothing to price or bill",
		},
	}
}

// argument gives the reason for which a change cannot be noticed, or nothing.
func argument(m *mutant) string {
	was, is := m.lines()
	for _, r := range reasons() {
		if r.file == m.file && r.was == strings.TrimSpace(was) && r.is == strings.TrimSpace(is) {
			return r.why
		}
	}
	return ""
}
