package casefile

import (
	"errors"
	"fmt"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// What is wrong with the files of a case: a case, one file of it (the others are
// sound), and the whole message.
func TestBadFiles(t *testing.T) {
	weather := func(key string) string { return strings.Replace(windy, "data/place.epw", key, 1) }
	tariff := func(keys string) string { return with("tariffs: [{name: x, " + keys + "}]\n") }
	const notFile, zeros = ", allowed the name of a file in or below the folder of the case: ", "0000000000000000000000000000000000000000000000000000000000000000"
	bad := func(line int, text string) string {
		lines := strings.Split(madeWeather("80"), "\n")
		lines[line-1] = text
		return strings.Join(lines, "\n")
	}
	for _, tt := range []struct{ name, data, file, holds, want string }{
		{"no such file", weather("none.epw"), "", "", `case.yaml:4: climate.weather_file names "none.epw", and there is no such file: names count from the folder of the case`},
		{"no name", weather(`""`), "", "", `case.yaml:4: climate.weather_file is the text ""` + notFile + "give its name, or leave the key out"},
		{"blank", weather(""), "", "", "case.yaml:4: climate.weather_file has no value: give one, or leave the key out"},
		{"absolute", weather("/data/place.epw"), "", "", "case.yaml:4: climate.weather_file is /data/place.epw" + notFile + "copy the file into the folder of the case and give its name from there"},
		{"upwards", weather("../place.epw"), "", "", "case.yaml:4: climate.weather_file is ../place.epw" + notFile + "copy the file into the folder of the case and give its name from there"},
		{"upwards inside", weather("data/../../place.epw"), "", "", "case.yaml:4: climate.weather_file is data/../../place.epw" + notFile + "copy the file into the folder of the case and give its name from there"},
		{"the folder", weather("./"), "", "", "case.yaml:4: climate.weather_file is ./" + notFile + "copy the file into the folder of the case and give its name from there"},
		{"network", weather("https://example.org/x.epw"), "", "", "case.yaml:4: climate.weather_file is https://example.org/x.epw" + notFile + "nothing is fetched from a network: save the file beside the case and give its name"},
		{"backslash", weather(`data\place.epw`), "", "", `case.yaml:4: climate.weather_file is data\place.epw` + notFile + "write / between folders"},
		{"long name", weather(strings.Repeat("x", 201)), "", "", "case.yaml:4: climate.weather_file is " + strings.Repeat("x", 60) + "..." + notFile + "use at most 200 characters"},
		{"escape", weather(`"x\e[1m"`), "", "", `case.yaml:4: climate.weather_file is the text "x\x1b[1m"` + notFile + "leave out line breaks, control characters and marks that turn the direction of writing"},
		{"list", weather("[a, b]"), "", "", "case.yaml:4: climate.weather_file is a list of 2" + notFile + "give its name, such as data/file.csv, or leave the key out"},
		{"typing slip", strings.Replace(windy, "weather_file", "wether_file", 1), "", "", "case.yaml:3: climate.outdoor_c is missing: give monthly means in °C, January first\n" +
			"case.yaml:4: climate.wether_file is not known: did you mean weather_file?"},
		{"beside outdoor_c", sound + "  weather_file: data/place.epw\n", "", "", "case.yaml:4: climate.outdoor_c is stated, and climate.weather_file gives it too: leave one of the two out"},
		{"beside rh_percent", windy + "  rh_percent: [8, 8, 8, 8, 8, 8, 8, 8, 8, 8, 8, 8]\n", "", "", "case.yaml:5: climate.rh_percent is stated, and climate.weather_file gives it too: leave one of the two out"},
		{"beside persistence", windy + "  persistence: 0.6\n", "", "", "case.yaml:5: climate.persistence is stated but plays no part, as weather_file gives every hour: leave one of the two out"},
		{"digest", windy + "  weather_sha256: '" + zeros + "'\n", "data/place.epw", "x", `case.yaml:5: climate.weather_sha256 is 000000000000..., but "data/place.epw" has 2d711642b726...: ` +
			"it is not the file that the case was made with; restore it, or leave climate.weather_sha256 out to take it as it is"},
		{"digest cut short", windy + "  weather_sha256: abc123\n", "", "", "case.yaml:5: climate.weather_sha256 is abc123, allowed 64 hexadecimal digits: leave it out, and no digest is checked"},
		{"digest alone", sound + "  weather_sha256: " + strings.Repeat("ab", 32) + "\n", "", "", "case.yaml:5: climate.weather_sha256 is stated but plays no part, as no file is named: leave one of the two out"},
		{"another kind", windy, "data/place.epw", "a,b\n", `case.yaml:4: climate.weather_file (data/place.epw:1): begins with "a,b", an EPW file begins with LOCATION: give an hourly weather file in the EPW format`},
		{"a row", windy, "data/place.epw", bad(108, "2001,1,5,4,60,?,\x1b[1m,,80"), `case.yaml:4: climate.weather_file (data/place.epw:108): dry bulb is "[1m", which is no number: give a number, or leave it blank`},
		{"many rows", windy, "data/place.epw", strings.Replace(bad(9, "2001;1"), ",1,2,1,", ",13,2,1,", 1), "case.yaml:4: climate.weather_file (data/place.epw:9): 1 fields, a row has 35: separate them by commas\n" +
			`case.yaml:4: climate.weather_file (data/place.epw:33): month is "13", allowed 1 to 12: put it right`},
		{"too long", windy, "data/place.epw", strings.Repeat("x", LargestFile+1), `case.yaml:4: climate.weather_file names "data/place.epw", which has more than 16777216 bytes: check that this is the right file`},
		{"empty", windy, "data/place.epw", "", "case.yaml:4: climate.weather_file (data/place.epw:1): the file is empty: give an hourly weather file in the EPW format"},

		{"prices and rate", tariff("price_file: prices.csv, rate_per_kwh: 0.2"), "", "", "case.yaml:5: tariffs[1].rate_per_kwh is stated but plays no part, as price_file gives the rates: leave one of the two out"},
		{"prices and bands", tariff(`price_file: prices.csv, bands: [{label: a, rate_per_kwh: 1, hours: "00:00-24:00"}]`), "", "", "case.yaml:5: tariffs[1].bands is stated but plays no part, as price_file gives the rates: leave one of the two out"},
		{"prices and schedule", tariff("price_file: prices.csv, schedule_file: rates.json"), "", "", "case.yaml:5: tariffs[1].schedule_file is stated, and price_file gives the rates too: leave one of the two out"},
		{"prices missing", tariff("price_file: none.csv"), "", "", `case.yaml:5: tariffs[1].price_file names "none.csv", and there is no such file: names count from the folder of the case`},
		{"prices empty", tariff("price_file: prices.csv"), "prices.csv", "", "case.yaml:5: tariffs[1].price_file (prices.csv:1): the file has no header that can be read (it is empty): the first line must be start_utc,price"},
		{"price column", tariff("price_file: sun.csv"), "", "", `case.yaml:5: tariffs[1].price_file (sun.csv:1): header "start_utc,surplus_kwh" lacks start_utc or price: name both columns, separated by commas`},
		{"price text", tariff("price_file: prices.csv"), "prices.csv", strings.Replace(madeSeries("price", 2026, 0, pricePerKWh), "Z,0.2\n", "Z,low\n", 1), `case.yaml:5: tariffs[1].price_file (prices.csv:2): price "low" is not a number: give a plain decimal number without unit or currency sign`},
		{"price gap", tariff("price_file: prices.csv"), "prices.csv", strings.Replace(madeSeries("price", 2026, 0, pricePerKWh), "2026-03-01T00:00Z,0.2\n", "", 1), "case.yaml:5: tariffs[1].price_file (prices.csv:1418): 1 of 8760 values are missing near here, 2026-03-01T00:00Z to 2026-03-01T00:00Z: add the rows"},
		{"pence", tariff("price_file: prices.csv"), "prices.csv", madeSeries("price", 2026, 0, func(int) float64 { return 25 }), "case.yaml:5: tariffs[1].price_file holds rates of 25 with currency GBP, allowed up to 3: it looks like pence or cents, or like rates per MWh: convert them"},
		{"schedule in pence", tariff("schedule_file: rates.json"), "rates.json", madeSchedule("30", ""), "case.yaml:5: tariffs[1].schedule_file holds rates of 30 with currency GBP, allowed up to 3: it looks like pence or cents, or like rates per MWh: convert them"},
		{"schedule text", tariff("schedule_file: rates.json"), "rates.json", "{", "case.yaml:5: tariffs[1].schedule_file (rates.json:1): not the expected JSON: unexpected end of JSON input: give one tariff as one object"},
		{"schedule kind", tariff("schedule_file: rates.json"), "rates.json", "{\n\"energyratestructure\": 3}", "case.yaml:5: tariffs[1].schedule_file (rates.json:2): not the expected JSON: energyratestructure cannot be of the kind number: give one tariff as one object"},
		{"schedule period", tariff("schedule_file: rates.json"), "rates.json", strings.Replace(madeSchedule("0.3", ""), "[0,0", "[9,0", 1), "case.yaml:5: tariffs[1].schedule_file (rates.json): energyweekdayschedule: row 1, hour 0: period 9 is not in energyratestructure, which has 2 (the first is 0)"},
		{"second tariff", with("tariffs:\n- {name: a, rate_per_kwh: 1}\n- name: b\n  price_file: none.csv\n"), "", "", `case.yaml:8: tariffs[2].price_file names "none.csv", and there is no such file: names count from the folder of the case`},
		{"surplus below zero", with("surplus: {file: sun.csv}\n"), "sun.csv", madeSeries("surplus_kwh", 2026, 0, func(h int) float64 { return float64(min(h, 1)) - 1 }), "case.yaml:5: surplus.file (sun.csv:2): surplus_kwh -1 is below zero: give zero or more"},
		{"export alone", with("surplus: {export_per_kwh: 0.1}\n"), "", "", "case.yaml:5: surplus.export_per_kwh is stated but plays no part, as there is no surplus: leave one of the two out"},
		{"offset alone", sound + "  utc_offset_min: 60\n", "", "", "case.yaml:5: climate.utc_offset_min is stated but plays no part, as there is no price or surplus file: leave one of the two out"},
		{"offset in hours", sound + "  utc_offset_min: 0.5\ntariffs: [{name: x, price_file: prices.csv}]\n", "", "", "case.yaml:5: climate.utc_offset_min is 0.5, allowed a whole number from -720 to 840: give a whole number"},
		{"all at once", weather("none.epw") + "tariffs: [{name: x, price_file: none.csv}]\nsurplus: {file: prices.csv}\nyears: 0\n", "", "", `case.yaml:4: climate.weather_file names "none.epw", and there is no such file: names count from the folder of the case` + "\n" +
			`case.yaml:5: tariffs[1].price_file names "none.csv", and there is no such file: names count from the folder of the case` + "\n" +
			`case.yaml:6: surplus.file (prices.csv:1): header "start_utc,price" lacks start_utc or surplus_kwh: name both columns, separated by commas` + "\n" +
			"case.yaml:7: years is 0, allowed 1 to 1000: leave it out for the default, 20"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			files := madeFiles()
			if tt.file != "" {
				files[tt.file] = tt.holds
			}
			c, _, err := Load("case.yaml", []byte(tt.data), opener(files))
			var problems Problems
			if c != nil || !errors.As(err, &problems) {
				t.Fatalf("case %v and error %v, want no case and Problems", c, err)
			}
			if diff := cmp.Diff(tt.want, err.Error()); diff != "" {
				t.Error(diff)
			}
		})
	}
}

func TestFilesThatCannotBeOpened(t *testing.T) {
	for _, tt := range []struct {
		open Opener
		want string
	}{
		{nil, `case.yaml:4: climate.weather_file names "data/place.epw", which has not been read: a case from here cannot refer to files`},
		{func(string) ([]byte, error) { return nil, errors.New("it is a folder") },
			`case.yaml:4: climate.weather_file names "data/place.epw", which cannot be read (it is a folder): check the file and its permissions`},
		{func(string) ([]byte, error) { return nil, nil },
			"case.yaml:4: climate.weather_file (data/place.epw:1): the file is empty: give an hourly weather file in the EPW format"},
	} {
		if _, _, err := Load("case.yaml", []byte(windy), tt.open); err == nil || err.Error() != tt.want {
			t.Errorf("got %v, want %s", err, tt.want)
		}
	}
}

// Problems of files are listed like those of a case, up to as many.
func TestManyBadFiles(t *testing.T) {
	var b strings.Builder
	for i := range 20 {
		fmt.Fprintf(&b, "- {name: t%d, price_file: x.csv}\n", i)
	}
	_, _, err := Load("case.yaml", []byte(with("tariffs:\n"+b.String())), opener(map[string]string{
		"x.csv": "start_utc,price\n" + strings.Repeat("now,1\n", 30),
	}))
	var problems Problems
	if !errors.As(err, &problems) || len(problems) != mostProblems+1 {
		t.Fatalf("%d problems: %v", len(problems), err)
	}
}
