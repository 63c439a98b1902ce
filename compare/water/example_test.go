package water_test

import (
	"fmt"

	"dhwcompare/compare/water"
)

// A thermostatic shower at 40 C as the hot water cools: it holds 40 C down to 45
// C, then follows.
func ExampleMix() {
	for _, hotC := range []float64{55, 45, 43, 35} {
		share, mixedC := water.Mix(40, hotC, 10, water.ShowerMarginK)
		fmt.Printf("hot %.0f C: %.0f %% hot, %.0f C\n", hotC, 100*share, mixedC)
	}
	// Output:
	// hot 55 C: 67 % hot, 40 C
	// hot 45 C: 86 % hot, 40 C
	// hot 43 C: 85 % hot, 38 C
	// hot 35 C: 80 % hot, 30 C
}

// A bath of 100 litres at 40 C holds this much heat above mains at 10 C, counted
// as litres at 40 C.
func ExampleKgPerLitre() {
	joules := 100 * water.KgPerLitre(40) * water.CpJPerKgK * (40 - 10)
	fmt.Printf("%.2f kWh\n", joules/3.6e6)
	// Output: 3.46 kWh
}
