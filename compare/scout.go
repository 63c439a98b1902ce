package compare

import (
	"context"
	"sync"

	"dhwcompare/compare/calendar"
	"dhwcompare/compare/plant"
	"dhwcompare/tariffs"
)

// scout lives through changes of a case, one option at a time, and keeps of a year
// what a trial sums up: no more than the first tariff, and nothing of single showers.
// It may be used from several goroutines.
type scout struct {
	worlds *worlds
	rates  *tariffs.Rates // of the first tariff, which decides; nil without one
	pages  sync.Pool      // of *page
}

// page is what a year is written on.
type page struct {
	ledger  *plant.Ledger
	profile []float64 // electricity of each half hour
}

// newScout makes a scout for changes that leave tariffs and own surplus alone.
func newScout(c *Case, w *worlds) (*scout, error) {
	first := *c
	first.Tariffs = c.Tariffs[:min(1, len(c.Tariffs))]
	rates, err := first.rates()
	if err != nil {
		return nil, err
	}
	s := &scout{worlds: w}
	s.pages.New = func() any { return &page{ledger: plant.NewLedger(), profile: make([]float64, calendar.HalfHours)} }
	if len(rates) > 0 {
		s.rates = rates[0]
	}
	return s, nil
}

// live lives through one year of a case with a fresh plant, and lends what was written.
func (s *scout) live(ctx context.Context, c *Case, p *plant.Plant, year int, read func(*page) error) error {
	world, err := s.worlds.of(c, year)
	if err != nil {
		return err
	}
	on := s.pages.Get().(*page)
	defer s.pages.Put(on)
	on.ledger.Reset()
	if err := Live(ctx, p, world, plant.Recorder{Ledger: on.ledger}); err != nil {
		return err
	}
	return read(on)
}

// year lives through one year and sums it up.
func (s *scout) year(ctx context.Context, c *Case, p *plant.Plant, year int) (t Totals, err error) {
	err = s.live(ctx, c, p, year, func(on *page) error {
		t, err = s.totals(on)
		return err
	})
	return t, err
}

// totals sums up a year.
func (s *scout) totals(on *page) (Totals, error) {
	var months [calendar.MonthsInAYear]MonthTotals
	for m := range months {
		months[m] = monthTotals(m, &on.ledger.Months[m])
	}
	t, _ := yearTotals(&months)
	if s.rates == nil {
		return t, nil
	}
	addChannels(on.profile, on.ledger)
	bill, err := s.rates.Bill(on.profile)
	t.CostPerYear = bill.Year.EnergyCost
	return t, err
}

// years lives through the first n years, each from the same fresh plant.
func (s *scout) years(ctx context.Context, c *Case, of maker, n int) ([]Totals, error) {
	fresh, err := of.fresh()
	if err != nil {
		return nil, err
	}
	years := make([]Totals, n)
	for i := range years {
		if years[i], err = s.year(ctx, c, fresh.again(), i); err != nil {
			return nil, err
		}
	}
	return years, nil
}
