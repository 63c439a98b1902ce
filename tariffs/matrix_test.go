package tariffs

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"dhwcompare/compare/calendar"
)

func exampleMatrix(t *testing.T) string {
	t.Helper()
	data, err := os.ReadFile(filepath.Join("..", "testdata", "tariffs", "schedule_matrix.json"))
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}

// The invented schedule has 6 cheap, 15 day and 3 peak hours on weekdays, no peak
// at weekends: 24.94 p and (6 x 15 + 18 x 26.11)/24 = 23.33 p on average.
func TestMatrixImport(t *testing.T) {
	tariff, warnings, err := ReadMatrix(strings.NewReader(exampleMatrix(t)), "matrix.json")
	if err != nil {
		t.Fatal(err)
	}
	r := compile(t, tariff)
	mean := func(day int) float64 {
		total := 0.0
		for half := range calendar.HalfHoursADay {
			total += r.PerKWh(day*calendar.HalfHoursADay+half) / calendar.HalfHoursADay
		}
		return total
	}
	near(t, "Thursday 1 January", mean(0), (6*0.15+15*0.2611+3*0.39)/24, 1e-12)
	near(t, "Saturday 3 January", mean(2), (6*0.15+18*0.2611)/24, 1e-12)
	near(t, "standing charge", r.StandingPerDay(), 0.5719, 1e-15)
	if got := strings.Join(r.labels, ","); got != "period 1,period 0,period 2" {
		t.Errorf("labels %s", got)
	}
	if text := strings.Join(warnings, "\n"); len(warnings) != 2 || !strings.Contains(text, "hourly") || !strings.Contains(text, "US dollars") {
		t.Errorf("warnings:\n%s", text)
	}
}

func TestMatrixVariants(t *testing.T) {
	text := exampleMatrix(t)
	text = strings.Replace(text, `{"rate": 0.15, "unit"`, `{"rate": 0.10, "adj": 0.02, "unit"`, 1)
	text = strings.Replace(text, `"$/day"`, `"$/month", "mincharge": 5, "flatdemandstructure": []`, 1)
	text = strings.Replace(text, `"invented multi-band tariff, no real one"`, `""`, 1)
	tariff, warnings, err := ReadMatrix(strings.NewReader(text), "matrix.json")
	if err != nil {
		t.Fatal(err)
	}
	r := compile(t, tariff)
	near(t, "rate plus adjustment", r.PerKWh(6), 0.12, 1e-15)
	near(t, "monthly charge per day", r.StandingPerDay(), 0.5719*12/365, 1e-15)
	if tariff.Name != "matrix.json" {
		t.Errorf("a tariff without a name is called %q", tariff.Name)
	}
	if len(warnings) != 3 || !strings.Contains(warnings[2], "mincharge is left out") {
		t.Errorf("warnings %v", warnings)
	}
}

// A fixed charge of a month or of a year becomes one of a day; units are read without
// their case and without the sign.
func TestFixedChargeByItsUnit(t *testing.T) {
	for unit, want := range map[string]float64{"$/day": 0.5719, "Month": 0.5719 * 12 / 365, " $/year ": 0.5719 / 365} {
		tariff, _, err := ReadMatrix(strings.NewReader(strings.Replace(exampleMatrix(t), "$/day", unit, 1)), "matrix.json")
		if err != nil {
			t.Fatal(err)
		}
		near(t, unit, tariff.StandingPerDay, want, 1e-15)
	}
}

// A schedule without a fixed charge needs no unit for it.
func TestMatrixWithoutFixedCharge(t *testing.T) {
	text := strings.Replace(exampleMatrix(t), "0.5719", "0", 1)
	text = strings.Replace(text, `"fixedchargeunits"`, `"somethingelse"`, 1)
	tariff, _, err := ReadMatrix(strings.NewReader(text), "matrix.json")
	if err != nil || tariff.StandingPerDay != 0 {
		t.Errorf("tariff %+v, error %v", tariff, err)
	}
}

func TestBadMatricesAreRefused(t *testing.T) {
	tests := []struct{ name, old, with, want string }{
		{"tiers", `[{"rate": 0.2611, "unit": "kWh"}]`, `[{"rate": 0.2, "max": 100}, {"rate": 0.3}]`, "energyratestructure: period 1 has 2 tiers"},
		{"unit", `"rate": 0.39, "unit": "kWh"`, `"rate": 0.39, "unit": "kW"`, `period 2 has the unit "kW"`},
		{"endless rate", `"rate": 0.39`, `"adj": 1e308, "rate": 1e308`, "period 2: rate 1e+308 and adj 1e+308 are too large"},
		{"no rates", `"energyratestructure"`, `"somethingelse"`, "energyratestructure: is missing"},
		{"no weekend", `"energyweekendschedule"`, `"somethingelse"`, "energyweekendschedule: has 0 rows"},
		{"period", "[1, 1, 1, 0,", "[7, 1, 1, 0,", "energyweekdayschedule: row 1, hour 0: period 7"},
		{"hours", "[1, 1, 1, 0,", "[1, 1, 0,", "energyweekdayschedule: row 1 has 23 hours"},
		{"fixed charge", "0.5719", "-1", "fixedchargefirstmeter: -1"},
		{"fixed charge unit", `"$/day"`, `"$/fortnight"`, `fixedchargeunits: "$/fortnight"`},
		{"list", `"name"`, `"items": [], "name"`, "items: the file is a list"},
		{"syntax", `"unit": "kWh"}],`, `"unit": "kWh"}`, "matrix.json:6: not the expected JSON"},
		{"text as rate", `"rate": 0.15`, `"rate": "cheap"`, "matrix.json:5: not the expected JSON: energyratestructure.rate cannot be of the kind string: give one tariff as one object"},
		{"no object", exampleMatrix(t), "[1]", "matrix.json:1: not the expected JSON: the file cannot be of the kind array"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			text := strings.Replace(exampleMatrix(t), tt.old, tt.with, 1)
			_, _, err := ReadMatrix(strings.NewReader(text), "matrix.json")
			if err == nil || !strings.Contains(err.Error(), tt.want) {
				t.Errorf("error %v, want %q", err, tt.want)
			}
		})
	}
}
