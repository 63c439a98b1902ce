package calendar

import "time"

// MonthNames gives the months by their English names, January first.
func MonthNames() [MonthsInAYear]string {
	var names [MonthsInAYear]string
	for m := range names {
		names[m] = time.Month(m + 1).String()
	}
	return names
}

// ShortMonth gives the first three letters of a month (0 is January).
func ShortMonth(month int) string {
	const letters = 3
	return time.Month(month + 1).String()[:letters]
}
