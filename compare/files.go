package compare

import (
	"fmt"
	"slices"

	"dhwcompare/compare/datafile"
	"dhwcompare/tariffs"
)

// referredFile is a file that a case refers to, under the key that names it.
type referredFile struct {
	key   string
	plain string // the name that it is given beside results
	*datafile.File
}

// referredFiles lists the files that a case refers to, in the order of its keys.
func (c *Case) referredFiles() []referredFile {
	all := []referredFile{{"climate.weather_file", "weather.epw", &c.Climate.WeatherFile}}
	for i := range c.Tariffs {
		t, n := &c.Tariffs[i], i+1
		all = append(all,
			referredFile{fmt.Sprintf("tariffs[%d].price_file", n), fmt.Sprintf("prices-%d.csv", n), &t.PriceFile},
			referredFile{fmt.Sprintf("tariffs[%d].schedule_file", n), fmt.Sprintf("rates-%d.json", n), &t.ScheduleFile})
	}
	all = append(all, referredFile{"surplus.file", "surplus.csv", &c.Surplus.File})
	return slices.DeleteFunc(all, func(f referredFile) bool { return !f.Stated() })
}

// GatherFiles gives the files that a case refers to plain names of their own, so
// that they can stand beside a filled-in case wherever they came from, and lists
// them under these names.
func (c *Case) GatherFiles() []datafile.File {
	c.Tariffs = slices.Clone(c.Tariffs) // a copy of the case keeps its names
	var files []datafile.File
	for _, f := range c.referredFiles() {
		f.Name = f.plain
		files = append(files, *f.File)
	}
	return files
}

// fileWarnings tells what is to be known about the files of a case.
func fileWarnings(c *Case) []Warning {
	var list []Warning
	if c.Climate.Outdoor != nil {
		list = append(list, Warning{"climate.weather_file",
			c.Climate.placeText() + ": every simulated year has this same weather, and only the draw-offs differ from year to year: spreads and intervals leave the weather out"})
	}
	for _, f := range c.referredFiles() {
		for _, text := range f.Warnings {
			list = append(list, Warning{f.key, f.Name + ": " + text})
		}
	}
	return append(list, clockWarnings(c)...)
}

// WhatVaries says in what the simulated years differ, such as "weather and habits".
func (c *Case) WhatVaries() string {
	if c.Climate.Outdoor != nil {
		return "habits"
	}
	return "weather and habits"
}

// placeText names the weather file, and the place that it names.
func (c *Climate) placeText() string {
	if c.Outdoor.Place == "" {
		return c.WeatherFile.Name
	}
	return fmt.Sprintf("%s (%s)", c.WeatherFile.Name, c.Outdoor.Place)
}

// clockWarnings compares the clock of the weather with that of the series, which
// have to run together.
func clockWarnings(c *Case) []Warning {
	o := c.Climate.Outdoor
	if o == nil || !o.HasOffset || o.UTCOffsetMin == c.Climate.UTCOffsetMin || !c.HasSeries() {
		return nil
	}
	return []Warning{{"climate.utc_offset_min", fmt.Sprintf(
		"%s has a clock %d minutes ahead of UTC, the case has %d: prices or surplus meet the weather of another hour; state the offset of the home",
		c.Climate.WeatherFile.Name, o.UTCOffsetMin, c.Climate.UTCOffsetMin)}}
}

// HasSeries reports whether a case refers to a file whose times are in UTC.
func (c *Case) HasSeries() bool {
	return c.Surplus.File.Stated() || slices.ContainsFunc(c.Tariffs, func(t tariffs.Tariff) bool { return t.PriceFile.Stated() })
}
