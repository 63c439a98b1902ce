package casefile

import (
	"bytes"
	"fmt"
	"reflect"
	"strings"
	"testing"

	"dhwcompare/compare"
	"dhwcompare/compare/datafile"
	"dhwcompare/compare/heatpump"
	"dhwcompare/compare/household"
	"dhwcompare/tariffs"
)

// full is a case with something in every list.
func full() compare.Case {
	c := example()
	c.Household.Away = []household.DayRange{{FirstDay: 10, LastDay: 12}}
	c.Household.Guests = []household.Stay{{DayRange: household.DayRange{FirstDay: 20, LastDay: 22}, People: 2}}
	c.HeatPump.Table = []heatpump.Row{{OutdoorC: 7, LeavingC: 35, MaxOutputKW: 6, FullCOP: 4}}
	for _, k := range []*compare.Control{&c.Compact.Control, &c.Cylinder.Control} {
		k.Windows = []compare.Window{{FromMin: 60, ToMin: 120}}
		k.Raised = []compare.Raised{{Window: compare.Window{FromMin: 60, ToMin: 120}, SetpointC: 60}}
	}
	c.Climate.WeatherFile = datafile.File{Name: "w.epw", SHA256: "0"}
	c.Surplus.File = datafile.File{Name: "s.csv", SHA256: "0"}
	c.Tariffs = append(c.Tariffs,
		tariffs.Tariff{Name: "by the hour", PriceFile: datafile.File{Name: "p.csv", SHA256: "0"}},
		tariffs.Tariff{Name: "by the month", ScheduleFile: datafile.File{Name: "r.json", SHA256: "0"}})
	return c
}

// fromFile reports a field that comes from a file of its own, or whose place a file
// has taken: it shows in that file.
func fromFile(parent reflect.Value, field string) bool {
	switch p := parent.Interface().(type) {
	case datafile.File:
		return field == "Data" || field == "Warnings" || field == "SHA256" && !p.Stated()
	case tariffs.Tariff:
		stated := !p.PriceFile.Stated() && !p.ScheduleFile.Stated()
		return field == "SeriesPerKWh" || !stated && (field == "Bands" || field == "Remaining")
	default:
		return field == "Outdoor" || field == "HalfHourKWh"
	}
}

// Every field of a case shows in its file: change any, and the file changes.
func TestEveryFieldHasAKey(t *testing.T) {
	fields := 0
	var walk func(path string, of func(*compare.Case) reflect.Value)
	walk = func(path string, of func(*compare.Case) reflect.Value) {
		c := full()
		v := of(&c)
		switch v.Kind() {
		case reflect.Struct:
			for i := range v.NumField() {
				if name := v.Type().Field(i).Name; !fromFile(v, name) {
					walk(path+"."+name, func(c *compare.Case) reflect.Value { return of(c).Field(i) })
				}
			}
			return
		case reflect.Slice, reflect.Array:
			for i := range v.Len() {
				walk(fmt.Sprintf("%s[%d]", path, i), func(c *compare.Case) reflect.Value { return of(c).Index(i) })
			}
			if v.Kind() == reflect.Array {
				return
			}
		}
		fields++
		before := Write(&c)
		change(v)
		if bytes.Equal(before, Write(&c)) {
			t.Errorf("%s has no key", path)
		}
	}
	walk("Case", func(c *compare.Case) reflect.Value { return reflect.ValueOf(c).Elem() })
	const atLeast = 200 // twelve months count as twelve
	if fields < atLeast {
		t.Errorf("only %d fields looked at", fields)
	}
}

// change makes a value another one.
func change(v reflect.Value) {
	switch v.Kind() {
	case reflect.Float64:
		v.SetFloat(v.Float() + 0.125)
	case reflect.Int:
		v.SetInt(v.Int() + 1)
	case reflect.Uint8, reflect.Uint64:
		v.SetUint(v.Uint() + 1)
	case reflect.Bool:
		v.SetBool(!v.Bool())
	case reflect.String:
		v.SetString(v.String() + "x")
	case reflect.Pointer:
		v.Set(reflect.New(v.Type().Elem()))
	case reflect.Slice:
		v.Set(reflect.Append(v, reflect.Zero(v.Type().Elem())))
	default:
		panic("no way to change a " + v.Kind().String())
	}
}

func TestKeysAreDocumented(t *testing.T) {
	seen := map[string]bool{}
	for _, k := range Keys() {
		if seen[k.Path] {
			t.Errorf("%s stands twice in the table", k.Path)
		}
		seen[k.Path] = true
		if k.Help == "" || k.Source == "" || k.Form == "" {
			t.Errorf("%s lacks help, source or form: %+v", k.Path, k)
		}
		if strings.ContainsAny(k.Help+k.Source, "\n#") {
			t.Errorf("%s: help or source does not fit a comment", k.Path)
		}
		if len(k.Choices) == 0 && k.Min == k.Max && strings.HasPrefix(k.Form, "a number") {
			t.Errorf("%s has no range", k.Path)
		}
		for _, from := range k.From {
			if !seen[from] && !contains(Keys(), from) {
				t.Errorf("%s follows from %s, which is no key", k.Path, from)
			}
		}
	}
	for _, path := range []string{"household.people", "climate.outdoor_c"} {
		if !contains(Keys(), path) {
			t.Errorf("%s is no key", path)
		}
	}
}

func contains(keys []Key, path string) bool {
	for _, k := range keys {
		if k.Path == path {
			return true
		}
	}
	return false
}

// Units are in the names: a number with a unit says so at the end of its key,
// or at the end but for what it is a mean over.
func TestUnitsAreInTheNames(t *testing.T) {
	endings := map[string][]string{
		"°C": {"_c"}, "K": {"_k"}, "l": {"_l"}, "l/min": {"_l_per_min"}, "l/day": {"_l_per_day"}, "min": {"_min", "_minutes"},
		"s": {"_s"}, "W": {"_w"}, "kW": {"_kw"}, "W/K": {"_w_per_k"}, "kJ/K": {"_kj_per_k"}, "kWh": {"_kwh"}, "kWh/K": {"_kwh_per_k"},
		"m": {"_m"}, "mm": {"_mm"}, "m²": {"_m2"}, "m²K/W": {"_m2k_per_w"}, "W/m²K": {"_w_per_m2k"}, "W/mK": {"_w_per_mk"},
		"bar": {"_bar"}, "kPa": {"_kpa"}, "%": {"_percent"}, "share": {"_share"}, "days": {"_days"}, "currency": {"purchase", "installation", "volumiser"}, "currency/year": {"_per_year"}, "1/year": {"_per_year"}, "currency/m² year": {"_per_m2_year"}, "kg/kWh": {"_kg_per_kwh"}, "currency/kWh": {"_per_kwh"}, "h/day": {"hours_per_day"},
		"HH:MM-HH:MM": {"windows"}, "HH:MM": {"start"},
	}
	for _, k := range Keys() {
		if k.Unit == "" {
			continue
		}
		fits := false
		for _, ending := range endings[k.Unit] {
			fits = fits || strings.HasSuffix(k.Path, ending)
		}
		if !fits {
			t.Errorf("%s does not end in its unit, %s", k.Path, k.Unit)
		}
	}
}

// A setpoint of 31 °C is below every limit, whatever setpoint it is.
func TestSetpointsHaveALowerLimitAbove31(t *testing.T) {
	found := 0
	for _, k := range Keys() {
		if k.name() == "setpoint_c" {
			found++
			if k.Min <= 31 {
				t.Errorf("%s starts at %g", k.Path, k.Min)
			}
		}
	}
	if found != 2 {
		t.Errorf("%d setpoints, want one for each option", found)
	}
}

// Every default lies in the range of its key.
func TestDefaultsAreAllowed(t *testing.T) {
	c := example()
	for _, k := range Keys() {
		if k.Default == "" {
			continue
		}
		text := k.Default
		if k.Path == "title" {
			text = ""
		}
		if err := Set(&c, k.Path, text); err != nil {
			t.Error(err)
		}
	}
}
