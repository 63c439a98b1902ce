package compare

import (
	"testing"
)

// A house that needs more than twice what the unit can give at its design temperature:
// its rooms fall by 16 K in a spell of five days. The result must say that heat was
// short. It does not: after three days the rooms have come to rest down there, and
// "colder than a day before" sees nothing.
func TestAFarOversizedHouseFallsBehind(t *testing.T) {
	c := british(1)
	c.Dwelling.HeatLossWPerK, c.Dwelling.DesignC = 450, -8
	s := Spell{Days: coldSpellDays, OutdoorC: -8, MainsC: 5, RHPercent: coldSpellRH, Samples: 3}
	for side := range sides {
		if err := c.liveSpell(t.Context(), nil, &s, side); err != nil {
			t.Fatal(err)
		}
		if !s.HeatShort(side) || len(spellWarnings(&Comparison{Spells: []Spell{s}})) != 1 {
			t.Errorf("%s: no warning of a house that gets too little heat", side)
		}
		if r := s.Of(side); r.FellBehind != 3 {
			t.Errorf("%s: %d of 3 samples fell behind, worst dip %.2f K", side, r.FellBehind, r.WorstDipK)
		}
	}
}
