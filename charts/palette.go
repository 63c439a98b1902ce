package charts

import (
	"image/color"

	"dhwcompare/compare"
)

// The colours, chosen for this project. The two options lie on either side of
// the blue-yellow axis, which red-green colour blindness leaves alone, and more
// than 3:1 apart in luminance, so that they also differ in grey. The contrast of
// each is stated in the tests.
const (
	compactHex  = 0xD4752A // copper
	cylinderHex = 0x2B2F77 // night blue

	compactTextHex  = 0x8A4510 // copper, dark enough to read
	cylinderTextHex = cylinderHex

	paperHex = 0xFFFFFF
	inkHex   = 0x1B1B22
	mutedHex = 0x55555E // what explains
	gridHex  = 0xDCDCE2
	failHex  = 0xA0143C // always with a cross
	shadeHex = 0xEFEDE8 // things that are there for scale
)

func rgb(hex uint32) color.NRGBA {
	return color.NRGBA{R: uint8(hex >> 16), G: uint8(hex >> 8), B: uint8(hex), A: 0xFF}
}

// fillOf is the colour of an option's areas and lines.
func fillOf(side compare.Side) color.NRGBA {
	if side == compare.SideCompact {
		return rgb(compactHex)
	}
	return rgb(cylinderHex)
}

// textOf is the colour of words about an option.
func textOf(side compare.Side) color.NRGBA {
	if side == compare.SideCompact {
		return rgb(compactTextHex)
	}
	return rgb(cylinderTextHex)
}

// onFill is the colour of words that stand on an option's area.
func onFill(side compare.Side) color.NRGBA {
	if side == compare.SideCompact {
		return rgb(inkHex)
	}
	return rgb(paperHex)
}
