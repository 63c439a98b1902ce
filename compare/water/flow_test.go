package water

import (
	"math"
	"testing"

	"dhwcompare/compare/checkvalues"
)

// enthalpyError is the error of the constant specific heat against the published
// enthalpies of two temperatures, as a share.
func enthalpyError(t *testing.T, from, to checkvalues.Row) float64 {
	published := 1000 * (to.Number(t, "enthalpy_kJ_kg") - from.Number(t, "enthalpy_kJ_kg"))
	return CpJPerKgK*(to.Number(t, "t_C")-from.Number(t, "t_C"))/published - 1
}

// The worst step of 5 K is the coldest, 0.23 %; heat from mains at 10 to 20 C up
// to 40 to 60 C is within 0.06 %.
func TestConstantSpecificHeatAgainstEnthalpy(t *testing.T) {
	rows := checkvalues.Published(t, "water_properties.csv")
	worstStep, worstUse := 0.0, 0.0
	for i, from := range rows {
		for _, to := range rows[i+1:] {
			if from.Number(t, "t_C") < 10 || to.Number(t, "t_C") > 60 {
				continue
			}
			e := math.Abs(enthalpyError(t, from, to))
			worstStep = max(worstStep, e)
			if from.Number(t, "t_C") <= 20 && to.Number(t, "t_C") >= 40 {
				worstUse = max(worstUse, e)
			}
		}
	}
	t.Logf("worst step %.3f %%, worst in use %.3f %%", 100*worstStep, 100*worstUse)
	if worstStep > 0.0025 || worstUse > 0.0006 {
		t.Errorf("worst step %.3f %%, worst in use %.3f %%", 100*worstStep, 100*worstUse)
	}
}

func TestVesselDensity(t *testing.T) {
	for _, row := range checkvalues.Published(t, "water_properties.csv") {
		if row.Number(t, "t_C") < 35 || row.Number(t, "t_C") > 65 {
			continue
		}
		if math.Abs(VesselKgPerLitre/(row.Number(t, "density_kg_m3")/1000)-1) > 0.008 {
			t.Errorf("at %g C: %g kg/l, true %g", row.Number(t, "t_C"), VesselKgPerLitre, row.Number(t, "density_kg_m3")/1000)
		}
	}
}

// 10 l/min of mains at 10 C: 10 x 0.9997 kg/l x 4182 / 60 = 696.791 W/K.
func TestCapacityRate(t *testing.T) {
	if got := CapacityRateWPerK(10, 10); math.Abs(got-696.791) > 0.02 { // 0.002 % of density, rounding of 0.9997
		t.Errorf("%.4f, want 696.791", got)
	}
}

func TestKilogramsOfALitre(t *testing.T) {
	if got := KgPerLitre(50); math.Abs(got-0.988035) > 2e-5 { // IAPWS-95 988.035 kg/m3
		t.Errorf("a litre at 50 C: %.6f kg", got)
	}
}
