package compare

import (
	"slices"
	"strings"
	"testing"

	"dhwcompare/climate"
	"dhwcompare/compare/calendar"
	"dhwcompare/compare/datafile"
)

func fileNamed(name string, warnings ...string) datafile.File {
	return datafile.File{Name: name, SHA256: "0", Data: []byte(name), Warnings: warnings}
}

// withFiles is a case that refers to a file of each kind.
func withFiles() *Case {
	c := Default()
	c.Climate.WeatherFile = fileNamed("far/away.epw", "a gap")
	c.Climate.Outdoor = &climate.Outdoor{AirC: make([]float64, calendar.Hours), Place: "Nowhere", HasOffset: true, UTCOffsetMin: 60}
	c.Tariffs[0].ScheduleFile = fileNamed("r.json")
	c.Tariffs[1].PriceFile = fileNamed("p.csv", "another weekday")
	c.Surplus.File = fileNamed("sun/p.csv")
	return &c
}

func TestGatherFiles(t *testing.T) {
	c := withFiles()
	before := *c
	var names []string
	for _, f := range c.GatherFiles() {
		names = append(names, f.Name+" was "+string(f.Data))
	}
	want := []string{"weather.epw was far/away.epw", "rates-1.json was r.json", "prices-2.csv was p.csv", "surplus.csv was sun/p.csv"}
	if !slices.Equal(names, want) {
		t.Errorf("got %q", names)
	}
	if c.Climate.WeatherFile.Name != "weather.epw" || c.Tariffs[1].PriceFile.Name != "prices-2.csv" {
		t.Error("the case keeps the names that it had")
	}
	if before.Tariffs[1].PriceFile.Name != "p.csv" {
		t.Error("a copy of the case is renamed too")
	}
	if again := c.GatherFiles(); again[2].Name != "prices-2.csv" || len(again) != len(want) {
		t.Errorf("gathering again gives %+v", again)
	}
	if none := Default(); len(none.GatherFiles()) > 0 {
		t.Error("a case without files has some")
	}
}

func TestFileWarnings(t *testing.T) {
	c := withFiles()
	c.GatherFiles()
	var got []string
	for _, w := range fileWarnings(c) {
		got = append(got, w.About+": "+w.Text)
	}
	want := []string{
		"climate.weather_file: weather.epw (Nowhere): every simulated year has this same weather",
		"climate.weather_file: weather.epw: a gap",
		"tariffs[2].price_file: prices-2.csv: another weekday",
		"climate.utc_offset_min: weather.epw has a clock 60 minutes ahead of UTC, the case has 0:",
	}
	if len(got) != len(want) {
		t.Fatalf("got %q", got)
	}
	for i := range want {
		if !strings.HasPrefix(got[i], want[i]) {
			t.Errorf("got %q, want %q", got[i], want[i])
		}
	}
	c.Climate.UTCOffsetMin = 60
	if n := len(fileWarnings(c)); n != len(want)-1 {
		t.Errorf("%d warnings with clocks that agree", n)
	}
	if none := Default(); len(fileWarnings(&none)) > 0 || none.HasSeries() {
		t.Error("a case without files has warnings about them")
	}
}

// A year takes its outdoor air from the file, and a lever that warms the place
// warms it too, in a copy.
func TestOutdoorAirFromAFile(t *testing.T) {
	c := withFiles()
	c.Climate.Outdoor.AirC[100] = -7
	w, err := c.World(3)
	if err != nil {
		t.Fatal(err)
	}
	if w.Weather.OutdoorC[100] != -7 || w.Weather.OutdoorC[101] != 0 {
		t.Errorf("hours are %g and %g", w.Weather.OutdoorC[100], w.Weather.OutdoorC[101])
	}
	for _, l := range c.placeLevers() {
		if l.name == "climate.outdoor_c" {
			l.set(c, 2)
		}
	}
	warmer, err := c.World(3)
	if err != nil {
		t.Fatal(err)
	}
	if warmer.Weather.OutdoorC[100] != -5 || w.Weather.OutdoorC[100] != -7 {
		t.Errorf("2 K warmer is %g, before %g", warmer.Weather.OutdoorC[100], w.Weather.OutdoorC[100])
	}
}

// The digest of a case knows the bytes of its files, and not where they lay.
func TestDigestKnowsFiles(t *testing.T) {
	a, b := withFiles(), withFiles()
	b.Climate.WeatherFile.Name = "elsewhere/x.epw"
	a.GatherFiles()
	b.GatherFiles()
	same, err := a.Digest()
	if err != nil {
		t.Fatal(err)
	}
	if other, err := b.Digest(); err != nil || other != same {
		t.Errorf("the folder counts: %s and %s, %v", same, other, err)
	}
	b.Climate.Outdoor.AirC[5]++
	if other, err := b.Digest(); err != nil || other == same {
		t.Errorf("an hour of the weather does not count: %v", err)
	}
}
