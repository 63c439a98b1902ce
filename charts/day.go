package charts

import (
	"fmt"
	"math"

	"gonum.org/v1/plot/vg/draw"

	"dhwcompare/compare"
	"dhwcompare/compare/calendar"
)

// winterDayChart follows both options through a cold day, one under the other on
// the same axes.
func winterDayChart(cmp *compare.Comparison) Chart {
	day := &cmp.Shown.WinterDay
	if !hasDay(day) {
		return Chart{
			Name:  "winter-day",
			Title: "A cold day",
			Alt:   "No day of detail in this comparison.",
			room:  emptyHeight,
			body:  func(c draw.Canvas) { empty(c, "no day of detail in this comparison") },
		}
	}
	return dayChart(cmp, day, "winter-day", "A cold day")
}

// summerDayChart follows both options through a day of July with many showers.
func summerDayChart(cmp *compare.Comparison) Chart {
	return dayChart(cmp, &cmp.Shown.SummerDay, "summer-day", "A summer day with many showers")
}

func dayChart(cmp *compare.Comparison, day *compare.Day, name, words string) Chart {
	return Chart{
		Name:     name,
		Title:    dayTitle(day, words),
		Alt:      dayAlt(day),
		subtitle: daySubtitle(day),
		caption:  fmt.Sprintf("a day of simulated year %d", cmp.Shown.Year),
		room:     dayHeight,
		body:     func(c draw.Canvas) { drawDay(c, day) },
	}
}

func hasDay(day *compare.Day) bool {
	return day.Day >= 1 && day.Day <= calendar.Days && finite(day.MeanC)
}

// dayHead says which day it is.
func dayHead(day *compare.Day, words string) string {
	return fmt.Sprintf("%s (%s, %s °C outside)", words, date(day.Day), number(day.MeanC, 0))
}

func dayTitle(day *compare.Day, words string) string {
	text := dayHead(day, words)
	if len(day.Compact.Points) == 0 || len(day.Cylinder.Points) == 0 {
		return text
	}
	a, b := len(runs(day.Compact.Points)), len(runs(day.Cylinder.Points))
	if a == b {
		return fmt.Sprintf("%s: the heat pump runs %s for either option", text, times(a))
	}
	return fmt.Sprintf("%s: the heat pump runs %s for the compact store, %s for the cylinder", text, times(a), times(b))
}

func daySubtitle(day *compare.Day) string {
	text := "Temperature in the store and in the cylinder, water drawn, and when the heat pump runs."
	if failed(day.Compact.Draws)+failed(day.Cylinder.Draws) > 0 {
		text += " A cross marks water that ran too cold."
	}
	return text
}

func dayAlt(day *compare.Day) string {
	text := "Two panels over the hours of the day."
	for _, side := range bothSides() {
		t := day.Of(side)
		low, high, any := heat(t.Points)
		if !any {
			text += fmt.Sprintf(" %s: no temperatures.", capital(side.String()))
			continue
		}
		text += fmt.Sprintf(" %s: from %s to %s °C, the heat pump runs %s, %d draws of water, %d of them too cold.",
			capital(side.String()), number(low, 0), number(high, 0), times(len(runs(t.Points))), len(t.Draws), failed(t.Draws))
	}
	return text
}

func failed(draws []compare.DayDraw) int {
	n := 0
	for i := range draws {
		if draws[i].Failed {
			n++
		}
	}
	return n
}

// heat gives the lowest and highest temperature of a trace, if it has any.
func heat(points []compare.DayPoint) (low, high float64, any bool) {
	low, high = math.Inf(1), math.Inf(-1)
	for i := range points {
		p := &points[i]
		for _, t := range []float64{p.BottomC, p.MiddleC, p.TopC} {
			if finite(t) {
				low, high, any = min(low, t), max(high, t), true
			}
		}
	}
	return low, high, any
}

// span is a stretch of the day, hours.
type span struct{ from, to float64 }

// runningW is more than standby takes and less than any compressor.
const runningW = 100.0

// runs joins the points at which the heat pump runs for hot water.
func runs(points []compare.DayPoint) []span {
	return spans(points, func(p *compare.DayPoint) bool { return p.ElectricW > runningW })
}

// spans joins the points at which something holds. A point speaks for the time
// since the point before.
func spans(points []compare.DayPoint, holds func(*compare.DayPoint) bool) []span {
	var out []span
	before := 0.0
	on := false
	for i := range points {
		p := &points[i]
		now := holds(p)
		switch {
		case now && on:
			out[len(out)-1].to = p.Hour
		case now:
			out = append(out, span{before, p.Hour})
		}
		on, before = now, p.Hour
	}
	return out
}

// dayScale is what both panels share.
type dayScale struct {
	low, high float64 // C
	litres    float64 // of the largest draw
}

const aroundK = 5.0 // marks of temperature fall on multiples of it

func scaleOf(day *compare.Day) dayScale {
	s := dayScale{low: math.Inf(1), high: math.Inf(-1)}
	for _, side := range bothSides() {
		if low, high, any := heat(day.Of(side).Points); any {
			s.low, s.high = min(s.low, low), max(s.high, high)
		}
		for _, d := range day.Of(side).Draws {
			if finite(d.Litres) {
				s.litres = max(s.litres, d.Litres)
			}
		}
	}
	if s.low > s.high {
		s.low, s.high = 20, 60
	}
	s.low, s.high = aroundK*math.Floor(s.low/aroundK), aroundK*math.Ceil(s.high/aroundK)
	if s.high-s.low < aroundK {
		s.high = s.low + aroundK
	}
	return s
}

const dayHeight = 346.0 // points of both panels

func drawDay(c draw.Canvas, day *compare.Day) {
	scale := scaleOf(day)
	topAndBottom(c, func(c draw.Canvas, side compare.Side) { (&dayPanel{scale, side, day.Of(side)}).draw(c) })
}
