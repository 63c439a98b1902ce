package compare

import (
	"strings"
	"testing"
)

// boxed is a case with a compact store of stated dimensions and nothing around it
// but what must hang there.
func boxed() Case {
	c := Default()
	side := func(mm float64) Auto { return &mm }
	b := &c.Compact.Body
	b.WidthMM, b.DepthMM, b.OutsideHeightMM = side(600), side(500), side(900)
	b.SideClearMM, b.FrontClearMM, b.AboveClearMM = 50, 300, 600
	none := 0.0
	c.Compact.VolumiserL, c.Cylinder.VolumiserL = &none, &none
	return c
}

func TestRoomAndItsLimits(t *testing.T) {
	for _, c := range []struct {
		name   string
		room   Room
		fits   bool
		turned bool
		limits string
		short  float64 // of the first limit
	}{
		{"just fits", Room{WidthMM: 700, DepthMM: 800, HeightMM: 1500}, true, false, "", 0},
		{"depth from the landing", Room{WidthMM: 700, DepthMM: 500, HeightMM: 1500, FrontFreeMM: 300}, true, false, "", 0},
		{"fits turned", Room{WidthMM: 800, DepthMM: 700, HeightMM: 1500}, true, true, "", 0},
		{"too low", Room{WidthMM: 700, DepthMM: 800, HeightMM: 1480}, false, false, "height", 20},
		{"too narrow either way", Room{WidthMM: 690, DepthMM: 690, HeightMM: 1500, FrontFreeMM: 300}, false, false, "width", 10},
		{"only height stated", Room{HeightMM: 1480}, false, false, "height", 20},
		{"only the door stated, narrow side first", Room{DoorWidthMM: 500}, true, false, "", 0},
		{"the door is too narrow", Room{DoorWidthMM: 480}, false, false, "door width", 20},
	} {
		k := boxed()
		k.Room = c.room
		var o Option
		if err := o.takeSpace(&k, SideCompact); err != nil {
			t.Fatal(err)
		}
		f := o.Fit
		if f == nil || f.Fits != c.fits || f.Turned != c.turned || o.fits() != c.fits {
			t.Errorf("%s: %+v", c.name, f)
			continue
		}
		if !c.fits && (len(f.Blocks) != 1 || f.Blocks[0].Limit != c.limits || f.Blocks[0].ShortMM != c.short || !strings.Contains(f.Text, c.limits)) {
			t.Errorf("%s: blocked by %+v (%s)", c.name, f.Blocks, f.Text)
		}
	}
}

func TestUnstatedRoomLimitsNothing(t *testing.T) {
	c := Default()
	var o Option
	if err := o.takeSpace(&c, SideCylinder); err != nil {
		t.Fatal(err)
	}
	if o.Fit != nil || !o.fits() {
		t.Errorf("a room that nobody stated: %+v", o.Fit)
	}
}

func TestWhatStandsBesideTakesSpaceAndWeight(t *testing.T) {
	plain, more := Default(), Default()
	none, some := 0.0, 40.0
	plain.Compact.VolumiserL = &none
	more.Compact.VolumiserL, more.Compact.OwnPump = &some, true
	var a, b Option
	if err := a.takeSpace(&plain, SideCompact); err != nil {
		t.Fatal(err)
	}
	if err := b.takeSpace(&more, SideCompact); err != nil {
		t.Fatal(err)
	}
	if len(b.SpaceItems) != len(a.SpaceItems)+2 || b.FloorAreaM2 <= a.FloorAreaM2 {
		t.Errorf("%d things on %.2f m2, without volumiser and pump %d on %.2f", len(b.SpaceItems), b.FloorAreaM2, len(a.SpaceItems), a.FloorAreaM2)
	}
	if water := b.WeightFullKg - a.WeightFullKg; water < 40 {
		t.Errorf("a volumiser of 40 l adds %.0f kg", water)
	}
}

// A vessel without a generic size is weighed by its litres once its dimensions are
// stated, and refused before.
func TestVesselBeyondGenericSizes(t *testing.T) {
	c := boxed()
	c.Compact.VolumeL = 200
	var o Option
	if err := o.takeSpace(&c, SideCompact); err != nil || o.WeightFullKg < 200 {
		t.Errorf("%.0f kg, %v", o.WeightFullKg, err)
	}
	c.Compact.WidthMM = nil
	if err := o.takeSpace(&c, SideCompact); err == nil {
		t.Error("a vessel of 200 l has generic dimensions")
	}
}

func TestAnOptionThatDoesNotFitIsNotRecommended(t *testing.T) {
	cmp := &Comparison{}
	a, b := &cmp.Options.Compact, &cmp.Options.Cylinder
	a.MeetsServiceRule, b.MeetsServiceRule = true, true
	if got := recommend(cmp, CostCylinderLess); got != RecommendCylinder {
		t.Fatal(got)
	}
	b.Fit = &Fit{Text: "does not fit (height: needs 2000 mm, has 1900 mm, 100 mm short)"}
	if got := recommend(cmp, CostCylinderLess); got != RecommendCompact {
		t.Errorf("cylinder does not fit: %s", got)
	}
	a.Fit = b.Fit
	if got := recommend(cmp, CostCylinderLess); got != RecommendNeither {
		t.Errorf("nothing fits: %s", got)
	}
	c := Default()
	v := Verdict{Recommend: RecommendNeither}
	if text := v.text(&c, cmp); !strings.Contains(text, "100 mm short") {
		t.Error(text)
	}
	b.MeetsServiceRule, b.FailingShowers = false, 39
	if text := v.text(&c, cmp); !strings.Contains(text, "the cylinder does not fit (height: needs 2000 mm, has 1900 mm, 100 mm short) and as set up leaves 39 showers a year too cold.") {
		t.Error(text)
	}
}
