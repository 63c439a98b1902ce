package charts

import (
	"image/color"

	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"
)

// shadeCount is how many shades an eye tells apart in print, paper among them; a
// judgement.
const shadeCount = 6

// shades are steps of power from nothing to the highest, W, as steps of grey.
type shades struct {
	step float64
}

// shadesUpTo divides at round values.
func shadesUpTo(highest float64) shades {
	return shades{roundStep(highest / (shadeCount - 1))}
}

// of gives the shade of a value: 0 is next to nothing, and each further one is a
// step.
func (s shades) of(v float64) int {
	const nothing = 0.05 // of a step: standby shows as paper
	if v < nothing*s.step {
		return 0
	}
	return min(1+int(v/s.step), shadeCount-1)
}

// colours run from paper to ink, evenly.
func (s shades) colours() []color.NRGBA {
	out := make([]color.NRGBA, shadeCount)
	from, to := rgb(paperHex), rgb(inkHex)
	for i := range out {
		mix := func(a, b uint8) uint8 { return uint8((int(a)*(shadeCount-1-i) + int(b)*i) / (shadeCount - 1)) }
		out[i] = color.NRGBA{R: mix(from.R, to.R), G: mix(from.G, to.G), B: mix(from.B, to.B), A: 0xFF}
	}
	return out
}

const keyGap = 5.0 // points above the key

// key shows at the foot what the shades mean.
func (s shades) key(c draw.Canvas) {
	const swatch = 16.0
	style := words(textSize, rgb(mutedHex))
	x, y := c.Min.X, c.Min.Y+step(textSize)
	put(c, style, vg.Point{X: x, Y: y}, "W")
	x += style.Width("W") + 3*textGap
	for i, colour := range s.colours() {
		box(c, colour, x, y-step(textSize)+2, x+swatch, y)
		outline(c, line(rgb(mutedHex), gridWidth), x, y-step(textSize)+2, x+swatch, y)
		text := s.text(i)
		put(c, style, vg.Point{X: x + swatch + textGap, Y: y}, text)
		x += swatch + style.Width(text) + 3*textGap
	}
}

// text writes the range of a shade.
func (s shades) text(i int) string {
	switch i {
	case 0:
		return "almost none"
	case shadeCount - 1:
		return "more"
	default:
		return "to " + number(s.step*float64(i), 0)
	}
}
