package compare

import (
	"reflect"
	"sync"
)

// worlds makes the world of a year once for all that live through it in a run: the
// comparison itself, and the changes that leave weather and draw-offs alone. What it
// hands out is shared and only read. It may be used from several goroutines.
type worlds struct {
	c    *Case
	kept [keptYears]keptWorld
}

// keptYears bounds the memory: a year takes about a megabyte.
const keptYears = 24

// keptWorld is the world of one year, made when it is first asked for.
type keptWorld struct {
	once  sync.Once
	world World
	err   error
}

func newWorlds(c *Case) *worlds { return &worlds{c: c} }

// of gives the world that a case meets in a year. Without worlds to look in, it is
// made anew.
func (w *worlds) of(c *Case, year int) (World, error) {
	if w == nil || year >= keptYears || !w.c.meetsSameYears(c) {
		return c.World(year)
	}
	k := &w.kept[year]
	k.once.Do(func() { k.world, k.err = w.c.World(year) })
	return k.world, k.err
}

// meetsSameYears reports whether another case has the same weather and draw-offs.
func (c *Case) meetsSameYears(o *Case) bool {
	return c.Seed == o.Seed && c.Household.LoadProfile == o.Household.LoadProfile && c.Climate.Year() == o.Climate.Year() &&
		reflect.DeepEqual(c.Climate.Params(), o.Climate.Params()) && reflect.DeepEqual(c.Household.Params(), o.Household.Params())
}
