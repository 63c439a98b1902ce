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

	subtitle string    // what is drawn, and how to read it
	caption  string    // foot of the picture: what years, whose home
	room     vg.Length // height that the body takes
	body     func(draw.Canvas)
	frame
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
		failuresChart(cmp), winterDayChart(cmp), carpetChart(cmp), spaceChart(cmp),
	}
	for i := range charts {
		charts[i].caption = joined(charts[i].caption, plain(cmp.Title))
		charts[i].layOut()
	}
	return charts, nil
}

// Of makes every chart of a document: those of its comparison, and those of what
// else was computed with it.
func Of(doc *compare.Document) ([]Chart, error) {
	if doc == nil {
		return nil, errors.New("no document to draw")
	}
	charts, err := All(doc.Comparison)
	if err != nil {
		return nil, err
	}
	if doc.Draws != nil && doc.Case != nil {
		if err := drawoffFinite(doc.Draws); err != nil {
			return nil, err
		}
		chart := drawoffChart(doc.Draws, doc.Case.Household.ShowerFlowLPerMin)
		chart.caption = plain(doc.Comparison.Title)
		chart.layOut()
		charts = append(charts, chart)
	}
	return charts, nil
}

// bothSides lists the options in the order in which they always appear.
func bothSides() [2]compare.Side {
	return [2]compare.Side{compare.SideCompact, compare.SideCylinder}
}
