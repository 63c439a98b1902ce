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
	charts := []Chart{costChart(cmp), electricityChart(cmp), causesChart(cmp)}
	if len(cmp.ByCause.Parts) > 0 {
		charts = append(charts, whyChart(cmp))
	}
	charts = append(charts, startsChart(cmp), failuresChart(cmp))
	charts = append(append(charts, showerTimeCharts(cmp)...), winterDayChart(cmp))
	if heats(&cmp.Shown.WinterDay) {
		charts = append(charts, winterHouseChart(cmp))
	}
	if hasDay(&cmp.Shown.SummerDay) {
		charts = append(charts, summerDayChart(cmp))
	}
	return finished(append(charts, carpetChart(cmp), spaceChart(cmp)), cmp), nil
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
	for _, make := range []func(*compare.Document) ([]Chart, error){drawoffCharts, sizingCharts, sensitivityCharts} {
		more, err := make(doc)
		if err != nil {
			return nil, err
		}
		charts = append(charts, finished(more, doc.Comparison)...)
	}
	return charts, nil
}

// finished signs charts with the comparison's title and lays them out.
func finished(charts []Chart, cmp *compare.Comparison) []Chart {
	for i := range charts {
		charts[i].caption = joined(charts[i].caption, plain(cmp.Title))
		charts[i].layOut()
	}
	return charts
}

// bothSides lists the options in the order in which they always appear.
func bothSides() [2]compare.Side {
	return [2]compare.Side{compare.SideCompact, compare.SideCylinder}
}
