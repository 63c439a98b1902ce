package casefile

import (
	"fmt"
	"slices"
	"strings"

	"dhwcompare/climate"
	"dhwcompare/compare"
	"dhwcompare/compare/datafile"
)

// Opener gives the bytes of a file that a case refers to, by its name from the
// folder of the case, with / between folders. It may be nil for a case that refers
// to none.
type Opener func(name string) ([]byte, error)

// LargestFile is how long a file that a case refers to may be, bytes: ten times a
// year of hourly weather. An Opener need not give more than one byte above it.
const LargestFile = climate.LargestEPW

// Attach reads the files that a case names and that have not been read, which is
// so after Set has named another one. Load has done it already. On an error,
// Problems without a place in the case, the case is unchanged.
func Attach(c *compare.Case, open Opener) error {
	r := newReader("")
	tried := *c
	if r.attach(&tried, open); r.err() == nil {
		*c = tried
	}
	return r.err()
}

// attachment is a file that a case names and what is made of it.
type attachment struct {
	key, digestKey string
	gives          string // key or list item that has its value from the file
	file           *datafile.File
	// use lays the file over the case and gives its warnings.
	use func(name string, data []byte) ([]string, error)
}

func attachments(c *compare.Case) []attachment {
	all := []attachment{{
		"climate.weather_file", "climate.weather_sha256", "climate.outdoor_c", &c.Climate.WeatherFile,
		func(name string, data []byte) ([]string, error) { return useWeather(&c.Climate, name, data) },
	}}
	for i := range c.Tariffs {
		t, item := &c.Tariffs[i], fmt.Sprintf("tariffs[%d]", i+1)
		all = append(all, attachment{
			item + ".price_file", item + ".price_sha256", item, &t.PriceFile,
			func(name string, data []byte) ([]string, error) { return usePrices(c, t, name, data) },
		}, attachment{
			item + ".schedule_file", item + ".schedule_sha256", item, &t.ScheduleFile,
			func(name string, data []byte) ([]string, error) { return useSchedule(t, name, data) },
		})
	}
	all = append(all, attachment{
		"surplus.file", "surplus.sha256", "surplus", &c.Surplus.File,
		func(name string, data []byte) ([]string, error) { return useSurplus(c, name, data) },
	})
	return slices.DeleteFunc(all, func(a attachment) bool { return !a.file.Stated() })
}

// attach reads the files of a case that have not been read, and lays all over it.
func (r *reader) attach(c *compare.Case, open Opener) {
	c.Tariffs = slices.Clone(c.Tariffs) // a copy of the case keeps its own
	if c.Climate.WeatherFile.Stated() {
		r.givenTwice("climate.outdoor_c", "climate.weather_file")
	}
	for _, a := range attachments(c) {
		if r.open(a, open) {
			r.lay(a)
		} else {
			r.bad[a.gives] = true
		}
	}
	if o := c.Climate.Outdoor; o != nil && o.RHPercent != nil {
		r.givenTwice("climate.rh_percent", "climate.weather_file")
	}
}

// lay lays a file that was read over the case.
func (r *reader) lay(a attachment) {
	name := a.file.Name
	warnings, err := a.use(name, a.file.Data)
	if err != nil {
		r.badFile(a, err)
		return
	}
	a.file.Warnings = nil
	for _, w := range warnings {
		a.file.Warnings = append(a.file.Warnings, visible(strings.TrimPrefix(w, name+": ")))
	}
}

// givenTwice notes a key that is stated beside a file that gives it.
func (r *reader) givenTwice(key, file string) {
	if at, is := r.stands[key]; is && !r.bad[key] {
		r.add(at, key, "is stated, and "+file+" gives it too: leave one of the two out")
	}
}

// unread notes files that a case names and nobody has read.
func (r *reader) unread(c *compare.Case) {
	for _, a := range attachments(c) {
		if !a.file.Read() && !r.bad[a.key] && !r.bad[a.digestKey] {
			r.add(r.where(a.key), a.key, fmt.Sprintf("names %s, which has not been read", shown(a.file.Name)))
		}
	}
}
