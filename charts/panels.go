package charts

import (
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"dhwcompare/compare"
)

const panelGap = 6.0 // points on either side, between the panels of the options

// leftAndRight draws a panel for each option, the compact store on the left.
func leftAndRight(c draw.Canvas, panel func(c draw.Canvas, side compare.Side)) {
	half := c.Size().X / 2
	panel(draw.Crop(c, 0, -half-panelGap, 0, 0), compare.SideCompact)
	panel(draw.Crop(c, half+panelGap, 0, 0, 0), compare.SideCylinder)
}

// topAndBottom draws a panel for each option, the compact store on top.
func topAndBottom(c draw.Canvas, panel func(c draw.Canvas, side compare.Side)) {
	half := (c.Size().Y - panelGap) / 2
	panel(draw.Crop(c, 0, 0, half+panelGap, 0), compare.SideCompact)
	panel(draw.Crop(c, 0, 0, 0, -half-panelGap), compare.SideCylinder)
}

// rowFromTop is a row of a height, counted from the top.
func rowFromTop(c draw.Canvas, i int, height vg.Length) draw.Canvas {
	c.Max.Y -= vg.Length(i) * height
	c.Min.Y = c.Max.Y - height
	return c
}
