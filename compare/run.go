package compare

import (
	"context"
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
)

// Progress is told when a year of the ensemble is done.
type Progress func(done, of int)

// serveEqually adds the cost at which the option keeps the service rule.
func (o *Option) serveEqually(ctx context.Context, c *Case, s *scout, side Side, asStated []YearRecord) (err error) {
	if o.EqualService, err = c.equalService(ctx, s, side, asStated); err != nil {
		return err
	}
	if t := o.EqualService.Trial; t != nil {
		o.CostAtEqualService = &t.Cost
	}
	return nil
}

// Compare lives the case's years through both options and compares those. Windows
// are those that are stated: SolveWindows comes first where they follow a tariff.
func Compare(ctx context.Context, c *Case, workers int, progress Progress) (*Comparison, error) {
	return compareIn(ctx, c, nil, workers, progress)
}

// compareIn is Compare in worlds that are used again.
func compareIn(ctx context.Context, c *Case, w *worlds, workers int, progress Progress) (*Comparison, error) {
	k, err := newCollector(c)
	if err != nil {
		return nil, err
	}
	err = years(ctx, c, w, c.Years, workers, func(year int, p Pair) error {
		if err := k.take(year, p); err != nil {
			return err
		}
		if progress != nil {
			progress(year+1, c.Years)
		}
		return nil
	})
	if err != nil {
		return nil, err
	}
	return k.comparison(c)
}

func (k *collector) comparison(c *Case) (*Comparison, error) {
	digest, err := c.Digest()
	if err != nil {
		return nil, err
	}
	cmp := &Comparison{
		Schema: Schema, Title: c.Title, CaseDigest: digest, Seed: c.Seed, Years: c.Years, Currency: c.Currency,
		CostBoundary: c.boundary(),
		Options:      Options{Compact: k.option(SideCompact), Cylinder: k.option(SideCylinder)},
		Shown:        Shown{Year: 1, FailedCompact: k.shown[SideCompact], FailedCylinder: k.shown[SideCylinder]},
		Profiles:     k.means,
		EachYear:     [sides][]YearRecord{k.eachYear(SideCompact), k.eachYear(SideCylinder)},
	}
	for side := range sides {
		o := cmp.Options.Of(side)
		o.Risk = k.risk(side, &c.Service)
		if err := o.describe(c, side); err != nil {
			return nil, err
		}
	}
	cmp.Difference = k.difference(&cmp.Options)
	cmp.Tariffs = k.tariffCosts()
	if err := cmp.weigh(c, k); err != nil {
		return nil, err
	}
	cmp.Verdict = verdict(c, cmp)
	cmp.Warnings = warnings(c, cmp)
	return cmp, nil
}

// describe adds what does not come from the simulation.
func (o *Option) describe(c *Case, side Side) error {
	o.SetpointC = c.control(side).SetpointC
	o.VolumeL = c.body(side).VolumeL
	o.SystemWater = c.SystemWater(side)
	o.MeetsServiceRule = meetsServiceRule(&c.Service, o.Spread["failing_showers_per_year"], c.Years)
	return o.takeSpace(c, side)
}

func (c *Case) body(side Side) *Body {
	if side == SideCompact {
		return &c.Compact.Body
	}
	return &c.Cylinder.Body
}

// Digest identifies a case by its content.
func (c *Case) Digest() (string, error) {
	data, err := json.Marshal(c)
	if err != nil {
		return "", err
	}
	sum := sha256.Sum256(data)
	return hex.EncodeToString(sum[:]), nil
}
