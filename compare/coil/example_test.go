package coil_test

import (
	"fmt"

	"dhwcompare/compare/coil"
)

// What 25 m of corrugated tube make of mains water at 10 C in a store at 55 C.
func ExampleUA() {
	g := coil.Corrugated25(25)
	for _, flow := range []float64{5, 10, 15} {
		r := coil.UA(g, 55, 10, flow)
		fmt.Printf("%.0f l/min: %.0f W/K, %.1f C, %.1f kW\n", flow, r.UAWPerK, r.OutletC, r.HeatW/1000)
	}
	// Output:
	// 5 l/min: 1268 W/K, 53.8 C, 15.3 kW
	// 10 l/min: 1691 W/K, 51.0 C, 28.6 kW
	// 15 l/min: 1951 W/K, 48.0 C, 39.8 kW
}

// The law of the same coil answers without marching.
func ExampleFit() {
	law := coil.Fit(coil.Corrugated25(25))
	fmt.Printf("%.0f W/K at 10 l/min, exponent %.2f, %.1f %% a kelvin\n", law.UA10WPerK, law.Exponent, 100*law.PerK)
	// Output: 1600 W/K at 10 l/min, exponent 0.36, 1.0 % a kelvin
}

// An indirect coil at 5 kW with 5 K between flow and return: how far the flow
// floats above water of one temperature around it.
func ExampleIndirectUA() {
	ua := coil.IndirectUA(3, 400, coil.FoulingM2KPerW)
	fmt.Printf("%.0f W/K: flow %.1f K above the water\n", ua, 5/coil.Effectiveness(ua, 5000.0/5))
	// Output: 1132 W/K: flow 7.4 K above the water
}

// A coil of 60 kPa and a tempering valve of 30 kPa at 15 l/min, on 0.5 bar.
func ExampleLargestFlow() {
	fmt.Printf("%.1f l/min\n", coil.LargestFlow(15, 0.5, 60, 30))
	// Output: 11.2 l/min
}
