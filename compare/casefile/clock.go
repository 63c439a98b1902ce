package casefile

import (
	"fmt"
	"strings"

	"dhwcompare/compare"
)

const (
	minutesAnHour = 60
	minutesADay   = 24 * minutesAnHour
	hoursForm     = `a stretch of the day, such as "13:00-16:30"`
)

// hours is a key that is a stretch of the day.
func hours[T any](path string, from, to func(*T) *int, source, help string) field[T] {
	return field[T]{
		Key:  Key{Path: path, Form: hoursForm, Unit: "HH:MM-HH:MM", Source: source, Help: help},
		bind: func(t *T) value { return hoursValue{from: from(t), to: to(t)} },
	}
}

type hoursValue struct {
	stated
	from, to *int
}

func (v hoursValue) read(r *reader, p place) {
	if w, ok := r.hours(p); ok {
		*v.from, *v.to = w.FromMin, w.ToMin
	}
}

func (v hoursValue) yaml(string) string { return quote(clockSpan(*v.from, *v.to)) }

// windows is a key with any number of stretches of the day.
func windows[T any](path string, at func(*T) *[]compare.Window, source, help string) field[T] {
	return field[T]{
		Key: Key{Path: path, Form: `a list of stretches of the day, such as ["13:00-16:30", "22:00-06:00"]`, Unit: "HH:MM-HH:MM",
			Source: source, Help: help, Remedy: "give each as HH:MM-HH:MM"},
		bind: func(t *T) value { return windowsValue{at: at(t)} },
	}
}

type windowsValue struct {
	stated
	at *[]compare.Window
}

func (v windowsValue) read(r *reader, p place) {
	items, ok := r.list(p)
	if !ok {
		return
	}
	var read []compare.Window
	for i, item := range items {
		w, good := r.hours(place{&Key{Form: hoursForm, Remedy: p.key.Remedy}, fmt.Sprintf("%s[%d]", p.path, i+1), item})
		r.stands[fmt.Sprintf("%s[%d]", p.path, i+1)] = positionOf(item)
		read, ok = append(read, w), ok && good
	}
	if !ok {
		r.bad[p.path] = true
		return
	}
	*v.at = read
}

func (v windowsValue) yaml(string) string {
	texts := make([]string, len(*v.at))
	for i, w := range *v.at {
		texts[i] = quote(clockSpan(w.FromMin, w.ToMin))
	}
	return "[" + strings.Join(texts, ", ") + "]"
}

// hours reads a stretch of the day; it may run over midnight.
func (r *reader) hours(p place) (compare.Window, bool) {
	if !r.scalar(p) {
		return compare.Window{}, false
	}
	first, last, _ := strings.Cut(p.node.Value, "-")
	from, fromOK := clockTime(strings.TrimSpace(first))
	to, toOK := clockTime(strings.TrimSpace(last))
	switch {
	case !fromOK || !toOK:
		return compare.Window{}, r.refuse(p, "give two times of the day from 00:00 to 24:00, as HH:MM-HH:MM")
	case from == minutesADay || to == 0:
		return compare.Window{}, r.refuse(p, "write midnight as 00:00 at the start and as 24:00 at the end")
	case from == to:
		return compare.Window{}, r.refuse(p, "it begins and ends at the same time: write 00:00-24:00 for the whole day")
	}
	return compare.Window{FromMin: from, ToMin: to}, true
}

// clockTime reads HH:MM in minutes.
func clockTime(text string) (int, bool) {
	hour, minute, _ := strings.Cut(text, ":")
	if len(hour) != 2 || len(minute) != 2 || !isDigits(hour) || !isDigits(minute) {
		return 0, false
	}
	h, m := twoDigits(hour), twoDigits(minute)
	total := h*minutesAnHour + m
	return total, m < minutesAnHour && total <= minutesADay
}

// clock is a key that is a time of the day.
func clock[T any](path string, at func(*T) *int, source, help string) field[T] {
	return field[T]{
		Key:  Key{Path: path, Form: "a time of the day, such as 13:00", Unit: "HH:MM", Source: source, Help: help, Remedy: "give it as HH:MM"},
		bind: func(t *T) value { return clockValue{at: at(t)} },
	}
}

type clockValue struct {
	stated
	at *int
}

func (v clockValue) read(r *reader, p place) {
	if !r.scalar(p) {
		return
	}
	minute, ok := clockTime(p.node.Value)
	if !ok || minute == minutesADay {
		r.refuse(p, "")
		return
	}
	*v.at = minute
}

func (v clockValue) yaml(string) string { return quote(clockText(*v.at)) }

func twoDigits(text string) int { return int(text[0]-'0')*10 + int(text[1]-'0') }

func clockSpan(from, to int) string { return clockText(from) + "-" + clockText(to) }

func clockText(minute int) string {
	return fmt.Sprintf("%02d:%02d", minute/minutesAnHour, minute%minutesAnHour)
}
