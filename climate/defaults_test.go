package climate

import (
	"math"
	"strings"
	"testing"
)

func TestDefaultsAreThePublishedStatistics(t *testing.T) {
	p := Defaults()
	for m, row := range published(t, "climate_defaults.csv", "sd_daily_mean_k", "lag1_daily", "mean_daily_range_k", "rh_mean_pct") {
		got := []float64{p.SDDailyMeanK[m], p.Persistence, p.DailyRangeK[m], p.RHPercent[m]}
		for i := range row {
			if got[i] != row[i] {
				t.Errorf("month %d: got %v, published %v", m+1, got, row)
				break
			}
		}
	}
}

func TestValidateAcceptsBritain(t *testing.T) {
	if err := british(t).Validate(); err != nil {
		t.Error(err)
	}
}

func TestValidateNamesEveryFault(t *testing.T) {
	p := british(t)
	p.OutdoorC[2] = math.NaN()
	p.MainsC[0] = 46 // deg F
	p.RHPercent[11] = 0.84
	p.Persistence = 1
	err := p.Validate()
	if err == nil {
		t.Fatal("four faults accepted")
	}
	want := []string{
		"climate: outdoor temperature of month 3 is NaN deg C, allowed -50 to 45: give monthly means in deg C",
		"climate: mains temperature of month 1 is 46 deg C, allowed 2 to 35: give monthly means in deg C",
		"climate: relative humidity of month 12 is 0.84 percent, allowed 5 to 100: give percent, such as 80",
		"climate: persistence is 1, allowed 0 to 0.95: leave it out to use the default",
	}
	if got := err.Error(); got != strings.Join(want, "\n") {
		t.Errorf("got:\n%s\nwant:\n%s", got, strings.Join(want, "\n"))
	}
}
