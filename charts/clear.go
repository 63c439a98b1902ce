package charts

import (
	"slices"

	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"
)

// uprights are where lines run from the foot of a picture to its head.
type uprights []vg.Length

const (
	touch    = textGap / 2 // from a line, points
	farthest = 16.0        // that a text is moved: further off it would not be taken for its bar's
)

// clear gives the end beyond which a text so wide is written, to the right or, with a
// negative sign, to the left: the end asked for, or the next line beyond which the text
// lies on no line and touches none. Where that is too far off, the text stays, and its
// ground interrupts the lines.
func (u uprights) clear(end vg.Length, sign float64, wide vg.Length) vg.Length {
	lines, way, from := slices.Sorted(slices.Values(u)), vg.Length(1), end
	if sign < 0 {
		slices.Reverse(lines)
		way = -1
	}
	for _, at := range lines {
		if ahead := (at - end) * way; ahead > textGap-touch && ahead < textGap+wide+touch {
			end = at
		}
	}
	if (end-from)*way > farthest {
		return from
	}
	return end
}

// beside writes a value beyond the end of its bar, clear of the lines.
func (u uprights) beside(c draw.Canvas, end vg.Point, sign float64, s draw.TextStyle, text string) {
	end.X = u.clear(end.X, sign, s.Width(text))
	beside(c, end, sign, s, text)
}
