package vessel

import (
	"math"
	"testing"

	"dhwcompare/compare/checkvalues"
	"dhwcompare/compare/coil"
	"dhwcompare/compare/water"
)

// testCompact is a store of 60 litres with the coil of 25 m, of which 12 are mains
// water and 19 displaced, and a UA that does not depend on flow or temperature.
func testCompact(uaWPerK, stirShare float64) *Compact {
	return NewCompact(CompactParams{
		VolumeL: 60, HeightM: 0.5, Layers: 20, LossWPerK: 0.95, ConductivityWPerMK: 1.2, InletMixingShare: stirShare,
		CoilWaterL: 12.3, CoilDisplacedL: 18.9, CoilLaw: coil.Stated(uaWPerK, 10, 0),
	})
}

// mixedStore is a body of one layer: the closed forms know no layers and no water
// in the coil. A hundredth of a litre of it, passed on at every step, stands for
// none.
func mixedStore(bodyKg, uaWPerK float64) *Compact {
	const coilL = 0.01
	return NewCompact(CompactParams{
		VolumeL: bodyKg / water.VesselKgPerLitre, HeightM: 0.5, Layers: 1, CoilWaterL: coilL, CoilLaw: coil.Stated(uaWPerK, 10, 0),
	})
}

// hugeBody is a store whose body does not change temperature.
func hugeBody(layers int, uaWPerK float64) *Compact {
	return NewCompact(CompactParams{
		VolumeL: 1e15, HeightM: 1, Layers: layers, CoilWaterL: 12, CoilLaw: coil.Stated(uaWPerK, 10, 0),
	})
}

const (
	tenLPerMin  = 10.0 / 60 * 0.9997           // kg/s of mains water at 10 C
	tenCapacity = tenLPerMin * water.CpJPerKgK // W/K
	shareOfStep = 1e-9                         // rounding of sums over many steps
	kgPerLMixed = 0.9997                       // the published litres of 40 C water are counted cold
	fortyOverC  = 30 * tenLPerMin              // heat of 10 l/min of 40 C water over cp
	nominalKgS  = 17.0 / 60 * water.VesselKgPerLitre
)

// flush draws until the coil holds nothing of what was in it, and gives the last
// outlet temperature.
func flush(s *Compact, f Flows, volumes float64) float64 {
	var r Result
	for passed := 0.0; passed < volumes*s.coil.vesselKg(); passed += f.DrawKgPerS * f.DtS {
		r = s.Step(&f)
	}
	return r.DrawOutC
}

// Water that passes a vessel of one temperature takes 1 - exp(-NTU) of the
// difference: to 1e-9 of 45 K at the steps the vessel asks for, whatever the
// layers; the published table to its eight figures.
func TestCoilEffectiveness(t *testing.T) {
	for _, r := range checkvalues.Published(t, "coil_effectiveness.csv") {
		for _, layers := range []int{1, 7, 20, 80} {
			s := hugeBody(layers, r.Number(t, "ua_W_K"))
			s.Fill(55)
			f := Flows{DrawKgPerS: tenLPerMin, MainsC: 10}
			f.DtS = s.StepLimitS(f.DrawKgPerS, 0)
			outC := flush(s, f, 3)
			within(t, "outlet", outC, 55-45*math.Exp(-r.Number(t, "ua_W_K")/tenCapacity), 45e-9)
			within(t, "published outlet", outC, r.Number(t, "outlet_C"), 1e-5)
		}
	}
}

// Shorter steps take the same, within 0.1 % of the effectiveness (second order in
// the layers): a step cut short by anything else must not change the outlet.
func TestCoilEffectivenessInShortSteps(t *testing.T) {
	var off worst
	for _, ua := range []float64{400, 800, 1600, 3000} {
		for _, share := range []float64{0.05, 0.2, 0.5, 0.8, 0.95} {
			s := hugeBody(20, ua)
			s.Fill(55)
			f := Flows{DrawKgPerS: tenLPerMin, MainsC: 10}
			f.DtS = share * s.StepLimitS(f.DrawKgPerS, 0)
			got, want := (flush(s, f, 8)-10)/45, -math.Expm1(-ua/tenCapacity)
			off.see(got, want)
			within(t, "effectiveness", got, want, 1e-3)
		}
	}
	t.Logf("worst %.1e", float64(off))
}

// Three layers met from the bottom: the published march, to its eight figures.
func TestCoilSegments(t *testing.T) {
	rows := checkvalues.Published(t, "coil_segments.csv")
	s := hugeBody(len(rows), 300*float64(len(rows)))
	for i, r := range rows {
		s.temps[i] = r.Number(t, "store_C")
	}
	const kgPerS = 697.1 / water.CpJPerKgK
	flush(s, Flows{DtS: s.StepLimitS(kgPerS, 0), DrawKgPerS: kgPerS, MainsC: 10}, 5)
	for i, r := range rows {
		within(t, "leaves segment "+r["segment"], s.coil.temps[i], r.Number(t, "leaves_C"), 1e-5)
	}
}

// heated gives the flow temperature that brings heatW to a store with its return
// at the bottom.
func heated(s *Compact, heatW, kgPerS float64) float64 {
	_, returnC := s.ReturnLine(kgPerS, 0)
	return returnC + heatW/(kgPerS*water.CpJPerKgK)
}

// The mixed store discharged through the coil, with and without heat. The water in
// the coil, 0.01 of 100 litres, and steps of 0.06 s leave 0.02 K.
func TestMixedStoreDischarged(t *testing.T) {
	var off worst
	for _, r := range checkvalues.Published(t, "mixed_store_through_coil.csv") {
		s := mixedStore(100, 1200)
		s.Fill(58)
		heatW, at := r.Number(t, "heat_W"), 0.0
		f := Flows{DtS: s.StepLimitS(tenLPerMin, 0), DrawKgPerS: tenLPerMin, MainsC: 10, PrimaryKgPerS: nominalKgS}
		if heatW == 0 {
			f.PrimaryKgPerS = 0
		}
		var last Result
		for ; at < r.Number(t, "time_s"); at += f.DtS {
			f.FlowInC = heated(s, heatW, nominalKgS)
			last = s.Step(&f)
		}
		off.see(s.temps[0], r.Number(t, "store_C"))
		within(t, "store", s.temps[0], r.Number(t, "store_C"), 0.02)
		if r["outlet_C"] != "" {
			within(t, "outlet", last.DrawOutC, r.Number(t, "outlet_C"), 0.02)
		}
	}
	t.Logf("worst %.1e K", float64(off))
}

// The same behind a thermostatic mixer: the coil passes only the share of the tap's
// flow that makes 40 C. The time until the full flow no longer reaches 40 C, to 0.5
// %: the share lags by the water in the coil.
func TestMixedStoreAtAMixer(t *testing.T) {
	for _, r := range checkvalues.Published(t, "mixed_store_at_a_mixer.csv") {
		s := mixedStore(100, r.Number(t, "ua_W_K"))
		s.Fill(58)
		heatW, at := r.Number(t, "heat_W"), 0.0
		for s.OutletC() >= 40 {
			share, _ := water.Mix(40, s.OutletC(), 10, 0)
			f := Flows{DrawKgPerS: share * tenLPerMin, MainsC: 10}
			f.DtS = s.StepLimitS(f.DrawKgPerS, 0)
			if heatW > 0 {
				f.PrimaryKgPerS, f.FlowInC = nominalKgS, heated(s, heatW, nominalKgS)
			}
			s.Step(&f)
			at += f.DtS
		}
		t.Logf("UA %s, %s W: %.2f s, %+.2f %%", r["ua_W_K"], r["heat_W"], at, 100*(at/r.Number(t, "time_s")-1))
		within(t, "time to the end", at, r.Number(t, "time_s"), 0.005*r.Number(t, "time_s"))
		within(t, "store at the end", s.temps[0], r.Number(t, "end_C"), 0.1)
		within(t, "litres at 40 C", at*tenLPerMin/kgPerLMixed, r.Number(t, "litres_at_40C"), 0.005*r.Number(t, "litres_at_40C"))
	}
}

// The water that stands in the coil comes first, at the store's temperature: all of
// the coil when nothing is drawn from the store behind it.
func TestFirstLitresAreHot(t *testing.T) {
	s := testCompact(1800, 0.2)
	s.Fill(55)
	f := Flows{DrawKgPerS: tenLPerMin, MainsC: 10, RoomC: 20}
	f.DtS = s.StepLimitS(f.DrawKgPerS, 0)
	within(t, "first water", s.Step(&f).DrawOutC, 55, 1e-9)
	outC := 0.0
	for drawn := f.DrawKgPerS * f.DtS; drawn < 0.5*s.coil.vesselKg(); drawn += f.DrawKgPerS * f.DtS {
		outC = s.Step(&f).DrawOutC
	}
	// Up to here the water was in the upper half, where the store has hardly cooled.
	if outC > 55 || outC < 54 {
		t.Errorf("after half of the coil %.2f C", outC)
	}
}

// At rest the water in the coil comes back to the store's temperature with the
// coefficient of the standing coil: two bodies, exactly. Rounding only.
func TestStandingCoilRecovers(t *testing.T) {
	s := testCompact(1800, 0.2)
	s.mixPerS, s.lossPerS = 0, 0
	s.Fill(55)
	s.coil.fill(10)
	body, water := s.layerJPerK*20, s.coil.layerJPerK*20
	for range 10 {
		s.Step(&Flows{DtS: 12, RoomC: 20})
	}
	gap := 45 * math.Exp(-s.stillWPerK*120*(1/body+1/water))
	within(t, "gap", s.temps[7]-s.coil.temps[7], gap, shareOfStep)
}

// Charging at a flow hotter than the store turns the heating water over: when as
// much has passed as it holds, all of it is at flow temperature (no stirring, and
// the coil kept out of it).
func TestChargingTurnsOver(t *testing.T) {
	s := testCompact(1e-6, 0)
	s.mixPerS, s.lossPerS = 0, 0
	s.Fill(40)
	f := Flows{PrimaryKgPerS: nominalKgS, FlowInC: 60, RoomC: 20}
	f.DtS = s.layerKg / f.PrimaryKgPerS
	for i := range 20 {
		if _, returnC := s.ReturnLine(f.PrimaryKgPerS, 0); math.Abs(returnC-40) > 1e-6 {
			t.Fatalf("return %.6f C after %d of 20 parts", returnC, i)
		}
		within(t, "heat taken", s.Step(&f).PrimaryInJ, f.PrimaryKgPerS*f.DtS*water.CpJPerKgK*20, 1e-3)
	}
	for _, height := range []float64{0, 0.5, 1} {
		within(t, "turned over", s.AtC(height), 60, 1e-6)
	}
}

// A flow cooler than the top destroys the layers: in a minute the top falls by more
// than 5 K although the store gains heat; left alone it would keep its top to 0.1 K.
func TestCoolFlowDestroysLayers(t *testing.T) {
	for _, c := range []struct{ kgPerS, least, most float64 }{{nominalKgS, 5, 15}, {0, 0, 0.1}} {
		s := testCompact(1800, 0.2)
		s.Fill(30)
		for i := 10; i < 20; i++ {
			s.temps[i], s.coil.temps[i] = 55, 55
		}
		before := s.HeatJ()
		for range 12 {
			s.Step(&Flows{DtS: 5, PrimaryKgPerS: c.kgPerS, FlowInC: 40, RoomC: 20})
		}
		if fell := 55 - s.AtC(1); fell < c.least || fell > c.most {
			t.Errorf("flow of %g kg/s: the top fell by %.2f K", c.kgPerS, fell)
		}
		if c.kgPerS > 0 && s.HeatJ() <= before {
			t.Errorf("the store gained %.0f J", s.HeatJ()-before)
		}
	}
}

// Step after step, heat in less heat out is the change of heat held, to 1e-12 of
// the heat that the store holds.
func TestCompactBalance(t *testing.T) {
	s := testCompact(1800, 0.2)
	s.Fill(55)
	for i := range 800 {
		f := Flows{MainsC: 8, RoomC: 20}
		if i%100 < 40 {
			f.DrawKgPerS = 0.05 + 0.002*float64(i%50)
		}
		if i%170 > 90 {
			f.PrimaryKgPerS, f.FlowInC = nominalKgS, 62
		}
		if i%50 > 45 {
			f.ImmersionW, f.ImmersionHeight = 3000, 0.6
		}
		f.DtS = math.Min(10, s.StepLimitS(f.DrawKgPerS, f.PrimaryKgPerS))
		balance(t, s, f)
	}
}

// What a snapshot brings back goes on as before.
func TestSnapshot(t *testing.T) {
	for _, v := range []Vessel{testCompact(1800, 0.2), testCylinder(32, 0.15)} {
		v.Fill(55)
		f := Flows{DtS: 3, DrawKgPerS: 0.15, MainsC: 10, PrimaryKgPerS: nominalKgS, FlowInC: 50, RoomC: 20}
		step := func() (r Result) {
			for range 30 {
				r = v.Step(&f)
			}
			return r
		}
		step()
		saved := v.Snapshot()
		first := step()
		v.Restore(saved)
		if again := step(); again != first {
			t.Errorf("%T: %+v, then %+v", v, first, again)
		}
	}
}
