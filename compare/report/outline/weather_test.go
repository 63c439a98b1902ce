package outline

import (
	"strings"
	"testing"

	"dhwcompare/climate"
	"dhwcompare/compare"
)

// With a weather file nothing is said of weather that changes from year to year.
func TestMethodKnowsTheWeatherFile(t *testing.T) {
	c := compare.Default()
	if got := weatherText(&c); !strings.HasPrefix(got, "Twelve monthly means") || c.WhatVaries() != "weather and habits" {
		t.Errorf("monthly means: %q, years differ in %s", got, c.WhatVaries())
	}
	c.Climate.Outdoor = &climate.Outdoor{}
	if got := weatherText(&c); !strings.Contains(got, "the same in every year") || c.WhatVaries() != "habits" {
		t.Errorf("weather file: %q, years differ in %s", got, c.WhatVaries())
	}
}
