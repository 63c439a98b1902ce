package compare

import (
	"strings"
	"testing"

	"dhwcompare/compare/space"
)

// Worked by hand from the defaults: the loop holds 2.5 + pi/4 x 0.262^2 x 160 = 11.1 l,
// the heating half of 10 l/kW at 180 W/K x 18.5 K = 16.7 l; 40 l are needed.
func TestSystemWater(t *testing.T) {
	state := func(litres float64) Auto { return &litres }
	tests := []struct {
		name              string
		change            func(*Case)
		compact, cylinder float64 // litres of volumiser
		words             string  // of the compact store
	}{
		{"as it is", func(*Case) {}, 15, 15, "needs a volumiser of 15 l"},
		{"store in the defrost circuit", func(c *Case) { c.Compact.InDefrostCircuit = true }, 0, 15, "serves as volumiser"},
		{"a store that is all coil", func(c *Case) {
			c.Compact.InDefrostCircuit, c.Compact.CoilBodyL = true, state(c.Compact.VolumeL-1)
		}, 15, 15, "needs a volumiser of 15 l"},
		{"more of the heating open", func(c *Case) { c.Dwelling.OpenWaterL = state(29) }, 0, 0, "needs no volumiser: defrosts"},
		{"little missing", func(c *Case) { c.Dwelling.OpenWaterL = state(28) }, 10, 10, "needs a volumiser of 10 l"},
		{"nothing open", func(c *Case) { c.Dwelling.OpenWaterL = state(0) }, 30, 30, "needs a volumiser of 30 l"},
		{"the most", func(c *Case) { c.Dwelling.OpenWaterL, c.HeatPump.LeastWaterL, c.Pipes.UnitWaterL = state(0), 100, 0.2 }, 95, 95, "95 l"},
		{"an easy unit", func(c *Case) { c.HeatPump.LeastWaterL = 0 }, 0, 0, "no least heating water"},
		{"hot water only", func(c *Case) { c.Dwelling.HeatLossWPerK = 0 }, 0, 0, "needs no volumiser"},
		{"stated", func(c *Case) { c.Compact.VolumiserL, c.Cylinder.VolumiserL = state(0), state(40) }, 0, 40, "because the case says so"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			c := Default()
			tt.change(&c)
			a, b := c.SystemWater(SideCompact), c.SystemWater(SideCylinder)
			if a.VolumiserL != tt.compact || b.VolumiserL != tt.cylinder || !strings.Contains(a.Text, tt.words) {
				t.Errorf("%g l and %g l, want %g and %g: %s", a.VolumiserL, b.VolumiserL, tt.compact, tt.cylinder, a.Text)
			}
		})
	}
	c := Default()
	c.HeatPump.LeastWaterL = 20
	cmp := &Comparison{}
	cmp.Options.Compact.SystemWater, cmp.Options.Cylinder.SystemWater = c.SystemWater(SideCompact), c.SystemWater(SideCylinder)
	if got := strings.Join(waterReasons(cmp), "\n"); !strings.HasPrefix(got, "Heating water: neither option needs a volumiser: defrosts and least runs need 20 l") {
		t.Error(got)
	}
	c = Default()
	w := c.SystemWater(SideCylinder)
	closeTo(t, "loop", w.LoopL, 11.126, 0.001)
	closeTo(t, "heating", w.HeatingL, 16.65, 1e-9)
	closeTo(t, "missing", w.ShortL, 40-11.126-16.65, 0.001)
}

// A volumiser takes space and money: what it costs goes into the whole life, what
// it fills into the price of space. Energy is the same where it stands in heated
// rooms.
func TestVolumiserTakesSpaceAndMoney(t *testing.T) {
	none := 0.0
	with := british(1)
	without := with
	without.Cylinder.VolumiserL = &none
	a, b := compared(t, &with), compared(t, &without)
	closeTo(t, "net present cost", a.Options.Cylinder.NetPresentCost-b.Options.Cylinder.NetPresentCost, with.Money.Cylinder.Volumiser, 1e-9)
	if a.Options.Cylinder.CostPerYear != b.Options.Cylinder.CostPerYear {
		t.Errorf("running cost %g, without %g", a.Options.Cylinder.CostPerYear, b.Options.Cylinder.CostPerYear)
	}
	closeTo(t, "parts", a.Options.Cylinder.WholeLife.Present.Sum(), a.Options.Cylinder.NetPresentCost, 1e-9)
	closeTo(t, "price of space, cost", a.PriceOfSpace.FreedL-b.PriceOfSpace.FreedL, a.Options.Cylinder.SpaceL-b.Options.Cylinder.SpaceL, 1e-9)
	if a.Options.Cylinder.SpaceL <= b.Options.Cylinder.SpaceL || a.Options.Cylinder.WeightFullKg-b.Options.Cylinder.WeightFullKg < 15 {
		t.Errorf("%.0f l and %.0f kg, without %.0f l and %.0f kg", a.Options.Cylinder.SpaceL, a.Options.Cylinder.WeightFullKg, b.Options.Cylinder.SpaceL, b.Options.Cylinder.WeightFullKg)
	}
	if reasons := strings.Join(a.Verdict.Reasons, "\n"); !strings.Contains(reasons, "Heating water: each option needs a volumiser of 15 l") {
		t.Error(reasons)
	}
	if reasons := strings.Join(b.Verdict.Reasons, "\n"); !strings.Contains(reasons, "the cylinder has no volumiser because the case says so") {
		t.Error(reasons)
	}
}

// A store that serves as volumiser spares its place and price, and pays for it: the
// heat of the heating's defrosts is made at its temperature.
func TestStoreInTheDefrostCircuitPaysForIt(t *testing.T) {
	beside := british(1)
	inside := beside
	inside.Compact.InDefrostCircuit = true
	a, b := compared(t, &inside), compared(t, &beside)
	x, y := &a.Options.Compact, &b.Options.Compact
	if x.SystemWater.VolumiserL != 0 || x.SpaceL >= y.SpaceL || x.WholeLife.Present.Volumiser != 0 || y.WholeLife.Present.Volumiser == 0 {
		t.Errorf("in the circuit %.0f l of cupboard and %+v", x.SpaceL, x.WholeLife.Present)
	}
	if x.DefrostHeatKWh < y.DefrostHeatKWh+100 || x.WholeHouseKWh <= y.WholeHouseKWh {
		t.Errorf("in the circuit %.0f kWh of defrost heat and %.0f kWh of electricity, beside it %.0f and %.0f", x.DefrostHeatKWh, x.WholeHouseKWh, y.DefrostHeatKWh, y.WholeHouseKWh)
	}
	if a.Options.Cylinder.WholeHouseKWh != b.Options.Cylinder.WholeHouseKWh {
		t.Error("the cylinder notices")
	}
	if x.FirstLawResidual > 1e-12 { // rounding
		t.Errorf("residual %g", x.FirstLawResidual)
	}
}

// What a volumiser loses outside heated rooms is heat that heating has to make.
func TestVolumiserOutsideHeatedRoomsLosesHeat(t *testing.T) {
	none := 0.0
	with := british(1)
	with.Dwelling.HeatedShare = 0.5
	without := with
	without.Cylinder.VolumiserL = &none
	a, b := compared(t, &with).Options.Cylinder, compared(t, &without).Options.Cylinder
	if more := a.HeatingHeatKWh - b.HeatingHeatKWh; more < 1 || more > 30 { // 0.33 W/K at 10-20 K through the heating season: about 20 kWh
		t.Errorf("%.1f kWh more heat", more)
	}
	if a.FirstLawResidual > 1e-12 { // rounding
		t.Errorf("residual %g", a.FirstLawResidual)
	}
}

// The alternative is offered where the store would spare a volumiser, and nowhere
// else.
func TestStoreAsVolumiserIsOffered(t *testing.T) {
	offered := func(change func(*Case)) bool {
		c := Default()
		change(&c)
		return len(c.storeAsVolumiser()) == 1
	}
	enough := 100.0
	for name, tt := range map[string]struct {
		change func(*Case)
		want   bool
	}{
		"as it is":           {func(*Case) {}, true},
		"already there":      {func(c *Case) { c.Compact.InDefrostCircuit = true }, false},
		"enough water":       {func(c *Case) { c.Dwelling.OpenWaterL = &enough }, false},
		"stated volumiser":   {func(c *Case) { c.Compact.VolumiserL = &enough }, false},
		"hot water only":     {func(c *Case) { c.Dwelling.HeatLossWPerK = 0 }, false},
		"a least of nothing": {func(c *Case) { c.HeatPump.LeastWaterL = 0 }, false},
	} {
		if got := offered(tt.change); got != tt.want {
			t.Errorf("%s: offered %v", name, got)
		}
	}
	if _, err := space.DefaultVolumiser(volumiserFor(0.1)); err != nil {
		t.Error(err)
	}
	if _, err := space.DefaultVolumiser(volumiserFor(1000)); err != nil {
		t.Error(err)
	}
}
