package tariffs_test

import (
	"fmt"
	"time"

	"dhwcompare/compare/calendar"
	"dhwcompare/tariffs"
)

// One kilowatt-hour at 08:00 on the wall clock of every day, on a two-rate meter
// that ignores summer time: from spring to autumn its night lasts until 08:30.
func ExampleTwoRate() {
	year := calendar.European(time.Thursday)
	night := tariffs.Window{StartMin: 30, EndMin: 7*60 + 30, Clock: tariffs.StandardClock}
	rates, err := tariffs.TwoRate("two-rate", 0.14, 0.34, 0.57, night).Compile(year)
	if err != nil {
		fmt.Println(err)
		return
	}
	profile := make([]float64, calendar.HalfHours)
	for day := range calendar.Days {
		eight := float64(day*calendar.DayS + 8*calendar.HourS)
		profile[int(year.Standard(eight)/calendar.HalfHourS)] += 1
	}
	bill, err := rates.Bill(profile)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, line := range bill.Year.Bands {
		fmt.Printf("%s: %.0f kWh, %.2f\n", line.Label, line.KWh, line.Cost)
	}
	fmt.Printf("standing charge: %.2f\n", bill.Year.StandingCost)
	fmt.Printf("total: %.2f\n", bill.Year.Total())
	// Output:
	// night: 210 kWh, 29.40
	// day: 155 kWh, 52.70
	// standing charge: 208.05
	// total: 290.15
}
