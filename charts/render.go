package charts

import (
	"bytes"
	"fmt"

	"gonum.org/v1/plot/vg/draw"
	"gonum.org/v1/plot/vg/vgsvg"
)

// SVG renders the chart as an SVG document of its own.
func (c Chart) SVG() ([]byte, error) {
	body, err := c.svgBody()
	if err != nil {
		return nil, err
	}
	return c.svgDocument(body), nil
}

// InlineSVG renders the chart as an element to be put into an HTML page: it has
// no declaration and takes the width of what it stands in. Its ids start with
// the chart's name, so that a page may hold every chart once.
func (c Chart) InlineSVG() ([]byte, error) {
	body, err := c.svgBody()
	if err != nil {
		return nil, err
	}
	return c.svgElement(body, ""), nil
}

func (c Chart) svgBody() ([]byte, error) {
	var canvas *vgsvg.Canvas
	err := c.guard(func() {
		canvas = vgsvg.NewWith(vgsvg.UseWH(width, c.height))
		c.draw(draw.New(canvas))
	})
	if err != nil {
		return nil, err
	}
	var out bytes.Buffer
	if _, err := canvas.WriteTo(&out); err != nil {
		return nil, fmt.Errorf("chart %s: %w", c.Name, err)
	}
	return out.Bytes(), nil
}

// guard turns a panic of the drawing library, which is how it reports a bad font
// or size, into an error.
func (c Chart) guard(work func()) (err error) {
	defer func() {
		if r := recover(); r != nil {
			err = fmt.Errorf("chart %s: cannot be drawn: %v", c.Name, r)
		}
	}()
	work()
	return nil
}
