package charts

import (
	"fmt"
	"image"

	"gonum.org/v1/plot/vg/draw"
	"gonum.org/v1/plot/vg/vgimg"
)

// dpi of the PNG: twice that of a screen.
const dpi = 192

// PNG renders the chart as a bitmap.
func (c Chart) PNG() ([]byte, error) {
	var picture *image.RGBA
	err := c.guard(func() {
		canvas := vgimg.NewWith(vgimg.UseWH(width, c.height), vgimg.UseDPI(dpi))
		c.draw(draw.New(canvas))
		picture = canvas.Image().(*image.RGBA)
	})
	if err != nil {
		return nil, err
	}
	data, err := encodePNG(picture)
	if err != nil {
		return nil, fmt.Errorf("chart %s: %w", c.Name, err)
	}
	return data, nil
}
