package compare

import (
	"testing"

	"dhwcompare/compare/calendar"
	"dhwcompare/tariffs"
)

// sunny is a case with surplus in the hours from 11:00 to 14:00 of standard time.
func sunny(kWh float64) Case {
	c := Default()
	c.Climate.SummerTime = false
	c.Tariffs = []tariffs.Tariff{*tariffs.Flat("flat", 0.2611, 0)}
	c.Surplus = Surplus{HalfHourKWh: make([]float64, calendar.HalfHours), ExportPerKWh: 0.12}
	for i := range c.Surplus.HalfHourKWh {
		if slot := i % slotsADay; slot >= 22 && slot < 28 {
			c.Surplus.HalfHourKWh[i] = kWh
		}
	}
	return c
}

// A kilowatt-hour of surplus costs the payment of 12 that is lost, not nothing, and
// saves 14.11 against the rate of 26.11 (worked by hand).
func TestSurplusCostsTheExportThatIsLost(t *testing.T) {
	c := sunny(5)
	rates, err := c.rates()
	if err != nil {
		t.Fatal(err)
	}
	profile := make([]float64, calendar.HalfHours)
	profile[24], profile[40] = 1, 1 // one in the sun, one in the evening
	bill, err := rates[0].Bill(profile)
	if err != nil {
		t.Fatal(err)
	}
	closeTo(t, "bill", bill.Year.EnergyCost, 0.12+0.2611, 1e-12)
	closeTo(t, "saving in the sun", 2*0.2611-bill.Year.EnergyCost, 0.1411, 1e-12)
}

// Surplus makes its hours the cheapest, in so far as it feeds the heat pump.
func TestSurplusMakesItsHoursCheap(t *testing.T) {
	c := sunny(5)
	prices := slotPricesOf(t, &c)
	closeTo(t, "in the sun", prices[24], 0.12, 1e-12)
	closeTo(t, "in the evening", prices[40], 0.2611, 1e-12)
	if got := windowTexts(windowCandidates(prices, 3)[1]); got[0] != "11:00-14:00" {
		t.Errorf("the cheapest three hours are %v", got)
	}
	half := sunny(runKWh / 2)
	closeTo(t, "with half of what it takes", slotPricesOf(t, &half)[24], (0.12+0.2611)/2, 1e-12)
}

func TestSurplusOfAWrongLengthIsRefused(t *testing.T) {
	c := sunny(1)
	c.Surplus.HalfHourKWh = c.Surplus.HalfHourKWh[1:]
	if _, err := newCollector(&c); err == nil {
		t.Error("a year with a half hour missing is priced")
	}
}
