package casefile

import (
	"fmt"
	"io/fs"
	"maps"
	"math"
	"strings"
	"sync"
	"time"

	"dhwcompare/compare/calendar"
)

// opener gives files from memory.
func opener(files map[string]string) Opener {
	return func(name string) ([]byte, error) {
		data, is := files[name]
		if !is {
			return nil, &fs.PathError{Op: "open", Path: name, Err: fs.ErrNotExist}
		}
		return []byte(data), nil
	}
}

// madeWeather is a weather file of no place, made here; the humidity of every
// hour is as given.
func madeWeather(rh string) string {
	var b strings.Builder
	b.WriteString("LOCATION,Nowhere,-,Inventia,made up,000000,50.0,0.0,1.0,10.0\nDESIGN CONDITIONS,0\nTYPICAL/EXTREME PERIODS,0\n" +
		"GROUND TEMPERATURES,0\nHOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0\nCOMMENTS 1,invented for a test\nCOMMENTS 2,\nDATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31\n")
	for hour := range calendar.Hours {
		at := time.Date(2001, time.January, 1, hour, 0, 0, 0, time.UTC)
		air := 10 - 7*math.Cos(2*math.Pi*float64(hour)/calendar.Hours) - 3*math.Cos(2*math.Pi*float64(at.Hour()-3)/24)
		fmt.Fprintf(&b, "2001,%d,%d,%d,60,?,%.1f,,%s,101325\n", at.Month(), at.Day(), at.Hour()+1, air, rh)
	}
	return b.String()
}

// madeSeries is a series by the hour of a year; it begins minutes before midnight
// UTC, as a year of standard time does east of Greenwich.
func madeSeries(column string, year int, aheadMin int, value func(hour int) float64) string {
	var b strings.Builder
	b.WriteString("start_utc," + column + "\n")
	start := time.Date(year, time.January, 1, 0, -aheadMin, 0, 0, time.UTC)
	for hour := range calendar.Hours {
		fmt.Fprintf(&b, "%s,%g\n", start.Add(time.Duration(hour)*time.Hour).Format("2006-01-02T15:04Z"), value(hour))
	}
	return b.String()
}

func pricePerKWh(hour int) float64 { return 0.2 + float64(hour%24)/100 }

// madeSchedule has period 1 from 07:00 to 23:00.
func madeSchedule(rate string, more string) string {
	day := "[0,0,0,0,0,0,0,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1,0]"
	year := "[" + strings.TrimSuffix(strings.Repeat(day+",", 12), ",") + "]"
	return fmt.Sprintf(`{"name": "made up", "energyratestructure": [[{"rate": 0.1}], [{"rate": %s}]],
 "energyweekdayschedule": %s,
 "energyweekendschedule": %s%s}`, rate, year, year, more)
}

// madeFiles are sound files of each kind, free to be changed.
func madeFiles() map[string]string { return maps.Clone(soundFiles()) }

var soundFiles = sync.OnceValue(func() map[string]string {
	return map[string]string{
		"data/place.epw": madeWeather("80"),
		"dry.epw":        madeWeather(""),
		"prices.csv":     madeSeries("price", 2026, 0, pricePerKWh),
		"rates.json":     madeSchedule("0.3", ""),
		"sun.csv":        madeSeries("surplus_kwh", 2026, 0, func(hour int) float64 { return float64(hour % 2) }),
	}
})

// windy is a case that takes its weather from a file; its last line is line 4.
const windy = `household:
  people: 3
climate:
  weather_file: data/place.epw
`

// furnished refers to a file of each kind.
const furnished = windy + `tariffs:
  - {name: dynamic, price_file: ./prices.csv}
  - {name: seasonal, schedule_file: rates.json}
  - {name: flat, rate_per_kwh: 0.25}
surplus: {file: sun.csv, export_per_kwh: 0.1}
`
