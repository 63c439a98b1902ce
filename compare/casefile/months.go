package casefile

import (
	"fmt"
	"strings"

	"dhwcompare/compare/calendar"
)

// monthly holds one number for each month.
type monthly = [calendar.MonthsInAYear]float64

// months is a key with a number for each month.
func months[T any](path, unit string, low, high float64, at func(*T) *monthly, source, help string) field[T] {
	f := number[T](path, unit, low, high, nil, source, help)
	f.Form = "twelve numbers, January first, each"
	f.bind = func(t *T) value { return monthsValue{at: at(t)} }
	return f
}

type monthsValue struct {
	stated
	at *monthly
}

func (v monthsValue) read(r *reader, p place) { r.months(p, v.at) }

func (v monthsValue) yaml(string) string { return flowMonths(*v.at, plain) }

// autoMonths is a key with a number for each month that follows from others
// unless it is stated.
func autoMonths[T any](path, unit string, low, high float64, at func(*T) **monthly, follow func(*T) monthly, from []string, source, help string) field[T] {
	f := months[T](path, unit, low, high, nil, source, help)
	f.From = from
	f.bind = func(t *T) value { return autoMonthsValue{at: at(t), follow: func() monthly { return follow(t) }} }
	return f
}

type autoMonthsValue struct {
	at     **monthly
	follow func() monthly
}

func (v autoMonthsValue) read(r *reader, p place) {
	var m monthly
	if r.months(p, &m) {
		*v.at = &m
	}
}

func (v autoMonthsValue) yaml(string) string {
	if *v.at != nil {
		return flowMonths(**v.at, plain)
	}
	return flowMonths(v.follow(), rounded)
}

func (v autoMonthsValue) derived() bool { return *v.at == nil }

// months reads twelve numbers, or none of them.
func (r *reader) months(p place, to *monthly) bool {
	items, ok := r.list(p)
	if !ok {
		return false
	}
	if len(items) != len(to) {
		r.say(p, fmt.Sprintf("has %d numbers, allowed are %d: give one for each month, January first", len(items), len(to)))
		return false
	}
	read := *to
	for m, item := range items {
		x, good := r.number(place{p.key, fmt.Sprintf("%s[%d]", p.path, m+1), item})
		read[m], ok = x, ok && good
	}
	if !ok {
		r.bad[p.path] = true
		return false
	}
	*to = read
	return true
}

func flowMonths(m monthly, write func(float64) string) string {
	texts := make([]string, len(m))
	for i, x := range m {
		texts[i] = write(x)
	}
	return "[" + strings.Join(texts, ", ") + "]"
}
