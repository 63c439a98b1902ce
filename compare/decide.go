package compare

import "context"

// Decide compares the two options over the case's years and no more: windows that
// follow a tariff are found first, but nothing is looked into beside the years.
// The case that comes back is the one that was lived through, with its windows in
// place.
func Decide(ctx context.Context, c *Case, workers int, progress Progress) (*Comparison, *Case, error) {
	solved, choices, err := c.SolveWindows(ctx, workers)
	if err != nil {
		return nil, nil, err
	}
	cmp, err := Compare(ctx, solved, workers, progress)
	if err != nil {
		return nil, nil, err
	}
	return cmp, solved, cmp.keepChoices(c, choices)
}

// ShowDays adds a day of winter and one of summer to a comparison, of the case that
// was lived through.
func (cmp *Comparison) ShowDays(ctx context.Context, c *Case) error {
	return c.showDays(ctx, nil, &cmp.Shown)
}
