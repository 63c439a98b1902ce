package compare

import (
	"context"

	"dhwcompare/compare/plant"
)

// causeSearch divides the difference.
func (cmp *Comparison) causeSearch(ctx context.Context, c *Case, s *scout) search {
	d := DifferenceByCause{Years: min(c.Years, causeYears), KWh: cmp.Difference.WholeHouseKWh}
	list := effects()
	kWh := make([][sides]float64, len(list)+1) // with ever more taken away
	var parts []func() error
	for side := range sides {
		for year := range d.Years {
			kWh[0][side] += cmp.EachYear[side][year].Totals.WholeHouseKWh / float64(d.Years)
		}
		for _, levels := range c.levels(list, side) {
			parts = append(parts, func() error {
				got, err := c.kWhWithout(ctx, s, side, list, levels, d.Years)
				for i, taken := range levels {
					kWh[taken][side] = got[i]
				}
				return err
			})
		}
	}
	return search{parts: parts, whole: func() {
		d.divide(list, kWh)
		cmp.ByCause = d
	}}
}

// divide gives each effect what the difference falls by when it goes.
func (d *DifferenceByCause) divide(list []effect, kWh [][sides]float64) {
	gap := func(i int) float64 { return kWh[i][SideCompact] - kWh[i][SideCylinder] }
	rest := d.KWh
	for i, e := range list {
		part := gap(i) - gap(i+1)
		rest -= part
		d.Parts = append(d.Parts, CauseOfDifference{Name: e.name, Label: e.label, KWh: part})
	}
	d.Parts = append(d.Parts, CauseOfDifference{Name: "interaction", Label: "all else, and what these do to each other", KWh: rest})
}

// levels lists how many effects are taken away, from one up, those together at which
// the plant lives alike: an option may not have an effect, and some are only counted.
func (c *Case) levels(list []effect, side Side) (levels [][]int) {
	for i, e := range list {
		alike := e.fromBooks != nil || e.absent != nil && e.absent(c, side)
		if last := len(levels) - 1; alike && last >= 0 {
			levels[last] = append(levels[last], i+1)
		} else {
			levels = append(levels, []int{i + 1})
		}
	}
	return levels
}

// kWhWithout gives the electricity of one option at several levels at which it lives alike.
func (c *Case) kWhWithout(ctx context.Context, s *scout, side Side, list []effect, levels []int, n int) ([]float64, error) {
	kWh := make([]float64, len(levels))
	fresh, err := c.without(list[:levels[0]], side).fresh()
	for year := 0; year < n && err == nil; year++ {
		err = s.live(ctx, c, fresh.again(), year, func(on *page) error {
			for i, taken := range levels {
				kWh[i] += wholeHouseWithout(list[:taken], on.ledger) / float64(n)
			}
			return nil
		})
	}
	return kWh, err
}

// wholeHouseWithout sums up a year without what is only counted of some effects, kWh.
func wholeHouseWithout(taken []effect, l *plant.Ledger) float64 {
	var months [len(l.Months)]MonthTotals
	for i, m := range l.Months {
		for _, e := range taken {
			if e.fromBooks != nil {
				e.fromBooks(&m)
			}
		}
		months[i] = monthTotals(i, &m)
	}
	t, _ := yearTotals(&months)
	return t.WholeHouseKWh
}

// without makes an option with some effects taken away.
func (c *Case) without(taken []effect, side Side) maker {
	return func() (plant.Params, error) {
		changed := *c
		for _, e := range taken {
			if e.fromCase != nil {
				e.fromCase(&changed)
			}
		}
		p, err := changed.plantParams(side)
		for _, e := range taken {
			if e.fromPlant != nil {
				e.fromPlant(&p)
			}
		}
		return p, err
	}
}
