package casefile

import (
	"testing"

	"github.com/google/go-cmp/cmp"

	"dhwcompare/compare"
)

func inputNamed(t *testing.T, inputs []compare.Input, key string) compare.Input {
	t.Helper()
	for _, in := range inputs {
		if in.Key == key {
			return in
		}
	}
	t.Fatalf("no input is called %s", key)
	return compare.Input{}
}

func TestInputsSayWhereTheyComeFrom(t *testing.T) {
	_, inputs, err := Load("demo.yaml", Demo(), nil)
	if err != nil {
		t.Fatal(err)
	}
	for _, want := range []compare.Input{
		{Key: "household.people", Text: "3", Number: 3, Numeric: true, Origin: compare.Stated, Source: "stated in the case",
			Help: "people who live there; a fraction if one of them is there part of the time"},
		{Key: "household.showers_per_day", Text: "2", Number: 2, Numeric: true, Origin: compare.Derived,
			Source: "from household.people, household.has_bath: SAP 10.2, appendix J, step 1c", Help: "showers a day of all people together"},
		{Key: "household.shower_c", Text: "40", Number: 40, Numeric: true, Unit: "°C", Origin: compare.Assumed,
			Source: "common practice, no source", Help: "mixed temperature that is wanted"},
		{Key: "household.away", Text: "none", Origin: compare.Assumed, Source: "nobody is away", Help: "days on which the home is empty"},
		{Key: "climate.outdoor_c", Text: "4.3, 4.9, 6.5, 8.9, 11.7, 14.6, 16.6, 16.4, 14.1, 10.6, 7.1, 4.2", Unit: "°C", Origin: compare.Stated,
			Source: "stated in the case", Help: "mean outdoor air temperature of each month; weather_file can give every hour instead"},
	} {
		if diff := cmp.Diff(want, inputNamed(t, inputs, want.Key)); diff != "" {
			t.Error(diff)
		}
	}
}

func TestInputsOpenLists(t *testing.T) {
	c := example()
	inputs := Inputs(&c)
	rate := inputNamed(t, inputs, "tariffs[2].bands[1].rate_per_kwh")
	if rate.Number != c.Tariffs[1].Bands[0].PerKWh || !rate.Numeric || rate.Unit != "GBP/kWh" {
		t.Errorf("the night rate is %+v", rate)
	}
	if hours := inputNamed(t, inputs, "tariffs[2].bands[1].hours"); hours.Text != "00:30-07:30" {
		t.Errorf("the night is %+v", hours)
	}
}

func TestEveryInputIsExplained(t *testing.T) {
	c := example()
	for _, in := range Inputs(&c) {
		if in.Help == "" || in.Source == "" {
			t.Errorf("%s lacks help or source", in.Key)
		}
		if in.Text == "" && in.Key != "title" {
			t.Errorf("%s has no text", in.Key)
		}
	}
}
