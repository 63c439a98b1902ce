package compare

import (
	"context"
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
)

// Progress is told when a year of the ensemble is done.
type Progress func(done, of int)

// Run lives the case's years through both options and compares them.
func Run(ctx context.Context, c *Case, workers int, progress Progress) (*Comparison, error) {
	k, err := newCollector(c)
	if err != nil {
		return nil, err
	}
	err = Years(ctx, c, c.Years, workers, func(year int, p Pair) error {
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
	day, err := c.winterDay(ctx)
	if err != nil {
		return nil, err
	}
	return k.comparison(c, day)
}

func (k *collector) comparison(c *Case, day Day) (*Comparison, error) {
	digest, err := c.Digest()
	if err != nil {
		return nil, err
	}
	cmp := &Comparison{
		Schema: Schema, Title: c.Title, CaseDigest: digest, Seed: c.Seed, Years: c.Years, Currency: c.Currency,
		CostBoundary: c.boundary(),
		Options:      Options{Compact: k.option(SideCompact), Cylinder: k.option(SideCylinder)},
		Shown:        Shown{Year: 1, WinterDay: day, FailedCompact: k.shown[SideCompact], FailedCylinder: k.shown[SideCylinder]},
		Profiles:     k.means,
		EachYear:     [sides][]YearRecord{k.eachYear(SideCompact), k.eachYear(SideCylinder)},
	}
	for side := range sides {
		if err := cmp.Options.Of(side).describe(c, side); err != nil {
			return nil, err
		}
	}
	cmp.Difference = k.difference(&cmp.Options)
	cmp.Tariffs = k.tariffCosts()
	cmp.Verdict = verdict(c, cmp)
	cmp.Warnings = warnings(c, cmp)
	return cmp, nil
}

// describe adds what does not come from the simulation.
func (o *Option) describe(c *Case, side Side) error {
	o.SetpointC = c.control(side).SetpointC
	o.VolumeL = c.body(side).VolumeL
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
