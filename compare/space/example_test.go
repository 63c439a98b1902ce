package space_test

import (
	"fmt"

	"dhwcompare/compare/space"
)

// Does a cylinder of 210 litres, with what hangs beside it, fit an airing
// cupboard of 700 x 600 x 2,000 mm?
func ExampleFit() {
	vessel, err := space.DefaultCylinder(210)
	if err != nil {
		fmt.Println(err)
		return
	}
	beside, err := space.BesideCylinder(210)
	if err != nil {
		fmt.Println(err)
		return
	}
	f, err := space.Measure(append([]space.Item{vessel}, beside...))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f m2 with access, %.0f l of cupboard, %.0f kg\n", f.FloorAreaM2, f.CupboardL, f.WeightFullKg)
	fit, err := space.Fit(f, space.Room{WidthMM: 700, DepthMM: 600, HeightMM: 2000, FrontFreeMM: space.DefaultFrontFreeMM})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, b := range fit.Blocks {
		fmt.Println(b)
	}
	// Output:
	// 0.60 m2 with access, 662 l of cupboard, 276 kg
	// height: needs 2030 mm, has 2000 mm, 30 mm short
}
