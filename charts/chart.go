package charts

import (
	"errors"

	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"dhwcompare/compare"
)

// Chart is one picture, ready to be rendered.
type Chart struct {
	Name  string // file name without its ending
	Title string // what is seen, in a sentence
	Alt   string // the same for those who cannot see it, with the figures

	subtitle string    // what is drawn, and in which unit
	caption  string    // foot of the picture: what years, whose home
	height   vg.Length // of the whole picture
	body     func(draw.Canvas)
}

// All makes every chart of a comparison, in the order in which they are read.
// A comparison with a figure that is no number gives an error: it cannot be
// drawn, and leaving it out would hide it.
func All(cmp *compare.Comparison) ([]Chart, error) {
	if cmp == nil {
		return nil, errors.New("no comparison to draw")
	}
	if err := checkFinite(cmp); err != nil {
		return nil, err
	}
	charts := []Chart{
		costChart(cmp), electricityChart(cmp), causesChart(cmp), startsChart(cmp),
		failuresChart(cmp), winterDayChart(cmp), spaceChart(cmp),
	}
	for i := range charts {
		charts[i].caption = joined(charts[i].caption, plain(cmp.Title))
	}
	return charts, nil
}

// bothSides lists the options in the order in which they always appear.
func bothSides() [2]compare.Side {
	return [2]compare.Side{compare.SideCompact, compare.SideCylinder}
}
