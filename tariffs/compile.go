package tariffs

import (
	"fmt"
	"slices"
	"time"

	"dhwcompare/compare/calendar"
)

// Compile lays the tariff over a year. Each half hour gets the bands that hold in
// it, weighted by their minutes: a band edge at ten past splits the half hour
// one to two, as if the electricity were spread evenly over it. Overlapping bands
// and minutes without a rate are errors, an *InvalidError that lists all of them.
func (t *Tariff) Compile(y calendar.Year) (*Rates, error) {
	if err := t.check(y); err != nil {
		return nil, err
	}
	if t.SeriesPerKWh != nil {
		return t.compileSeries(), nil
	}
	l := newLayer(t, y)
	for i := range calendar.HalfHours {
		l.halfHour(i)
	}
	if err := l.problems(); err != nil {
		return nil, err
	}
	return l.rates, nil
}

func (t *Tariff) compileSeries() *Rates {
	r := newRates(t, []string{seriesLabel})
	tax := t.taxFactor()
	for _, v := range t.SeriesPerKWh {
		r.addHalfHour(part{share: 1, perKWh: v * tax})
	}
	return r
}

// noWindow marks a minute that only the remaining rate covers.
const noWindow = -1

// layer lays windows over a year, half hour by half hour.
type layer struct {
	tariff    *Tariff
	year      calendar.Year
	windows   []window
	remaining part
	cuts      []int // minutes within a half hour at which a band may begin or end
	rates     *Rates
	scratch   []part

	overlaps  []overlap
	uncovered int // minutes
	firstBare int // minute of the year
}

type overlap struct{ first, second, minute int }

func newLayer(t *Tariff, y calendar.Year) *layer {
	l := &layer{tariff: t, year: y, cuts: []int{0, minutesAHalfHour}}
	var labels []string
	tax := t.taxFactor()
	partOf := func(label string, perKWh float64) part {
		i := slices.Index(labels, label)
		if i < 0 {
			i, labels = len(labels), append(labels, label)
		}
		return part{band: int32(i), perKWh: perKWh * tax}
	}
	for _, b := range t.Bands {
		l.windows = append(l.windows, newWindow(b, partOf(b.Label, b.PerKWh)))
		l.cuts = append(l.cuts, b.StartMin%minutesAHalfHour, b.EndMin%minutesAHalfHour)
	}
	if t.Remaining != nil {
		l.remaining = partOf(t.Remaining.Label, t.Remaining.PerKWh)
	}
	slices.Sort(l.cuts)
	l.cuts = slices.Compact(l.cuts)
	l.rates = newRates(t, labels)
	return l
}

// halfHour adds half hour i. Between two cuts no clock passes a band edge, so the
// first minute stands for all.
func (l *layer) halfHour(i int) {
	parts := l.scratch[:0]
	last := noWindow - 1
	for k, cut := range l.cuts[:len(l.cuts)-1] {
		minute, length := i*minutesAHalfHour+cut, l.cuts[k+1]-cut
		w := l.windowAt(minute, length)
		share := float64(length) / minutesAHalfHour
		if w == last {
			parts[len(parts)-1].share += share
			continue
		}
		last = w
		p := l.remaining
		if w != noWindow {
			p = l.windows[w].part
		}
		p.share = share
		parts = append(parts, p)
	}
	l.rates.addHalfHour(parts...)
	l.scratch = parts
}

// windowAt finds the window that covers a minute, and notes overlaps and minutes
// without a rate.
func (l *layer) windowAt(minute, length int) int {
	c := readClocks(l.year, minute)
	found := noWindow
	for w := range l.windows {
		if !l.windows[w].covers(&c) {
			continue
		}
		if found != noWindow {
			l.noteOverlap(found, w, minute)
			continue
		}
		found = w
	}
	if found == noWindow && l.tariff.Remaining == nil {
		l.noteBare(minute, length)
	}
	return found
}

func (l *layer) noteOverlap(first, second, minute int) {
	for _, o := range l.overlaps {
		if o.first == first && o.second == second {
			return
		}
	}
	l.overlaps = append(l.overlaps, overlap{first, second, minute})
}

func (l *layer) noteBare(minute, length int) {
	if l.uncovered == 0 {
		l.firstBare = minute
	}
	l.uncovered += length
}

func (l *layer) problems() error {
	var c checker
	for _, o := range l.overlaps {
		a, b := l.tariff.Bands[o.first], l.tariff.Bands[o.second]
		c.add(o.second, "%s overlaps %s, first on %s: move an edge, or give both the same clock",
			bandName(o.second, b.Label), bandName(o.first, a.Label), standardTime(o.minute))
	}
	if l.uncovered > 0 {
		c.add(WholeTariff, "%d of %d minutes of the year have no rate, first on %s: add a band or a remaining rate",
			l.uncovered, minutesInTheYear, standardTime(l.firstBare))
	}
	return c.err(l.tariff)
}

// standardTime writes a minute of the year for people.
func standardTime(minute int) string {
	day := minute / minutesADay
	month := calendar.MonthOfDay(day)
	return fmt.Sprintf("%d %s %s standard time",
		day-calendar.MonthStartDay(month)+1, time.Month(month+1), hhmm(minute%minutesADay))
}
