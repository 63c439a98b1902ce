package casefile

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"dhwcompare/compare"
)

func TestSet(t *testing.T) {
	c := example()
	for path, text := range map[string]string{
		"title":                         "Mill lane: #2",
		"household.showers_per_day":     "2.5",
		"household.has_bath":            "false",
		"climate.mains_c":               "[8, 8, 9, 12, 14, 16, 18, 17, 16, 14, 11, 8]",
		"cylinder.control.setpoint_c":   "52",
		"compact_store.control.windows": "[01:00-05:00, 13:00-16:00]",
	} {
		if err := Set(&c, path, text); err != nil {
			t.Error(err)
		}
	}
	if c.Title != "Mill lane: #2" || *c.Household.ShowersPerDay != 2.5 || c.Household.HasBath || c.Climate.MainsC[3] != 12 ||
		c.Cylinder.Control.SetpointC != 52 || len(c.Compact.Control.Windows) != 2 {
		t.Errorf("not all keys are set: %+v", c)
	}
}

// Every number among the inputs can be set by its name, list items included.
func TestSetTakesEveryInput(t *testing.T) {
	c := example()
	for _, in := range Inputs(&c) {
		if !in.Numeric || in.Origin == compare.Derived {
			continue
		}
		before := c
		if err := Set(&c, in.Key, in.Text); err != nil {
			t.Error(err)
		}
		if diff := cmp.Diff(before, c); diff != "" {
			t.Errorf("%s as it was changes the case: %s", in.Key, diff)
		}
	}
}

func TestSetReachesListItems(t *testing.T) {
	c := example()
	before := example()
	for path, text := range map[string]string{"tariffs[1].rate_per_kwh": "0.3", "tariffs[2].bands[1].rate_per_kwh": "0.12", "tariffs[2].name": "night: #2"} {
		if err := Set(&c, path, text); err != nil {
			t.Error(err)
		}
	}
	if c.Tariffs[0].Remaining.PerKWh != 0.3 || c.Tariffs[1].Bands[0].PerKWh != 0.12 || c.Tariffs[1].Name != "night: #2" {
		t.Errorf("the tariffs are %+v", c.Tariffs)
	}
	copied := before
	if err := Set(&copied, "tariffs[2].bands[1].rate_per_kwh", "0.5"); err != nil {
		t.Fatal(err)
	}
	if before.Tariffs[1].Bands[0].PerKWh == 0.5 {
		t.Error("setting a key of a copy changes the case that it is a copy of")
	}
}

func TestSetRefusesAndChangesNothing(t *testing.T) {
	for _, tt := range []struct{ path, text, want string }{
		{"cylinder.control.setpoint_c", "120", "cylinder.control.setpoint_c is 120, allowed 35 to 75 °C: it looks like degrees Fahrenheit: 120 would be 48.89 °C"},
		{"cylinder.control.setpoint_c", "hot", "cylinder.control.setpoint_c is hot, allowed a number from 35 to 75 °C: give a number in digits"},
		{"cylinder.control.setpoint_c", "", "cylinder.control.setpoint_c has no value: give one, or leave the key out"},
		{"cylinder.control.setpoint_c", "1: 2", "cylinder.control.setpoint_c is not sound YAML: a colon stands where none can: quote a text that holds one, and indent keys of a group alike"},
		{"cylinder.control.setpoint_c", "50\nseed: 3", "cylinder.control.setpoint_c holds more than one value: give one"},
		{"cylinder.control.setpoint", "50", "cylinder.control.setpoint is not known: did you mean setpoint_c?"},
		{"setpoint_c", "50", "setpoint_c is not known here: did you mean compact_store.control.setpoint_c or cylinder.control.setpoint_c?"},
		{"title", "two\nlines", `title is the text "two\nlines", allowed one line of text, at most 120 characters: leave out line breaks, control characters and marks that turn the direction of writing`},
		{"household.has_bath", "yes", "household.has_bath is yes, allowed true or false: write true"},
		{"tariffs[3].rate_per_kwh", "0.3", "tariffs has 2 items, so there is none of the number 3: count from 1"},
		{"tariffs[x].rate_per_kwh", "0.3", "tariffs has 2 items, so there is none of the number x: count from 1"},
		{"tariffs[1].rate_per_kwh", "cheap", "tariffs[1].rate_per_kwh is cheap, allowed a number from -1000 to 1000 currency/kWh: give a number in digits"},
		{"tariffs[2].bands[1].hours", "1-2", `tariffs[2].bands[1].hours is 1-2, allowed a stretch of the day, such as "13:00-16:30": give two times of the day from 00:00 to 24:00, as HH:MM-HH:MM`},
		{"household.away", "[{first_date: 1 Jul}]", "household.away[1].last_date is missing: give day and month in words, without a year"},
	} {
		c, before := example(), example()
		err := Set(&c, tt.path, tt.text)
		if err == nil {
			t.Errorf("%s takes %q", tt.path, tt.text)
			continue
		}
		if diff := cmp.Diff(tt.want, err.Error()); diff != "" {
			t.Error(diff)
		}
		if diff := cmp.Diff(before, c); diff != "" {
			t.Errorf("a refused %s changes the case: %s", tt.path, diff)
		}
	}
}

// Check finds in a changed case what Load finds in a file, without a place.
func TestCheck(t *testing.T) {
	c := example()
	if err := Check(&c); err != nil {
		t.Fatal(err)
	}
	for path, text := range map[string]string{"heat_pump.highest_flow_c": "60", "household.shower_min_c": "41", "compact_store.immersion.boost_below_c": "40"} {
		if err := Set(&c, path, text); err != nil {
			t.Fatal(err)
		}
	}
	want := []string{
		"compact_store.immersion.boost_below_c is stated but plays no part, as immersion.power_kw is 0: leave one of the two out",
		"household.shower_min_c is 41 °C, not below household.shower_c, which is 40 °C: lower one or raise the other",
		"compact_store.control.setpoint_c is 58 °C and with compact_store.control.flow_above_k 5 asks for a flow of 63 °C, above heat_pump.highest_flow_c, which is 60 °C: lower the setpoint",
	}
	if err := Check(&c); err == nil || err.Error() != strings.Join(want, "\n") {
		t.Errorf("got %v", err)
	}
}

// A value that no file could state is found by the part that would use it.
func TestCheckAsksTheParts(t *testing.T) {
	for _, tt := range []struct {
		name string
		want string
	}{
		{"people", "household holds a value that cannot be: people: 99 is outside 1 to 12; tap litres a day: 984.2 is outside 0 to 500 hot litres"},
		{"humidity", "climate holds a value that cannot be: climate: relative humidity of month 1 is 0 percent, allowed 5 to 100: give percent, such as 80"},
		{"coil", "compact_store holds a value that cannot be: coil fouling_m2k_per_w is 1; give 0 to 0.002 m2 K/W"},
		{"unit", "heat_pump holds LoadPenalty, which is 2, allowed is 0.02 to 0.12: use 0.07 unless a part-load test says otherwise"},
	} {
		c := example()
		switch tt.name {
		case "people":
			c.Household.People = 99
		case "humidity":
			c.Climate.RHPercent[0] = 0
		case "coil":
			c.Compact.FoulingM2KW = 1
		case "unit":
			c.HeatPump.LoadPenalty = 2
		}
		if err := Check(&c); err == nil || err.Error() != tt.want {
			t.Errorf("%s: got %v", tt.name, err)
		}
	}
}
