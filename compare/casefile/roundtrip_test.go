package casefile

import (
	"bytes"
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"dhwcompare/compare"
	"dhwcompare/compare/heatpump"
)

// fataler is a test or a rapid check.
type fataler interface {
	Helper()
	Fatalf(format string, args ...any)
}

// sameAgain writes a case, loads it and writes it again.
func sameAgain(t fataler, c *compare.Case) {
	t.Helper()
	written := Write(c)
	again, inputs, err := Load("written.yaml", written, nil)
	if err != nil {
		t.Fatalf("a written case is refused: %v\n%s", err, written)
	}
	if diff := cmp.Diff(c, again); diff != "" {
		t.Fatalf("a case changes by writing:\n%s", diff)
	}
	if second := Write(again); !bytes.Equal(written, second) {
		t.Fatalf("the second writing differs:\n%s", cmp.Diff(string(written), string(second)))
	}
	if diff := cmp.Diff(Inputs(c), inputs); diff != "" {
		t.Fatalf("the inputs change by writing:\n%s", diff)
	}
}

func TestDemoAndTemplateSurviveWriting(t *testing.T) {
	for name, data := range map[string][]byte{"demo": Demo(), "template": Template(), "sound": []byte(sound)} {
		c, _, err := Load(name, data, nil)
		if err != nil {
			t.Fatal(err)
		}
		sameAgain(t, c)
	}
}

// A case with a table, a load profile and values in place of all that follows
// from others.
func TestRareKeysSurviveWriting(t *testing.T) {
	c := example()
	for _, s := range [][2]string{
		{"household.load_profile", "L"},
		{"heat_pump.table", "[{outdoor_c: -7, leaving_c: 35, output_kw: 5, cop: 3}, {outdoor_c: -7, leaving_c: 55, output_kw: 5, cop: 2}," +
			"{outdoor_c: 7, leaving_c: 35, output_kw: 6, cop: 5}, {outdoor_c: 7, leaving_c: 55, output_kw: 6, cop: 3}]"},
		{"heat_pump.minimum_output_share", "0.25"},
		{"climate.mains_c", "[8, 8.2, 9.3, 12.7, 14.6, 16.7, 18.4, 17.6, 16.6, 14.3, 11.1, 8.5]"},
		{"compact_store.coil_ua_w_per_k", "1500"},
		{"cylinder.volume_l", "400"}, {"cylinder.width_mm", "700"}, {"cylinder.depth_mm", "700"}, {"cylinder.outside_height_mm", "2000"},
		{"cylinder.control.month_setpoint_c", "[52, 52, 50, 50, 48, 48, 48, 48, 48, 50, 50, 52]"},
		{"cylinder.control.windows", `["13:00-16:00", "22:00-05:00"]`},
		{"compact_store.control.raised", `[{hours: "23:30-05:30", setpoint_c: 60}]`},
		{"tariffs", `[{name: "a: #b", bands: [{label: "x", rate_per_kwh: -0.1, hours: "00:00-24:00", months: [Jan, Feb], days: weekdays}], rate_per_kwh: 0.3, tax_percent: 5, prices_include_tax: false}]`},
	} {
		if err := Set(&c, s[0], s[1]); err != nil {
			t.Fatal(err)
		}
	}
	if err := Check(&c); err != nil {
		t.Fatal(err)
	}
	sameAgain(t, &c)
}

// Whatever legal values a few keys are set to, the case survives writing.
func TestRandomCasesSurviveWriting(t *testing.T) {
	keys := slices.DeleteFunc(Keys(), func(k Key) bool { return k.Form == fileForm || k.Form == digestForm })
	rapid.Check(t, func(t *rapid.T) {
		c := example()
		for range 6 {
			k := rapid.SampledFrom(keys).Draw(t, "key")
			tried := c
			text := anyValue(&k).Draw(t, k.Path)
			if err := Set(&tried, k.Path, text); err != nil {
				t.Fatalf("%s refuses %s: %v", k.Path, text, err)
			}
			if Check(&tried) == nil { // else it contradicts another key
				c = tried
			}
		}
		sameAgain(t, &c)
	})
}

// anyValue draws a legal value as it would stand in a file.
func anyValue(k *Key) *rapid.Generator[string] {
	number := rapid.Custom(func(t *rapid.T) string { return plain(rapid.Float64Range(k.Min, k.Max).Draw(t, "number")) })
	switch {
	case len(k.Choices) > 0:
		return rapid.SampledFrom(k.Choices)
	case k.Form == "a number":
		return number
	case k.Form == "a whole number":
		return rapid.Map(rapid.Int64Range(int64(k.Min), int64(k.Max)), func(i int64) string { return fmt.Sprint(i) })
	case k.Form == "true or false":
		return rapid.SampledFrom([]string{"true", "false"})
	case k.Max > 0: // twelve numbers
		return rapid.Map(rapid.SliceOfN(number, 12, 12), func(list []string) string { return "[" + strings.Join(list, ",") + "]" })
	case k.Path == "title":
		return anyLine(longestTitle)
	case k.Path == "currency":
		return rapid.StringMatching("[A-Z]{3}")
	default:
		return anyStructure(k)
	}
}

func anyLine(longest int) *rapid.Generator[string] {
	return rapid.Map(rapid.StringN(0, longest, -1), func(s string) string {
		return strings.Map(func(c rune) rune {
			if isHidden(c) {
				return '?'
			}
			return c
		}, strings.ToValidUTF8(s, "?"))
	})
}

func anyStructure(k *Key) *rapid.Generator[string] {
	minute := rapid.IntRange(0, minutesADay-1)
	return rapid.Custom(func(t *rapid.T) string {
		from := minute.Draw(t, "from")
		hours := clockSpan(from, (from+rapid.IntRange(60, 900).Draw(t, "length"))%minutesADay)
		hours = strings.Replace(hours, "-00:00", "-24:00", 1)
		switch k.name() {
		case "start":
			return clockText(from)
		case "windows":
			return fmt.Sprintf("[%q]", hours)
		case "raised":
			return fmt.Sprintf("[{hours: %q, setpoint_c: %s}]", hours, plain(rapid.Float64Range(lowestSetpointC, highestSetpointC).Draw(t, "setpoint")))
		case "away":
			return "[{first_date: 1 Mar, last_date: 28 Mar}]"
		case "guests":
			return fmt.Sprintf("[{first_date: 30 Apr, last_date: 4 May, people: %d}]", rapid.IntRange(1, 12).Draw(t, "guests"))
		case "table":
			return "[]"
		default:
			name := strings.TrimSpace(anyLine(longestName-1).Draw(t, "name"))
			return fmt.Sprintf("[{name: %s, rate_per_kwh: 0.3, bands: [{label: %s, hours: %q, rate_per_kwh: 0.1}]}]",
				quote("a"+name), quote(name+"b"), hours)
		}
	})
}

// Text that means something to YAML, to a terminal or to nobody comes back as it
// was.
func TestForeignTextSurvivesWriting(t *testing.T) {
	for _, text := range []string{
		"", " ", "~", "null", "yes", "12", "0x1F", "a: b", "# no comment", "- item", "[a, b]", "{a: b}", "'single'", `"double"`, `back\slash`,
		"*star", "&and", "!bang", "%percent", "@at", "`tick`", "a\u00a0b", "Zuhause – südlich", "家", "дом", "🏠", "<<", "=", "2026-01-02", "trailing ",
	} {
		c := example()
		c.Title = text
		c.Tariffs[0].Name = "t" + text
		c.Tariffs[1].Bands[0].Label = text + "l"
		c.Tariffs[1].Remaining.Label = "r" + text
		sameAgain(t, &c)
	}
}

// A change of what a value follows from takes effect in a written case.
func TestDerivedValuesFollow(t *testing.T) {
	c, _, err := Load("demo.yaml", Demo(), nil)
	if err != nil {
		t.Fatal(err)
	}
	edited := bytes.Replace(Write(c), []byte("\n  people: 3 "), []byte("\n  people: 5 "), 1)
	more, _, err := Load("edited.yaml", edited, nil)
	if err != nil {
		t.Fatal(err)
	}
	if got, want := more.Household.Showers(), 0.45*5+0.65; got != want {
		t.Errorf("%g showers a day for five people, want %g", got, want)
	}
}

// The ranges of the keys of the unit are those of the performance map.
func TestLimitsOfTheUnit(t *testing.T) {
	for _, n := range heatpump.Defaults().Numbers() {
		k := mapNumber(n.Field)
		if k.Min >= k.Max {
			t.Errorf("%s has the range %g to %g", n.Field, k.Min, k.Max)
		}
	}
	for _, k := range Keys() {
		if strings.HasPrefix(k.Path, "heat_pump.") && k.Form == "a number" && k.Min >= k.Max {
			t.Errorf("%s has the range %g to %g", k.Path, k.Min, k.Max)
		}
	}
}
