package climate_test

import (
	"fmt"

	"dhwcompare/climate"
)

// One year of British weather; January keeps its stated mean of 4.3 deg C.
func ExampleSynthesize() {
	p := climate.Defaults()
	p.OutdoorC = climate.Monthly{4.3, 4.9, 6.5, 8.9, 11.7, 14.6, 16.6, 16.4, 14.1, 10.6, 7.1, 4.2}
	p.MainsC = climate.Monthly{8.0, 8.2, 9.3, 12.7, 14.6, 16.7, 18.4, 17.6, 16.6, 14.3, 11.1, 8.5}
	if err := p.Validate(); err != nil {
		fmt.Println(err)
		return
	}
	year := climate.Synthesize(p, 1, 0)

	sum := 0.0
	january := year.OutdoorC[:31*24]
	for _, c := range january {
		sum += c
	}
	fmt.Printf("%d hours, January %.2f deg C\n", len(year.OutdoorC), sum/float64(len(january)))
	// Output: 8760 hours, January 4.30 deg C
}

// Without a local table mains water is estimated; for Britain, where the national
// table says 8.0 deg C in January and 18.4 in July, the estimate is too even.
func ExampleEstimateMains() {
	mains := climate.EstimateMains(climate.Monthly{4.3, 4.9, 6.5, 8.9, 11.7, 14.6, 16.6, 16.4, 14.1, 10.6, 7.1, 4.2})
	fmt.Printf("January %.1f, July %.1f deg C\n", mains[0], mains[6])
	// Output: January 10.8, July 15.8 deg C
}
