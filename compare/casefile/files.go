package casefile

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"slices"
	"strings"

	"dhwcompare/climate"
	"dhwcompare/compare"
	"dhwcompare/compare/datafile"
	"dhwcompare/tariffs"
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

// open brings the bytes of a file and checks their digest.
func (r *reader) open(a attachment, open Opener) bool {
	if a.file.Read() {
		return true
	}
	data, fault := bytesOf(a.file.Name, open)
	if fault != "" {
		r.add(r.where(a.key), a.key, fmt.Sprintf("names %s, %s", shown(a.file.Name), fault))
		return false
	}
	digest := datafile.Digest(data)
	if stated := a.file.SHA256; stated != "" && stated != digest {
		r.add(r.where(a.digestKey, a.key), a.digestKey, fmt.Sprintf(
			"is %s..., but %s has %s...: it is not the file that the case was made with; restore it, or leave %s out to take it as it is",
			stated[:shownDigits], shown(a.file.Name), digest[:shownDigits], a.digestKey))
		return false
	}
	a.file.Data, a.file.SHA256 = data, digest
	return true
}

// shownDigits of a digest are enough to tell two apart.
const shownDigits = 12

// bytesOf opens a file, or says why it cannot.
func bytesOf(name string, open Opener) (data []byte, fault string) {
	if open == nil {
		return nil, "which has not been read: a case from here cannot refer to files"
	}
	data, err := open(name)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return nil, "and there is no such file: names count from the folder of the case"
	case err != nil:
		return nil, fmt.Sprintf("which cannot be read (%v): check the file and its permissions", cause(err))
	case len(data) > LargestFile:
		return nil, fmt.Sprintf("which has more than %d bytes: check that this is the right file", LargestFile)
	case data == nil:
		data = []byte{}
	}
	return data, ""
}

// cause strips what the system adds to an error: the operation and the path.
func cause(err error) error {
	var path *fs.PathError
	if errors.As(err, &path) {
		return path.Err
	}
	return err
}

// badFile notes what is wrong with a file: a line of the error for each problem,
// which begins with the file and, as a rule, the line in it.
func (r *reader) badFile(a attachment, err error) {
	at := r.where(a.key)
	for line := range strings.SplitSeq(err.Error(), "\n") {
		where, text := a.file.Name, strings.TrimPrefix(line, a.file.Name+":")
		if number, rest, ok := strings.Cut(text, ":"); ok && isDigits(number) {
			where, text = where+":"+number, rest
		}
		r.add(at, a.key, fmt.Sprintf("(%s): %s", where, visible(strings.TrimSpace(text))))
	}
	r.bad[a.gives] = true
}

// visible replaces what must not reach a terminal.
func visible(text string) string {
	return strings.Map(func(c rune) rune {
		if isHidden(c) {
			return '?'
		}
		return c
	}, strings.ToValidUTF8(text, "?"))
}

// unread notes files that a case names and nobody has read.
func (r *reader) unread(c *compare.Case) {
	for _, a := range attachments(c) {
		if !a.file.Read() && !r.bad[a.key] && !r.bad[a.digestKey] {
			r.add(r.where(a.key), a.key, fmt.Sprintf("names %s, which has not been read", shown(a.file.Name)))
		}
	}
}

func useWeather(p *compare.Climate, name string, data []byte) ([]string, error) {
	o, err := climate.ReadEPW(bytes.NewReader(data), name)
	if err != nil {
		return nil, err
	}
	p.Outdoor, p.OutdoorC = o, o.MeansC()
	if rh, has := o.MeanRHPercent(); has {
		p.RHPercent = rh
	}
	return o.Warnings, nil
}

func seriesOptions(c *compare.Case, name string) tariffs.SeriesOptions {
	return tariffs.SeriesOptions{File: name, Year: c.Climate.Year(), UTCOffsetMinutes: c.Climate.UTCOffsetMin}
}

func usePrices(c *compare.Case, t *tariffs.Tariff, name string, data []byte) ([]string, error) {
	s, err := tariffs.ReadPrices(bytes.NewReader(data), seriesOptions(c, name))
	if err != nil {
		return nil, err
	}
	t.SeriesPerKWh = s.HalfHours
	return s.Warnings, nil
}

// useSchedule takes the rates of a schedule. Everything else about the tariff is
// stated in the case.
func useSchedule(t *tariffs.Tariff, name string, data []byte) ([]string, error) {
	read, warnings, err := tariffs.ReadMatrix(bytes.NewReader(data), name)
	if err != nil {
		return nil, err
	}
	t.Bands, t.Remaining = read.Bands, nil
	if fixed := read.StandingPerDay; fixed != 0 && rounded(fixed) != rounded(t.StandingPerDay) {
		warnings = append(warnings, fmt.Sprintf("its fixed charge of %s a day is left out: standing_per_day of the case counts, %s a day", rounded(fixed), plain(t.StandingPerDay)))
	}
	return warnings, nil
}

func useSurplus(c *compare.Case, name string, data []byte) ([]string, error) {
	s, err := tariffs.ReadSurplus(bytes.NewReader(data), seriesOptions(c, name))
	if err != nil {
		return nil, err
	}
	c.Surplus.HalfHourKWh = s.HalfHours
	return s.Warnings, nil
}
