package casefile

import (
	"fmt"
	"strings"
	"time"

	"dhwcompare/compare/calendar"
	"dhwcompare/tariffs"
)

// bandMonths is the key of the months in which a band holds.
func bandMonths() field[tariffs.Band] {
	return field[tariffs.Band]{
		Key: Key{Path: "months", Form: "a list of months, such as [Nov, Dec, Jan]", Help: "months of the year; an empty list means all",
			Remedy: "give each month once, by its name", Most: calendar.MonthsInAYear},
		bind: func(b *tariffs.Band) value { return bandMonthsValue{at: &b.Months} },
	}
}

type bandMonthsValue struct {
	stated
	at *[]time.Month
}

func (v bandMonthsValue) read(r *reader, p place) {
	items, ok := r.list(p)
	if !ok {
		return
	}
	var read []time.Month
	seenMonth := map[int]bool{}
	for i, item := range items {
		at := place{p.key, fmt.Sprintf("%s[%d]", p.path, i+1), item}
		month, known := 0, r.scalar(at)
		if known {
			if month, known = monthNamed(item.Value); !known || seenMonth[month] {
				known = r.refuse(at, "")
			}
		}
		seenMonth[month] = true
		read, ok = append(read, time.Month(month+1)), ok && known
	}
	if ok {
		*v.at = read
	}
}

func (v bandMonthsValue) yaml(string) string {
	texts := make([]string, len(*v.at))
	for i, m := range *v.at {
		texts[i] = calendar.ShortMonth(int(m - 1))
	}
	return "[" + strings.Join(texts, ", ") + "]"
}
