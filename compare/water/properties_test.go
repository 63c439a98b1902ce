package water

import (
	"math"
	"testing"

	"dhwcompare/compare/checkvalues"
)

// Each tolerance is the worst error that the doc comment states for its fit; all
// are inside the 0.5 % (viscosity 1 %) that the simulation needs.
func TestPropertiesAgainstPublished(t *testing.T) {
	for _, c := range []struct {
		column string
		of     func(float64) float64
		share  float64
	}{
		{"density_kg_m3", DensityKgPerM3, 2e-5},
		{"cp_J_kgK", SpecificHeatJPerKgK, 3e-4},
		{"conductivity_W_mK", ConductivityWPerMK, 1.2e-3},
		{"dynamic_viscosity_Pa_s", ViscosityPaS, 1.6e-3},
		{"prandtl", Prandtl, 3e-3},
	} {
		for _, row := range checkvalues.Published(t, "water_properties.csv") {
			got, want := c.of(row.Number(t, "t_C")), row.Number(t, c.column)
			if math.Abs(got/want-1) > c.share {
				t.Errorf("%s at %g C: %.6g, published %.6g", c.column, row.Number(t, "t_C"), got, want)
			}
		}
	}
}

// Expansion passes through zero near 4 C, so below 10 C the error is absolute.
func TestExpansionAgainstPublished(t *testing.T) {
	for _, row := range checkvalues.Published(t, "water_properties.csv") {
		got, want := ExpansionPerK(row.Number(t, "t_C")), row.Number(t, "thermal_expansion_1_K")
		limit := 1e-3 * math.Abs(want)
		if row.Number(t, "t_C") < 10 {
			limit = 0.5e-6
		}
		if math.Abs(got-want) > limit {
			t.Errorf("at %g C: %.5g, published %.5g", row.Number(t, "t_C"), got, want)
		}
	}
}

// The analytic slope against a central difference of the density itself: of the
// order of 1e-9 with a step of 0.01 K.
func TestExpansionIsTheSlopeOfDensity(t *testing.T) {
	const h = 0.01
	for tC := 1.0; tC < 100; tC += 7 {
		want := -(DensityKgPerM3(tC+h) - DensityKgPerM3(tC-h)) / (2 * h) / DensityKgPerM3(tC)
		if got := ExpansionPerK(tC); math.Abs(got-want) > 1e-8 {
			t.Errorf("at %g C: %g, slope %g", tC, got, want)
		}
	}
}

// Water heated from 10 to 65 C expands by 1.953 % (IAPWS-95, 0.019530856).
func TestMeanExpansion(t *testing.T) {
	got := DensityKgPerM3(10)/DensityKgPerM3(65) - 1
	if math.Abs(got-0.019530856) > 2e-5 { // 0.002 % of density
		t.Errorf("%.6f, want 0.019531", got)
	}
}

func TestKinematicViscosity(t *testing.T) {
	if got := KinematicViscosityM2PerS(20); math.Abs(got/1.00340e-6-1) > 1.6e-3 { // IAPWS at 20 C
		t.Errorf("%g, want 1.0034e-6", got)
	}
}

func TestOutsideTheRangeTheNearerEndCounts(t *testing.T) {
	for name, of := range map[string]func(float64) float64{
		"density": DensityKgPerM3, "expansion": ExpansionPerK, "specific heat": SpecificHeatJPerKgK,
		"conductivity": ConductivityWPerMK, "viscosity": ViscosityPaS,
		"kinematic viscosity": KinematicViscosityM2PerS, "prandtl": Prandtl,
	} {
		if of(-20) != of(0) || of(140) != of(100) {
			t.Errorf("%s is not held at the ends: %g %g, %g %g", name, of(-20), of(0), of(140), of(100))
		}
	}
}
