package vessel

import (
	"math"
	"testing"

	"dhwcompare/compare/checkvalues"
	"dhwcompare/compare/coil"
	"dhwcompare/compare/water"
)

const (
	declaredAtK  = 45.0 // store at 65 C, room at 20 C
	joulesPerKWh = 3.6e6
)

// lossOfDay holds a vessel at 65 C in a room at 20 C for 24 h and gives the mean
// loss in W. The test holds the temperature by an electric element under control;
// here the vessel is set back to 65 C at the end of every step, so that within a
// step of ten minutes it falls by 0.02 to 0.2 K.
func lossOfDay(v Vessel) float64 {
	const dt, day = 600.0, 86400.0
	lostJ := 0.0
	for range int(day / dt) {
		v.Fill(65)
		lostJ += v.Step(&Flows{DtS: dt, RoomC: 20}).LossJ
	}
	return lostJ / day
}

// A day at 45 K gives back the declared loss within 0.5 %: the fall within a step
// is 0.2 K of 45 K at most.
func TestDeclaredLoss(t *testing.T) {
	for _, r := range checkvalues.Published(t, "standing_loss_classes.csv") {
		litres, declaredW := r.Number(t, "volume_l"), r.Number(t, "loss_W")
		cylinder := NewCylinder(CylinderParams{
			VolumeL: litres, HeightM: 1.2, Layers: 32, LossWPerK: declaredW / declaredAtK, ConductivityWPerMK: 1.2,
			InletMixingShare: 0.15, CoilUAWPerK: 1130, CoilBottom: 0.05, CoilTop: 0.6,
		})
		within(t, "cylinder, W", lossOfDay(cylinder), declaredW, 0.005*declaredW)
		compact := NewCompact(CompactParams{
			VolumeL: litres, HeightM: 0.8, Layers: 20, LossWPerK: declaredW / declaredAtK, ConductivityWPerMK: 1.2,
			InletMixingShare: 0.2, CoilWaterL: 12.3, CoilDisplacedL: 18.9, CoilLaw: coil.Stated(1800, 10, 0),
		})
		within(t, "compact store, kWh in 24 h", lossOfDay(compact)*24/1000, r.Number(t, "kWh_per_24h"), 0.005*r.Number(t, "kWh_per_24h"))
	}
}

// dayOfUse is a day of use for the comparison of standing losses: kept warm by a
// heat pump of 5 kW between two temperatures at mid-height while it is allowed, and
// drawn for a quarter of an hour at 07:00, 12:00 and 19:00.
type dayOfUse struct {
	vessel       Vessel
	onC, offC    float64
	fromH, toH   float64
	drawKgPerS   float64
	heating      bool
	sensorHeight float64
}

// lossKWh runs three days and gives the loss of the last.
func (d *dayOfUse) lossKWh() float64 {
	const dt, day = 5.0, 86400.0
	d.vessel.Fill(d.offC)
	lostJ := 0.0
	for at := 0.0; at < 3*day; at += dt {
		f := d.flows(math.Mod(at, day)/3600, dt)
		lost := d.vessel.Step(&f).LossJ
		if at >= 2*day {
			lostJ += lost
		}
	}
	return lostJ / joulesPerKWh
}

func (d *dayOfUse) flows(hour, dt float64) Flows {
	f := Flows{DtS: dt, MainsC: 10, RoomC: 20}
	for _, start := range []float64{7, 12, 19} {
		if hour >= start && hour < start+0.25 {
			f.DrawKgPerS = d.drawKgPerS
		}
	}
	sensorC := d.vessel.AtC(d.sensorHeight)
	if sensorC < d.onC {
		d.heating = true
	}
	if sensorC > d.offC || hour < d.fromH || hour > d.toH {
		d.heating = false
	}
	if d.heating {
		const heatW, kgPerS = 5000.0, 17.0 / 60
		slope, interceptC := d.vessel.ReturnLine(kgPerS, 0)
		f.PrimaryKgPerS, f.FlowInC = kgPerS, (heatW/(kgPerS*water.CpJPerKgK)+interceptC)/(1-slope)
	}
	return f
}

// The published national view: a small hot store, kept hot round the clock, loses
// nearly as much as a timed cylinder of more than three times its volume, and so
// far more a litre. Given the same insulation the simulated losses agree in
// direction and, each as well as their ratio, within 25 %: the published factors
// stand for an average home and its pipes. The store stands at 60 C: its published
// factor with a declared loss, 0.89 of 45 K, is 40 K above the room (at 55 to 58 C
// it would lose 28 % less than the published figure). The cylinder stands at 50 C,
// is heated in the afternoon and drawn for 110 litres a day (common practice).
func TestSmallStoreAgainstTimedCylinder(t *testing.T) {
	rows := checkvalues.Published(t, "standing_loss_sap.csv")
	declared := func(r checkvalues.Row) float64 { // W/K
		kWhPerDay := r.Number(t, "volume_l") * r.Number(t, "kWh_per_litre_day") * r.Number(t, "volume_factor")
		within(t, "published product", kWhPerDay*r.Number(t, "temperature_factor"), r.Number(t, "kWh_per_day"), 5e-4)
		return kWhPerDay * 1000 / 24 / declaredAtK
	}
	store := dayOfUse{onC: 58.5, offC: 61.5, toH: 24, sensorHeight: 0.5, drawKgPerS: 0.1}
	store.vessel = NewCompact(CompactParams{
		VolumeL: 60, HeightM: 0.5, Layers: 20, LossWPerK: declared(rows[0]), ConductivityWPerMK: 1.2,
		InletMixingShare: 0.2, CoilWaterL: 12.3, CoilDisplacedL: 18.9, CoilLaw: coil.Stated(1800, 10, 0),
	})
	cylinder := dayOfUse{onC: 44, offC: 50, fromH: 13, toH: 16, sensorHeight: 0.4, drawKgPerS: 110.0 / 3 / 900}
	cylinder.vessel = NewCylinder(CylinderParams{
		VolumeL: 200, HeightM: 1.26, Layers: 32, LossWPerK: declared(rows[1]), ConductivityWPerMK: 1.2,
		InletMixingShare: 0.15, CoilUAWPerK: 1130, CoilBottom: 0.05, CoilTop: 0.6,
	})
	small, large := store.lossKWh(), cylinder.lossKWh()
	wantSmall, wantLarge := rows[0].Number(t, "kWh_per_day"), rows[1].Number(t, "kWh_per_day")
	t.Logf("store %.3f kWh a day (%+.0f %%), cylinder %.3f (%+.0f %%), ratio %.2f for %.2f",
		small, 100*(small/wantSmall-1), large, 100*(large/wantLarge-1), small/large, wantSmall/wantLarge)
	if small >= large || small/60 <= 2*large/200 {
		t.Errorf("store %.3f kWh a day, cylinder %.3f: not the published order", small, large)
	}
	within(t, "store", small, wantSmall, 0.25*wantSmall)
	within(t, "cylinder", large, wantLarge, 0.25*wantLarge)
	within(t, "ratio", small/large, wantSmall/wantLarge, 0.25*wantSmall/wantLarge)
}
