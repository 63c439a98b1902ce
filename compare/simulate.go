package compare

import "context"

// ladderYears is how many years each step of the settings ladder is simulated: it
// shows what a setting does, and decides nothing.
const ladderYears = 1

// Simulate lives the case's years through both options and compares them, with all that
// bears on the decision beside the years: hard weather, equal service and its cost, the
// causes of the difference, what some changes would bring, days to look at, timed
// draw-off tests and what each setting buys.
func (d *Document) Simulate(ctx context.Context, workers int, progress Progress) error {
	c, choices, err := d.Case.SolveWindows(ctx, workers)
	if err != nil {
		return err
	}
	w := newWorlds(c)
	if d.Comparison, err = compareIn(ctx, c, w, workers, progress); err != nil {
		return err
	}
	if err := d.Comparison.keepChoices(d.Case, choices); err != nil {
		return err
	}
	if err := d.lookFurther(ctx, c, w, workers); err != nil {
		return err
	}
	if err := d.Comparison.priceRemedies(c); err != nil {
		return err
	}
	d.Comparison.Verdict = verdict(c, d.Comparison)
	d.Comparison.Warnings = append(d.Comparison.Warnings, spellWarnings(d.Comparison)...)
	return nil
}

// lookFurther adds what is found beside the years. All of it runs side by side, the
// long searches first. c is the case as it was lived through, with its windows in
// place; draw-off tests and settings are of the case as stated.
func (d *Document) lookFurther(ctx context.Context, c *Case, w *worlds, workers int) error {
	s, err := newScout(c, w)
	if err != nil {
		return err
	}
	cmp, asStated := d.Comparison, []YearRecord(nil)
	if c == d.Case {
		asStated = cmp.EachYear[SideCompact][:ladderYears]
	}
	return find(workers,
		cmp.equalSearch(ctx, c, s),
		drawoffSearch(ctx, d.Case, d.Case.Household.BackToBackGapMin, &d.Draws),
		cmp.alternativeSearch(ctx, c, s),
		settingSearch(ctx, d.Case, s, ladderYears, asStated, &d.Settings),
		cmp.causeSearch(ctx, c, s),
		cmp.spellSearch(ctx, c, w),
		search{parts: []func() error{func() error { return c.showDays(ctx, w, &cmp.Shown) }}},
	)
}

// equalSearch finds the cost of equal service of both options.
func (cmp *Comparison) equalSearch(ctx context.Context, c *Case, s *scout) search {
	var parts []func() error
	for side := range sides {
		parts = append(parts, func() error { return cmp.Options.Of(side).serveEqually(ctx, c, s, side, cmp.EachYear[side]) })
	}
	return search{parts: parts}
}
