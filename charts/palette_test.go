package charts

import (
	"image/color"
	"math"
	"testing"
)

// luminance is the relative luminance of WCAG 2.2 (w3.org/TR/WCAG22,
// "relative luminance").
func luminance(c color.NRGBA) float64 {
	return 0.2126*linear(c.R) + 0.7152*linear(c.G) + 0.0722*linear(c.B)
}

func linear(v uint8) float64 {
	s := float64(v) / 255
	if s <= 0.04045 {
		return s / 12.92
	}
	return math.Pow((s+0.055)/1.055, 2.4)
}

// contrast is the contrast ratio of WCAG 2.2.
func contrast(a, b color.NRGBA) float64 {
	high, low := luminance(a), luminance(b)
	if high < low {
		high, low = low, high
	}
	return (high + 0.05) / (low + 0.05)
}

func TestContrast(t *testing.T) {
	const (
		graphics = 3.0 // WCAG 2.2, 1.4.11
		text     = 4.5 // WCAG 2.2, 1.4.3
	)
	for _, c := range []struct {
		name        string
		a, b        uint32
		least, want float64
	}{
		{"compact store on paper", compactHex, paperHex, graphics, 3.29},
		{"cylinder on paper", cylinderHex, paperHex, graphics, 11.83},
		{"compact store beside cylinder, so that grey prints tell them apart", compactHex, cylinderHex, graphics, 3.59},
		{"failure on paper", failHex, paperHex, graphics, 7.89},
		{"words on the compact store's bar", inkHex, compactHex, text, 5.20},
		{"words on the cylinder's bar", paperHex, cylinderHex, text, 11.83},
		{"words about the compact store", compactTextHex, paperHex, text, 7.14},
		{"words about the cylinder", cylinderTextHex, paperHex, text, 11.83},
		{"words", inkHex, paperHex, text, 17.12},
		{"explaining words", mutedHex, paperHex, text, 7.38},
		{"words on what is there for scale", mutedHex, shadeHex, text, 6.30},
	} {
		got := contrast(rgb(c.a), rgb(c.b))
		if got < c.least {
			t.Errorf("%s: %.2f:1, want at least %.1f:1", c.name, got, c.least)
		}
		// The stated figure has two decimals.
		if math.Abs(got-c.want) > 0.005 {
			t.Errorf("%s: %.2f:1, stated %.2f:1", c.name, got, c.want)
		}
	}
}

// TestContrastScale checks the measure itself: black on white is 21:1, and the
// grey #767676 is known as the lightest that reaches 4.5:1.
func TestContrastScale(t *testing.T) {
	if got := contrast(rgb(0), rgb(0xFFFFFF)); math.Abs(got-21) > 1e-9 {
		t.Errorf("black on white %v", got)
	}
	if got := contrast(rgb(0x767676), rgb(0xFFFFFF)); math.Abs(got-4.54) > 0.005 {
		t.Errorf("#767676 on white %.3f", got)
	}
}

// TestColourBlind looks at the options' colours as somebody without red or green
// cones does: projections in linear RGB after Viénot, Brettel and Mollon 1999,
// reduced to the share of yellow (red and green receptors, which then agree) and
// of blue. Coefficients from memory.
func TestColourBlind(t *testing.T) {
	for name, red := range map[string]float64{"without red": 0.1124, "without green": 0.2927} {
		see := func(hex uint32) (yellow, blue float64) {
			c := rgb(hex)
			return red*linear(c.R) + (1-red)*linear(c.G), linear(c.B)
		}
		y1, b1 := see(compactHex)
		y2, b2 := see(cylinderHex)
		// The one must be clearly yellow and the other clearly blue, not two shades
		// of one hue: a factor of two either way, a judgement.
		if y1 < 2*b1 || b2 < 2*y2 {
			t.Errorf("%s: compact yellow %.3f blue %.3f, cylinder yellow %.3f blue %.3f", name, y1, b1, y2, b2)
		}
	}
}
