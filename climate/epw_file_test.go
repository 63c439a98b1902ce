package climate

import (
	"fmt"
	"math"
	"strings"
	"time"

	"dhwcompare/compare/calendar"
)

// invented is a weather file of no place, made here: a yearly and a daily wave of
// temperature with a dew point and humidity to match. Rows can be changed by line.
type invented struct {
	header [8]string
	rows   []string // of the year, hour 1 of 1 January first
}

func newInvented() *invented {
	f := &invented{header: [8]string{
		"LOCATION,Nowhere,-,Inventia,made up,000000,50.0,0.0,1.0,10.0",
		"DESIGN CONDITIONS,0",
		"TYPICAL/EXTREME PERIODS,0",
		"GROUND TEMPERATURES,0",
		"HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0",
		"COMMENTS 1,invented for a test",
		"COMMENTS 2,",
		"DATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31",
	}}
	for hour := range calendar.Hours {
		air := inventedC(hour)
		f.rows = append(f.rows, rowOf(hour, fmt.Sprintf("%.1f", air), fmt.Sprintf("%.1f", air-2), fmt.Sprintf("%d", inventedRH(hour))))
	}
	return f
}

// inventedC is coldest in January and at night; one decimal, as in files.
func inventedC(hour int) float64 {
	day, h := float64(hour/hoursADay), float64(hour%hoursADay)
	t := 10 - 7*math.Cos(2*math.Pi*day/calendar.Days) - 3*math.Cos(2*math.Pi*(h-3)/hoursADay)
	return math.Round(t*10) / 10
}

func inventedRH(hour int) int { return 70 + hour%25 }

// rowOf writes a row of 35 fields for an hour of the year. Months come from
// different years, as in typical years.
func rowOf(hour int, dryBulb, dewPoint, rh string) string {
	at := time.Date(2001, time.January, 1, hour, 0, 0, 0, time.UTC)
	return row(1990+int(at.Month()), int(at.Month()), at.Day(), at.Hour()+1, dryBulb, dewPoint, rh)
}

func row(year, month, day, hour int, dryBulb, dewPoint, rh string) string {
	return fmt.Sprintf("%d,%d,%d,%d,60,?9?9,%s,%s,%s,101325%s", year, month, day, hour, dryBulb, dewPoint, rh, strings.Repeat(",0", 25))
}

// text gives the file with some lines replaced, or dropped where the text is "-".
func (f *invented) text(changes map[int]string) string {
	var b strings.Builder
	for i, line := range append(f.header[:], f.rows...) {
		if other, is := changes[i+1]; is {
			line = other
		}
		if line != "-" {
			b.WriteString(line + "\n")
		}
	}
	return b.String()
}

// lineAt is the line of an hour of the year.
func lineAt(hour int) int { return hour + 9 }

// everyRow changes all rows of a file.
func (f *invented) everyRow(change func(hour int) string) *invented {
	for hour := range f.rows {
		f.rows[hour] = change(hour)
	}
	return f
}
