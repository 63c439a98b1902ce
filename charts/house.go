package charts

import (
	"fmt"
	"math"

	"gonum.org/v1/plot/vg/draw"

	"dhwcompare/compare"
)

// heats reports whether the heat pump heats the house on a day.
func heats(day *compare.Day) bool {
	if !hasDay(day) {
		return false
	}
	for _, side := range bothSides() {
		for i := range day.Of(side).Points {
			if day.Of(side).Points[i].HouseW > 0 {
				return true
			}
		}
	}
	return false
}

// winterHouseChart follows the house through the cold day: heat for heating and
// for hot water, defrosts and the room.
func winterHouseChart(cmp *compare.Comparison) Chart {
	day := &cmp.Shown.WinterDay
	return Chart{
		Name:     "winter-day-house",
		Title:    houseTitle(day),
		Alt:      houseAlt(day),
		subtitle: "Heat from the heat pump for heating and for hot water, when it melts ice off itself, and the temperature of the room.",
		caption:  fmt.Sprintf("a day of simulated year %d", cmp.Shown.Year),
		room:     houseHeight,
		body:     func(c draw.Canvas) { drawHouse(c, day) },
	}
}

func houseTitle(day *compare.Day) string {
	text := dayHead(day, "A cold day")
	low, _, any := extent(day.Compact.Points, roomC)
	other, _, anyOther := extent(day.Cylinder.Points, roomC)
	if !any || !anyOther {
		return text
	}
	a, b := number(low, 1), number(other, 1)
	if a == b {
		return fmt.Sprintf("%s: the room stays at %s °C or above with either option", text, a)
	}
	return fmt.Sprintf("%s: the room stays at %s °C or above with the compact store, %s °C with the cylinder", text, a, b)
}

func houseAlt(day *compare.Day) string {
	text := "Two panels over the hours of the day."
	for _, side := range bothSides() {
		points := day.Of(side).Points
		low, high, any := extent(points, roomC)
		if !any {
			text += fmt.Sprintf(" %s: no temperatures.", capital(side.String()))
			continue
		}
		_, heating, _ := extent(points, houseKW)
		_, water, _ := extent(points, waterKW)
		text += fmt.Sprintf(" %s: room from %s to %s °C; heating up to %s kW; hot water up to %s kW, %s; ice melted %s.",
			capital(side.String()), number(low, 1), number(high, 1), number(heating, 1), number(water, 1),
			times(len(runs(points))), times(len(spans(points, defrosting))))
	}
	return text
}

const wattsPerKW = 1000.0

func roomC(p *compare.DayPoint) float64   { return p.RoomC }
func houseKW(p *compare.DayPoint) float64 { return max(0, p.HouseW/wattsPerKW) }
func waterKW(p *compare.DayPoint) float64 { return max(0, p.HeatW/wattsPerKW) }

func heatsWater(p *compare.DayPoint) bool { return p.HeatW > 0 }
func heatsRooms(p *compare.DayPoint) bool { return p.HouseW > 0 }
func defrosting(p *compare.DayPoint) bool { return p.Defrosting }

// extent gives the lowest and the highest of what a trace shows, if it has any.
func extent(points []compare.DayPoint, of func(*compare.DayPoint) float64) (low, high float64, any bool) {
	low, high = math.Inf(1), math.Inf(-1)
	for i := range points {
		if v := of(&points[i]); finite(v) {
			low, high, any = min(low, v), max(high, v), true
		}
	}
	return low, high, any
}

// houseScale is what both panels share.
type houseScale struct {
	kW                float64 // top of the axis of power
	roomLow, roomHigh float64 // C, half degrees
}

func houseScaleOf(day *compare.Day) houseScale {
	s := houseScale{roomLow: math.Inf(1), roomHigh: math.Inf(-1)}
	highest := 0.0
	for _, side := range bothSides() {
		points := day.Of(side).Points
		for _, of := range []func(*compare.DayPoint) float64{houseKW, waterKW} {
			if _, high, any := extent(points, of); any {
				highest = max(highest, high)
			}
		}
		if low, high, any := extent(points, roomC); any {
			s.roomLow, s.roomHigh = min(s.roomLow, math.Floor(2*low)/2), max(s.roomHigh, math.Ceil(2*high)/2)
		}
	}
	if s.roomLow > s.roomHigh {
		s.roomLow, s.roomHigh = 20, 20
	}
	if s.roomLow == s.roomHigh {
		s.roomHigh += 0.5
	}
	s.kW = top(highest)
	return s
}

const houseHeight = 300.0 // points of both panels

func drawHouse(c draw.Canvas, day *compare.Day) {
	scale := houseScaleOf(day)
	topAndBottom(c, func(c draw.Canvas, side compare.Side) { (&housePanel{scale, side, day.Of(side)}).draw(c) })
}
