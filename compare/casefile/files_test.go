package casefile

import (
	"bytes"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"dhwcompare/compare"
	"dhwcompare/compare/calendar"
	"dhwcompare/compare/datafile"
)

func loadWith(t *testing.T, data string, files map[string]string) *compare.Case {
	t.Helper()
	c, _, err := Load("case.yaml", []byte(data), opener(files))
	if err != nil {
		t.Fatal(err)
	}
	return c
}

func TestFilesAreLaidOverTheCase(t *testing.T) {
	files := madeFiles()
	c := loadWith(t, furnished, files)
	o := c.Climate.Outdoor
	if c.Climate.OutdoorC != o.MeansC() || len(o.AirC) != calendar.Hours {
		t.Errorf("outdoor air %v", c.Climate.OutdoorC)
	}
	for m, rh := range c.Climate.RHPercent {
		if d := rh - 80; d > 1e-9 || d < -1e-9 { // all hours have 80; summing rounds
			t.Errorf("month %d has %g %%", m+1, rh)
		}
	}
	if got := c.Tariffs[0].SeriesPerKWh; len(got) != calendar.HalfHours || got[2*30] != pricePerKWh(30) || got[2*30+1] != pricePerKWh(30) {
		t.Errorf("%d prices", len(got))
	}
	if n := len(c.Tariffs[1].Bands); n != 6 { // night, day and evening, weekdays and weekends
		t.Errorf("the schedule has %d bands", n)
	}
	if s := c.Surplus.HalfHourKWh; len(s) != calendar.HalfHours || s[0] != 0 || s[2] != 0.5 || s[3] != 0.5 {
		t.Errorf("surplus %v", s[:4])
	}
	if f := c.Climate.WeatherFile; f.Name != "data/place.epw" || f.SHA256 != datafile.Digest(f.Data) || string(f.Data) != files["data/place.epw"] {
		t.Errorf("the weather file is %q with digest %s", f.Name, f.SHA256)
	}
	if c.Tariffs[0].PriceFile.Name != "prices.csv" {
		t.Errorf("the price file is %q", c.Tariffs[0].PriceFile.Name)
	}
}

// A case survives writing with its files where they are, and under the plain
// names that they get beside results; both are the same case.
func TestFilesSurviveWriting(t *testing.T) {
	files := madeFiles()
	c := loadWith(t, furnished, files)
	again := loadWith(t, string(Write(c)), files)
	if diff := cmp.Diff(c, again); diff != "" {
		t.Errorf("a case with files changes by writing:\n%s", diff)
	}
	beside := map[string]string{}
	for _, f := range c.GatherFiles() {
		beside[f.Name] = string(f.Data)
	}
	written := Write(c)
	moved := loadWith(t, string(written), beside)
	if diff := cmp.Diff(c, moved); diff != "" {
		t.Errorf("a gathered case changes by writing:\n%s", diff)
	}
	moved.GatherFiles()
	if !bytes.Equal(Write(moved), written) {
		t.Error("the second writing differs")
	}
	if diff := cmp.Diff(Inputs(c), Inputs(moved)); diff != "" {
		t.Errorf("the inputs change by writing:\n%s", diff)
	}
	for _, gone := range []string{"data/", "sun.csv", "..", "\noutdoor_c", "\nsd_daily"} {
		if strings.Contains(string(written), gone) {
			t.Errorf("the written case holds %q", gone)
		}
	}
}

func TestInputsFromFiles(t *testing.T) {
	inputs := Inputs(loadWith(t, windy, madeFiles()))
	outdoor := inputNamed(t, inputs, "climate.outdoor_c")
	if outdoor.Origin != compare.Derived || outdoor.Source != "from climate.weather_file: means of its hours" || !strings.HasPrefix(outdoor.Text, "3.3") {
		t.Errorf("outdoor air is %+v", outdoor)
	}
	if f := inputNamed(t, inputs, "climate.weather_file"); f.Text != "data/place.epw" || f.Origin != compare.Stated {
		t.Errorf("the file is %+v", f)
	}
}

// Without humidity in the file the key of the case counts.
func TestWeatherWithoutHumidity(t *testing.T) {
	rh := "  rh_percent: [81, 81, 81, 81, 81, 81, 81, 81, 81, 81, 81, 81]\n"
	c := loadWith(t, strings.Replace(windy, "data/place.epw", "dry.epw", 1)+rh, madeFiles())
	if c.Climate.RHPercent[5] != 81 || c.Climate.Outdoor.RHPercent != nil || len(c.Climate.WeatherFile.Warnings) != 1 {
		t.Errorf("humidity %v, warnings %q", c.Climate.RHPercent, c.Climate.WeatherFile.Warnings)
	}
}

// Names in warnings are those of the key, so that they do not depend on where the
// file lay.
func TestWarningsOfFiles(t *testing.T) {
	files := madeFiles()
	files["prices.csv"] = madeSeries("price", 2027, 0, pricePerKWh)
	files["rates.json"] = madeSchedule("0.3", `, "fixedchargefirstmeter": 0.5, "fixedchargeunits": "$/day"`)
	c := loadWith(t, furnished, files)
	if w := c.Tariffs[0].PriceFile.Warnings; len(w) != 1 || !strings.HasPrefix(w[0], "2027 begins on a Friday, the simulated year on a Thursday") {
		t.Errorf("prices: %q", w)
	}
	w := c.Tariffs[1].ScheduleFile.Warnings
	if len(w) != 3 || w[2] != "its fixed charge of 0.5 a day is left out: standing_per_day of the case counts, 0 a day" || strings.Contains(w[0], "rates.json") {
		t.Errorf("schedule: %q", w)
	}
}

// East of Greenwich the year begins before midnight UTC.
func TestUTCOffset(t *testing.T) {
	files := map[string]string{"p.csv": madeSeries("price", 2026, 60, pricePerKWh)}
	tariff := "tariffs: [{name: x, price_file: p.csv}]\n"
	c := loadWith(t, sound+"  utc_offset_min: 60\n"+tariff, files)
	if got := c.Tariffs[0].SeriesPerKWh[0]; got != pricePerKWh(0) {
		t.Errorf("the first price is %g", got)
	}
	if _, _, err := Load("case.yaml", []byte(sound+tariff), opener(files)); err == nil || !strings.Contains(err.Error(), "(p.csv:2): 2025-12-31T23:00Z lies outside 2026") {
		t.Errorf("got %v", err)
	}
}

func TestSetNamesFiles(t *testing.T) {
	files := madeFiles()
	files["warm.epw"] = strings.ReplaceAll(madeWeather(""), ",?,-", ",?,")
	c := loadWith(t, furnished, files)
	before, snapshot := *c, loadWith(t, furnished, files)
	for path, text := range map[string]string{"climate.weather_file": "warm.epw", "tariffs[3].schedule_file": "rates.json", "tariffs[2].price_file": "prices.csv"} {
		if err := Set(c, path, text); err != nil {
			t.Fatal(err)
		}
	}
	if err := Check(c); err == nil || !strings.Contains(err.Error(), `climate.weather_file names "warm.epw", which has not been read`) {
		t.Errorf("before the files are read: %v", err)
	}
	if err := Attach(c, opener(files)); err != nil {
		t.Fatal(err)
	}
	if err := Check(c); err != nil {
		t.Fatal(err)
	}
	if c.Climate.RHPercent != compare.Default().Climate.RHPercent || c.Climate.Outdoor.RHPercent != nil || c.Climate.WeatherFile.SHA256 == before.Climate.WeatherFile.SHA256 {
		t.Error("something of the first weather file is left")
	}
	if two := &c.Tariffs[1]; two.ScheduleFile.Stated() || len(two.Bands) > 0 || two.SeriesPerKWh == nil {
		t.Errorf("prices do not take the place of the schedule: %+v", two.ScheduleFile.Name)
	}
	if three := &c.Tariffs[2]; three.Remaining != nil || len(three.Bands) != 6 {
		t.Error("the schedule does not take the place of the rate")
	}
	if diff := cmp.Diff(snapshot, &before); diff != "" {
		t.Errorf("a copy of the case has changed: %s", diff)
	}
	if diff := cmp.Diff(c, loadWith(t, string(Write(c)), files)); diff != "" {
		t.Errorf("the case changes by writing: %s", diff)
	}
}

func TestSetBesideFiles(t *testing.T) {
	loaded := loadWith(t, furnished, madeFiles())
	before := string(Write(loaded))
	for _, tt := range []struct{ path, text, want string }{
		{"climate.outdoor_c", "[4, 5, 6, 9, 12, 15, 17, 16, 14, 11, 7, 4]", "climate.outdoor_c follows from a file and cannot be set: name another file, or make a case without one"},
		{"climate.rh_percent", "[80, 80, 80, 80, 80, 80, 80, 80, 80, 80, 80, 80]", "climate.rh_percent follows from a file and cannot be set: name another file, or make a case without one"},
		{"climate.utc_offset_min", "60", "tariffs[1].price_file (prices.csv:2): 1 of 8760 values are missing near here"},
		{"tariffs[2].bands[1].rate_per_kwh", "0.2", "tariffs[2].bands has 0 items, so there is none of the number 1: count from 1"},
		{"climate.weather_file", "", "climate.weather_file is , allowed the name of a file in or below the folder of the case: give its name, or leave the key out"},
		{"climate.weather_file", "/etc/x.epw", "climate.weather_file is /etc/x.epw, allowed the name of a file in or below the folder of the case: copy the file into the folder of the case and give its name from there"},
	} {
		c := *loaded
		err := Set(&c, tt.path, tt.text)
		if err == nil || !strings.HasPrefix(err.Error(), tt.want) {
			t.Errorf("%s: got %v", tt.path, err)
		}
		if diff := cmp.Diff(before, string(Write(&c))); diff != "" {
			t.Errorf("a refused %s changes the case: %s", tt.path, diff)
		}
	}
}

// A weekday of the year that is set later changes what is said about the prices.
func TestSetWeekdayLaysSeriesAgain(t *testing.T) {
	c := loadWith(t, furnished, madeFiles())
	if err := Set(c, "climate.first_weekday", "Friday"); err != nil {
		t.Fatal(err)
	}
	if w := c.Tariffs[0].PriceFile.Warnings; len(w) != 1 || !strings.Contains(w[0], "the simulated year on a Friday") {
		t.Errorf("warnings %q", w)
	}
}

func TestAttachRefusesAndChangesNothing(t *testing.T) {
	files := madeFiles()
	c, before := loadWith(t, furnished, files), loadWith(t, furnished, files)
	for _, k := range []*compare.Case{c, before} {
		if err := Set(k, "surplus.file", "none.csv"); err != nil {
			t.Fatal(err)
		}
	}
	err := Attach(c, opener(files))
	want := `surplus.file names "none.csv", and there is no such file: names count from the folder of the case`
	if err == nil || err.Error() != want {
		t.Errorf("got %v", err)
	}
	if diff := cmp.Diff(before, c); diff != "" {
		t.Errorf("the case changes: %s", diff)
	}
}
