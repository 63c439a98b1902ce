package charts

import (
	"math"

	"gonum.org/v1/plot/vg"

	"dhwcompare/compare"
)

// reading is a temperature at an hour.
type reading struct{ hour, c float64 }

// pieces follows one height through the day, and breaks where points are missing.
func pieces(points []compare.DayPoint, of func(*compare.DayPoint) float64) [][]reading {
	var out [][]reading
	broken := true
	for i := range points {
		q := reading{points[i].Hour, of(&points[i])}
		if !finite(q.hour, q.c) {
			broken = true
			continue
		}
		if n := len(out); n > 0 && !broken {
			last := out[n-1]
			broken = q.hour-last[len(last)-1].hour > largestGapH
		}
		if broken {
			out = append(out, nil)
		}
		broken = false
		out[len(out)-1] = append(out[len(out)-1], q)
	}
	return out
}

// unseen is a deviation that no print shows, points.
const unseen = 0.08

// thinned leaves out points that lie on the line between their neighbours, which
// shortens the SVG several times over and changes nothing that can be seen. It
// may leave out a point only while every one skipped so far stays within unseen
// of the line.
func thinned(pts []vg.Point) []vg.Point {
	if len(pts) < 3 {
		return pts
	}
	out := pts[:1:1]
	from := 0
	for i := 2; i < len(pts); i++ {
		if !straight(pts[from : i+1]) {
			from = i - 1
			out = append(out, pts[from])
		}
	}
	return append(out, pts[len(pts)-1])
}

// straight reports whether the points between the ends lie on the line between
// them. Points go from left to right.
func straight(pts []vg.Point) bool {
	a, b := pts[0], pts[len(pts)-1]
	if b.X <= a.X {
		return false
	}
	for _, q := range pts[1 : len(pts)-1] {
		on := a.Y + (b.Y-a.Y)*(q.X-a.X)/(b.X-a.X)
		if math.Abs(float64(q.Y-on)) > unseen {
			return false
		}
	}
	return true
}
