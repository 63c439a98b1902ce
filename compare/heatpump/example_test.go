package heatpump_test

import (
	"fmt"

	"dhwcompare/compare/heatpump"
)

// A small unit on a mild day, 17 litres a minute returning at 55 C, the flow
// to stay under 65 C.
func ExampleUnit_At() {
	u, err := heatpump.New(heatpump.Defaults())
	if err != nil {
		fmt.Println(err)
		return
	}
	p := u.At(10, 55, 1184, 1, 65)
	fmt.Printf("%.2f kW at %.1f C, COP %.2f, %.2f kW of electricity\n",
		p.OutputW/1000, p.LeavingC, p.COP, p.ElectricityW/1000)
	fmt.Println("extrapolated:", p.Extrapolated)
	// Output:
	// 6.51 kW at 60.5 C, COP 2.81, 2.32 kW of electricity
	// extrapolated: hotter water
}

// A unit's own table replaces the generic map.
func ExampleNew() {
	p := heatpump.Defaults()
	p.Table = []heatpump.Row{
		{OutdoorC: 2, LeavingC: 45, MaxOutputKW: 6.0, FullCOP: 3.2},
		{OutdoorC: 2, LeavingC: 55, MaxOutputKW: 5.8, FullCOP: 2.6},
		{OutdoorC: 7, LeavingC: 45, MaxOutputKW: 7.0, FullCOP: 3.8},
		{OutdoorC: 7, LeavingC: 55, MaxOutputKW: 6.8, FullCOP: 3.0},
	}
	u, err := heatpump.New(p)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f kW, COP %.2f\n", u.MaxOutputW(4.5, 50)/1000, u.COP(4.5, 50, 1))

	p.Table = p.Table[:3]
	_, err = heatpump.New(p)
	fmt.Println(err)
	// Output:
	// 6.40 kW, COP 3.15
	// heat pump: Table has no row for outdoor 7 C with leaving 55 C: add it, or drop the other rows at one of these temperatures
}

// Heat and electricity in the first minute of a run.
func ExampleStart() {
	s := heatpump.Defaults().Start
	rise := s.After(0)
	heat, electricity := s.Step(&rise, 60)
	fmt.Printf("heat %.0f %%, electricity %.0f %%\n", 100*heat, 100*electricity)
	// Output:
	// heat 37 %, electricity 57 %
}
