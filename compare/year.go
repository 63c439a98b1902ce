package compare

import (
	"context"

	"dhwcompare/climate"
	"dhwcompare/compare/calendar"
	"dhwcompare/compare/household"
	"dhwcompare/compare/plant"
)

// spinUpDays are run and discarded before a year, so that no option starts with
// a gift.
const spinUpDays = 3

// World is what both options meet in one year: the same weather and the same
// draw-offs.
type World struct {
	Weather *climate.Series
	Draws   []household.Draw
}

// World makes the world of one year of the ensemble.
func (c *Case) World(year int) (World, error) {
	w := World{Weather: climate.Synthesize(c.Climate.Params(), c.Seed, year)}
	if c.Household.LoadProfile != "" {
		draws, err := household.Profile(c.Household.LoadProfile)
		w.Draws = draws
		return w, err
	}
	mains, _ := c.Climate.Mains()
	w.Draws = household.Draws(c.Household.Params(), c.Climate.Year(), mains, c.Seed, year)
	return w, nil
}

// Live marches a plant through a year and books it in rec. The last days of the
// year are lived through first and discarded.
func Live(ctx context.Context, p *plant.Plant, w World, rec plant.Recorder) error {
	const from = calendar.YearS - spinUpDays*calendar.DayS
	in := plant.Inputs{Weather: w.Weather, Draws: w.Draws}
	if err := p.Run(ctx, from, calendar.YearS, in, plant.Override{}, plant.Recorder{}); err != nil {
		return err
	}
	return p.Run(ctx, 0, calendar.YearS, in, plant.Override{}, rec)
}
