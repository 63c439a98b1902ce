package plant

import (
	"context"
	"reflect"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"dhwcompare/compare/calendar"
	"dhwcompare/compare/coil"
	"dhwcompare/compare/heatpump"
	"dhwcompare/compare/household"
	"dhwcompare/compare/vessel"
)

// twice is a plant in which all that litres, watts and joules measure is doubled:
// as if two such homes shared one tap. What is left alone is temperature and time.
func twice(p Params) Params {
	for _, x := range []*float64{
		&p.Loop.WaterL, &p.Loop.MetalJPerK, &p.Loop.IndoorLossWPerK, &p.Loop.OutdoorLossWPerK, &p.Loop.FlowLPerMin,
		&p.Supply.LargestFlowLPerMin, &p.Supply.ShowerLimitLPerMin, &p.Power.PumpW, &p.Power.StandbyW, &p.Power.HouseW,
		&p.Frost.HeatJ, &p.Immersion.PowerW, &p.House.LossWPerK, &p.House.CapacityJPerK,
	} {
		*x *= 2
	}
	legs := make([]float64, len(p.Supply.DeadLegsL))
	for i, litres := range p.Supply.DeadLegsL {
		legs[i] = 2 * litres
	}
	p.Supply.DeadLegsL = legs
	return p
}

func twiceDraws(draws []household.Draw) []household.Draw {
	double := make([]household.Draw, len(draws))
	for i, d := range draws {
		d.FlowLPerMin *= 2
		if d.End.By != household.BySeconds {
			d.End.Amount *= 2
		}
		double[i] = d
	}
	return double
}

// singleAndDouble draws a vessel in two sizes: twice the volume on the same height.
// The law of the coil is one that does not hang on the flow.
func (c chance) singleAndDouble() (single, double vessel.Vessel) {
	litres, height, layers := c.in("litres", 45, 200), c.in("height", 0.3, 2), c.of("layers", 3, 60)
	loss, conductivity, stirred, ua := c.orNone("loss", 0.1, 4), c.orNone("conductivity", 0.5, 4), c.in("stirred", 0, 1), c.in("UA", 300, 2000)
	if rapid.Bool().Draw(c.T, "cylinder") {
		p := vessel.CylinderParams{
			VolumeL: litres, HeightM: height, Layers: layers, LossWPerK: loss, ConductivityWPerMK: conductivity,
			InletMixingShare: stirred, CoilUAWPerK: ua, CoilBottom: 0.05, CoilTop: 0.6,
		}
		single = vessel.NewCylinder(p)
		p.VolumeL, p.LossWPerK, p.CoilUAWPerK = 2*litres, 2*loss, 2*ua
		return single, vessel.NewCylinder(p)
	}
	p := vessel.CompactParams{
		VolumeL: litres, HeightM: height, Layers: layers, LossWPerK: loss, ConductivityWPerMK: conductivity,
		InletMixingShare: stirred, CoilWaterL: 8, CoilDisplacedL: 12, CoilLaw: coil.Stated(ua, 10, 0),
	}
	single = vessel.NewCompact(p)
	p.VolumeL, p.LossWPerK, p.CoilWaterL, p.CoilDisplacedL, p.CoilLaw = 2*litres, 2*loss, 16, 24, coil.Stated(2*ua, 10, 0)
	return single, vessel.NewCompact(p)
}

func (c chance) unitOf(kW float64, start heatpump.Start) *heatpump.Unit {
	p := heatpump.Defaults()
	p.NominalKW, p.Start = kW, start
	u, err := heatpump.New(p)
	if err != nil {
		c.Fatal(err)
	}
	return u
}

// Twice the people with twice of everything take twice the heat and electricity at
// the same temperatures and moments: starts, failures and seconds are the same. Only
// rounding is in between: doubling is exact, but for the crumbs of a kilogram at
// which a draw counts as over.
func TestTwiceOfEverythingIsTwiceTheEnergy(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		c := chance{rt}
		p := c.params()
		p.Frost, p.House, p.Power.HouseW = testFrost(), testHouse(), c.orNone("house W", 1, 20)
		p.Immersion = Immersion{PowerW: c.orNone("heater", 500, 6000), Height: 0.3, BoostBelowC: 40, BoostK: 5}
		d := twice(p)
		p.Vessel, d.Vessel = c.singleAndDouble()
		kW := c.in("kW", 3, 8)
		p.HeatPump, d.HeatPump = c.unitOf(kW, p.Start), c.unitOf(2*kW, p.Start)

		in := Inputs{Weather: steady(c.in("outdoor", -15, 25), c.in("mains", 1, 28)), Draws: c.draws()}
		single, double := c.dayOf(p, in), c.dayOf(d, Inputs{Weather: in.Weather, Draws: twiceDraws(in.Draws)})
		month := calendar.MonthOfDay(calendar.DayOf(noon))
		doubled(rt, "", reflect.ValueOf(single.Months[month]), reflect.ValueOf(double.Months[month]))
	})
}

func (c chance) dayOf(p Params, in Inputs) *Ledger {
	l := &Ledger{}
	if err := New(p).Run(context.Background(), noon, noon+calendar.DayS, in, Override{}, Recorder{Ledger: l}); err != nil {
		c.Fatal(err)
	}
	return l
}

// doubled asks every figure of the second struct to be twice that of the first, but
// counts, seconds and kelvins to be the same.
func doubled(t *rapid.T, name string, single, double reflect.Value) {
	switch single.Kind() {
	case reflect.Struct:
		for i := range single.NumField() {
			doubled(t, single.Type().Field(i).Name, single.Field(i), double.Field(i))
		}
	case reflect.Array:
		for i := range single.Len() {
			doubled(t, name, single.Index(i), double.Index(i))
		}
	case reflect.Int:
		if single.Int() != double.Int() {
			t.Errorf("%s: %d, of twice everything %d", name, single.Int(), double.Int())
		}
	case reflect.Float64:
		want := 2 * single.Float()
		if strings.HasSuffix(name, "S") || strings.HasSuffix(name, "K") || name == "ShowerTime" { // all of them times or kelvins
			want = single.Float()
		}
		const exact, floor = 1e-9, 1e-3 // relative; of a joule or a second
		if got := double.Float(); !(got >= want-exact*max(want, -want)-floor && got <= want+exact*max(want, -want)+floor) {
			t.Errorf("%s: %g, of twice everything %g", name, single.Float(), got)
		}
	}
}
