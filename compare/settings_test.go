package compare

import (
	"context"
	"encoding/json"
	"reflect"
	"strings"
	"testing"
)

// The ladder climbs from the uncommissioned example to the case: each change alone, then
// all together. The last step is the case itself; the case is not changed.
func TestSettingsLadder(t *testing.T) {
	c := british(1)
	before, err := json.Marshal(&c)
	if err != nil {
		t.Fatal(err)
	}
	s, err := SettingsLadder(context.Background(), &c, 1, 2)
	if err != nil {
		t.Fatal(err)
	}
	var names []string
	steps := map[string]*SettingStep{}
	for i := range s.Steps {
		names = append(names, s.Steps[i].Name)
		steps[s.Steps[i].Name] = &s.Steps[i]
		t.Logf("%s (%s): winter %.1f min, summer %.1f min, %.0f failing showers, %.0f kWh, %.1f runs a day", s.Steps[i].Name, s.Steps[i].Change,
			s.Steps[i].WinterMin, s.Steps[i].SummerMin, s.Steps[i].Trial.Failing.Mean, s.Steps[i].Trial.HotWater, s.Steps[i].Trial.RunsADay)
	}
	if want := []string{"uncommissioned example", "setpoint", "hysteresis", "output", "pause", "commissioned"}; !reflect.DeepEqual(names, want) {
		t.Fatalf("steps %v, want %v", names, want)
	}
	own := tried(t, &c, SideCompact, 1)
	if steps["commissioned"].Trial != own {
		t.Errorf("the last step is %+v, the case %+v", steps["commissioned"].Trial, own)
	}
	var known *Settings
	found(t, settingSearch(t.Context(), &c, scouting(t, &c), 1, []YearRecord{{Totals: Totals{CostPerYear: 77}}}, &known))
	if last := known.Steps[len(known.Steps)-1]; last.Trial.Cost != 77 || last.WinterMin != steps["commissioned"].WinterMin {
		t.Errorf("a year that was given was lived again: %+v", last)
	}
	raw := steps["uncommissioned example"]
	if alone := steps["setpoint"]; alone.WinterMin <= raw.WinterMin || alone.Trial.Failing.Mean >= raw.Trial.Failing.Mean {
		t.Error("8 K more do not lengthen the winter shower")
	}
	if alone := steps["hysteresis"]; alone.Trial.RunsADay <= raw.Trial.RunsADay {
		t.Error("a narrower hysteresis does not start more often")
	}
	for name, step := range steps {
		if step.SummerMin < step.WinterMin {
			t.Errorf("%s: %.1f min in summer, %.1f min in winter", name, step.SummerMin, step.WinterMin)
		}
	}
	if after, err := json.Marshal(&c); err != nil || string(after) != string(before) {
		t.Error("the case was changed")
	}
}

// Each change takes its own setting from the case and no other; together they make the
// case's control.
func TestEachChangeIsOneSetting(t *testing.T) {
	own := british(1).Compact.Control
	months := [12]float64{60}
	own.MonthSetpointC, own.Raised = &months, []Raised{{Window{60, 120}, 62}}
	raw := own
	uncommissioned(&raw)
	all, changedBy := raw, map[string]string{}
	for _, change := range settingChanges(own) {
		alone := raw
		change.change(&alone, own)
		fields := fieldsThatDiffer(alone, raw)
		if len(fields) == 0 {
			t.Errorf("%s changes nothing", change.name)
		}
		for _, field := range fields {
			if by := changedBy[field]; by != "" {
				t.Errorf("%s is changed by %s and by %s", field, by, change.name)
			}
			changedBy[field] = change.name
		}
		change.change(&all, own)
	}
	if !reflect.DeepEqual(all, own) {
		t.Errorf("all changes make %+v, the case has %+v", all, own)
	}
}

// fieldsThatDiffer names the fields in which two controls differ.
func fieldsThatDiffer(a, b Control) []string {
	var names []string
	x, y := reflect.ValueOf(a), reflect.ValueOf(b)
	for i := range x.NumField() {
		if !reflect.DeepEqual(x.Field(i).Interface(), y.Field(i).Interface()) {
			names = append(names, x.Type().Field(i).Name)
		}
	}
	return names
}

// The commissioning list has every setting of both options with value and reason, those
// that are only there when set included.
func TestCommissioningList(t *testing.T) {
	c := british(1)
	c.Compact.Control.ShowerLimit = 6
	list := c.commissioning()
	has := map[string]string{}
	for _, item := range list {
		if item.Value == "" || item.Reason == "" {
			t.Errorf("%+v", item)
		}
		has[item.Option+": "+item.Setting] = item.Value
	}
	for _, want := range []string{"setpoint", "hysteresis", "output cap for hot water", "least pause between hot-water runs", "sensor height", "flow target above the setpoint"} {
		for side := range sides {
			if has[side.String()+": "+want] == "" {
				t.Errorf("%s: no %s in %v", side, want, has)
			}
		}
	}
	if has["compact store: shower flow limiter"] != "6 l/min" || has["cylinder: shower flow limiter"] != "" {
		t.Errorf("flow limiter: %v", has)
	}
	if !strings.HasPrefix(has["cylinder: disinfection"], "every 7 days, 60 C") || has["compact store: disinfection"] != "" {
		t.Errorf("disinfection: %v", has)
	}
}
