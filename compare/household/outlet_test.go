package household

import (
	"testing"

	"github.com/google/go-cmp/cmp"
)

func TestOutletsInOrder(t *testing.T) {
	p := Defaults(4, true)
	p.Bathrooms = 2
	want := []Outlet{
		{AtShower, "shower 1"}, {AtShower, "shower 2"}, {AtBath, "bath"}, {AtKitchen, "kitchen tap"}, {AtBasin, "basin tap"},
	}
	if diff := cmp.Diff(want, Outlets(p.Bathrooms)); diff != "" {
		t.Error(diff)
	}
	if got := Outlets(1)[0].Name; got != "shower" {
		t.Errorf("the only shower is called %q", got)
	}
	for i, outlet := range want[2:] {
		if got := outletAt(outlet.Place, 2); got != i+2 {
			t.Errorf("%s has index %d, want %d", outlet.Name, got, i+2)
		}
	}
}
