package casefile

import (
	"fmt"
	"strconv"
	"strings"
	"time"

	"dhwcompare/compare/calendar"
)

// date is a key that is a day of the year, as the case counts them: 0 is
// 1 January.
func date[T any](path string, at func(*T) *int, help string) field[T] {
	return field[T]{
		Key: Key{Path: path, Form: "a date such as 14 Jul", Unit: "day and month", Help: help,
			Remedy: "give day and month in words, without a year"},
		bind: func(t *T) value { return dateValue{at: at(t)} },
	}
}

type dateValue struct {
	stated
	at *int
}

func (v dateValue) read(r *reader, p place) {
	if !r.scalar(p) {
		return
	}
	day, name, _ := strings.Cut(strings.TrimSpace(p.node.Value), " ")
	month, known := monthNamed(strings.TrimSpace(name))
	n, err := strconv.Atoi(day)
	switch {
	case err != nil || !known:
		r.refuse(p, "")
	case n < 1 || n > calendar.DaysIn(month):
		r.refuse(p, fmt.Sprintf("%s has the days 1 to %d in the simulated year", time.Month(month+1), calendar.DaysIn(month)))
	default:
		*v.at = calendar.MonthStartDay(month) + n - 1
	}
}

func (v dateValue) yaml(string) string {
	month := calendar.MonthOfDay(*v.at)
	return fmt.Sprintf("%d %s", *v.at-calendar.MonthStartDay(month)+1, calendar.ShortMonth(month))
}

// monthNamed finds a month (0 is January) by its English name, in full or its
// first three letters.
func monthNamed(name string) (month int, known bool) {
	for m := range calendar.MonthsInAYear {
		if strings.EqualFold(name, calendar.ShortMonth(m)) || strings.EqualFold(name, time.Month(m+1).String()) {
			return m, true
		}
	}
	return 0, false
}
