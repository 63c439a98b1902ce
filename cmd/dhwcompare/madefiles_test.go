package main

import (
	"fmt"
	"math"
	"os"
	"path/filepath"
	"strings"
	"time"

	"github.com/rogpeppe/go-internal/testscript"

	"dhwcompare/compare/calendar"
)

// scriptMake writes an invented file of a kind that a case may refer to: make
// kind file. The kinds are weather, prices and surplus.
func scriptMake(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 2 {
		ts.Fatalf("usage: make kind file")
	}
	var text string
	switch args[0] {
	case "weather":
		text = madeWeather()
	case "prices":
		text = madeSeries("price", func(hour int) float64 { return 0.2 + float64(hour%24)/100 })
	case "surplus":
		text = madeSeries("surplus_kwh", func(hour int) float64 { return max(0, -math.Cos(2*math.Pi*float64(hour)/24)) })
	default:
		ts.Fatalf("no kind is called %q", args[0])
	}
	path := ts.MkAbs(args[1])
	ts.Check(os.MkdirAll(filepath.Dir(path), 0o777))
	ts.Check(os.WriteFile(path, []byte(text), 0o666))
}

// madeWeather has a wave over the year, one over the day, and blanks where files
// often have them. Its lines end as those of such files usually do.
func madeWeather() string {
	lines := []string{
		"LOCATION,Nowhere,-,Inventia,made up,000000,50.0,0.0,0.0,10.0", "DESIGN CONDITIONS,0", "TYPICAL/EXTREME PERIODS,0",
		"GROUND TEMPERATURES,0", "HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0", "COMMENTS 1,invented for a test", "COMMENTS 2,",
		"DATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31",
	}
	for hour := range calendar.Hours {
		at := yearHour(2001, hour)
		air := 10 - 7*math.Cos(2*math.Pi*float64(hour)/calendar.Hours) - 3*math.Cos(2*math.Pi*float64(at.Hour()-3)/24)
		lines = append(lines, fmt.Sprintf("%d,%d,%d,%d,60,?9,%.1f,%.1f,999,101325%s",
			1990+int(at.Month()), at.Month(), at.Day(), at.Hour()+1, air, air-3, strings.Repeat(",", 25)))
	}
	return strings.Join(lines, "\r\n") + "\r\n"
}

func madeSeries(column string, value func(hour int) float64) string {
	var b strings.Builder
	b.WriteString("start_utc," + column + "\n")
	for hour := range calendar.Hours {
		fmt.Fprintf(&b, "%s,%.3f\n", yearHour(2026, hour).Format("2006-01-02T15:04Z"), value(hour))
	}
	return b.String()
}

func yearHour(year, hour int) time.Time {
	return time.Date(year, time.January, 1, hour, 0, 0, 0, time.UTC)
}
