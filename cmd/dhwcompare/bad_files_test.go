package main

import (
	"fmt"
	"strings"
)

// lineOf puts another text in place of a line of a file, from 1.
func lineOf(file string, n int, text string) string {
	lines := strings.Split(file, "\n")
	lines[n-1] = text
	return strings.Join(lines, "\n")
}

// weatherKey is a case that takes its weather from a file, which is sound unless a test
// changes it.
const weatherKey = "household: {people: 3}\nclimate:\n  weather_file: place.epw\n"

func goodWeather() string { return strings.ReplaceAll(madeWeather(), "\r\n", "\n") }

// Columns of a weather file, from 0.
const (
	monthColumn    = 1
	hourColumn     = 3
	airColumn      = 6
	humidityColumn = 8
)

func weather(name, file, want string) badInput {
	in := badCase(name, weatherKey, want)
	in.files["place.epw"] = file
	return in
}

// badWeatherNames lists names of weather files that are refused.
func badWeatherNames() []badInput {
	beside := func(name, text, want string) badInput {
		in := badCase(name, text, want)
		in.files["place.epw"] = goodWeather()
		return in
	}
	named := func(name, file, want string) badInput {
		return badCase(name, strings.Replace(weatherKey, "place.epw", file, 1), want)
	}
	return []badInput{
		named("no weather file", "none.epw",
			`case.yaml:3: climate.weather_file names "none.epw", and there is no such file: names count from the folder of the case`),
		named("weather file by a path", "/etc/hostname",
			"case.yaml:3: climate.weather_file is /etc/hostname, allowed the name of a file in or below the folder of the case: copy the file into the folder of the case and give its name from there"),
		named("weather file above", "../place.epw",
			"case.yaml:3: climate.weather_file is ../place.epw, allowed the name of a file in or below the folder of the case: copy the file into the folder of the case and give its name from there"),
		named("weather file of a network", "https://example.org/x.epw",
			"case.yaml:3: climate.weather_file is https://example.org/x.epw, allowed the name of a file in or below the folder of the case: nothing is fetched from a network: save the file beside the case and give its name"),
		named("weather file with backslashes", `data\place.epw`,
			`case.yaml:3: climate.weather_file is data\place.epw, allowed the name of a file in or below the folder of the case: write / between folders`),
		named("weather file without a name", `""`,
			`case.yaml:3: climate.weather_file is the text "", allowed the name of a file in or below the folder of the case: give its name, or leave the key out`),
		named("the case as weather", "case.yaml",
			`case.yaml:3: climate.weather_file (case.yaml:1): begins with "household: {people: 3}", an EPW file begins with LOCATION: give an hourly weather file in the EPW format`),
		beside("weather beside months", soundCase+"  weather_file: place.epw\n",
			"case.yaml:4: climate.outdoor_c is stated, and climate.weather_file gives it too: leave one of the two out"),
		beside("digest of other weather", weatherKey+"  weather_sha256: '"+strings.Repeat("0", 64)+"'\n",
			`case.yaml:4: climate.weather_sha256 is 000000000000..., but "place.epw" has 60220fb0c43a...: it is not the file that the case was made with; restore it, or leave climate.weather_sha256 out to take it as it is`),
	}
}

// badWeather lists weather files that are refused as a whole.
func badWeather() []badInput {
	good := goodWeather()
	return []badInput{
		weather("empty weather", "",
			"case.yaml:3: climate.weather_file (place.epw:1): the file is empty: give an hourly weather file in the EPW format"),
		weather("packed weather", "PK\x03\x04\x14\x00",
			"case.yaml:3: climate.weather_file (place.epw:1): the file holds a zero byte, so it is no text: unpack it, if it is packed"),
		weather("weather in UTF-16", "\xff\xfeL\x00O\x00",
			"case.yaml:3: climate.weather_file (place.epw:1): the file is UTF-16: save it as plain text"),
		weather("too much weather", strings.Repeat("x", 17<<20),
			`case.yaml:3: climate.weather_file names "place.epw", which has more than 16777216 bytes: check that this is the right file`),
		weather("weather without rows", good[:strings.Index(good, "1991,")],
			"case.yaml:3: climate.weather_file (place.epw:9): there are no rows after the header, a year has 8760: give a complete file"),
		weather("weather without header", good[strings.Index(good, "1991,"):],
			`case.yaml:3: climate.weather_file (place.epw:1): begins with "1991,1,1,1,60,?9,0.9,-2.1,999,101325,,,,...", an EPW file begins with LOCATION: give an hourly weather file in the EPW format`),
		weather("header out of order", strings.Replace(good, "GROUND TEMPERATURES", "GROUND", 1),
			`case.yaml:3: climate.weather_file (place.epw:4): begins with "GROUND,0", line 4 of the header begins with GROUND TEMPERATURES: restore the file`),
		weather("half a year", good[:strings.Index(good, "1997,7,1,")],
			"case.yaml:3: climate.weather_file (place.epw:4353): 4416 of 8760 hours have no row near here, from 1 Jul 00:00: add the rows"),
		weather("weather by the half hour", strings.Replace(good, "DATA PERIODS,1,1", "DATA PERIODS,1,2", 1),
			`case.yaml:3: climate.weather_file (place.epw:8): the number of records an hour is "2", allowed is 1: export the file by the hour`),
		weather("two periods", strings.Replace(good, "DATA PERIODS,1,1", "DATA PERIODS,2,1", 1),
			`case.yaml:3: climate.weather_file (place.epw:8): the number of data periods is "2", allowed is 1: give a file of one whole year`),
		weather("time zone of no place", strings.Replace(good, ",50.0,0.0,0.0,10.0", ",50.0,0.0,33.0,10.0", 1),
			`case.yaml:3: climate.weather_file (place.epw:1): time zone is "33.0", allowed -12 to 14 h ahead of UTC, in column 9: put it right, or leave it blank`),
	}
}

// badWeatherRows lists rows of a weather file that are refused. Row n of the weather
// stands in line n+8, and hour 1 of 5 January in line 105.
func badWeatherRows() []badInput {
	good := goodWeather()
	row := func(name string, field int, text, want string) badInput {
		fields := strings.Split(strings.Split(good, "\n")[104], ",")
		fields[field] = text
		return weather(name, lineOf(good, 105, strings.Join(fields, ",")), want)
	}
	column := func(name string, of func(fields []string), want string) badInput {
		const heading = 8
		lines := strings.Split(strings.TrimSuffix(good, "\n"), "\n")
		for i := heading; i < len(lines); i++ {
			fields := strings.Split(lines[i], ",")
			of(fields)
			lines[i] = strings.Join(fields, ",")
		}
		return weather(name, strings.Join(lines, "\n"), want)
	}
	missing := func(hours int) string {
		lines := strings.Split(good, "\n")
		for i := range hours {
			fields := strings.Split(lines[104+i], ",")
			fields[airColumn] = "99.9"
			lines[104+i] = strings.Join(fields, ",")
		}
		return strings.Join(lines, "\n")
	}
	return []badInput{
		weather("hour twice", lineOf(good, 106, strings.Split(good, "\n")[104]),
			"case.yaml:3: climate.weather_file (place.epw:106): 5 Jan 00:00 was given on line 105 already: keep one"+
				"\ncase.yaml:3: climate.weather_file (place.epw:107): 1 of 8760 hours have no row near here, from 5 Jan 01:00: add the rows"),
		weather("seven hours without air", missing(7),
			"case.yaml:3: climate.weather_file (place.epw:105): dry bulb is missing for 7 hours from 5 Jan 00:00, allowed are 6 on end: fill the gap, or take another file"),
		row("air in words", airColumn, "cold",
			`case.yaml:3: climate.weather_file (place.epw:105): dry bulb is "cold", which is no number: give a number, or leave it blank`),
		row("air in kelvin", airColumn, "277.8",
			"case.yaml:3: climate.weather_file (place.epw:105): dry bulb is 277.8, allowed above -70 and below 70 °C: it looks like kelvin, give °C"),
		row("thirteenth month", monthColumn, "13",
			`case.yaml:3: climate.weather_file (place.epw:105): month is "13", allowed 1 to 12: put it right`),
		row("hour 25", hourColumn, "25",
			`case.yaml:3: climate.weather_file (place.epw:105): hour is "25", allowed 1 to 24: hour 1 ends at 01:00`),
		row("half past four", hourColumn, "4:30",
			`case.yaml:3: climate.weather_file (place.epw:105): hour is "4:30", allowed 1 to 24: hour 1 ends at 01:00`),
		row("decimal comma in weather", airColumn, "4,6,1",
			"case.yaml:3: climate.weather_file (place.epw:105): 37 fields, the first row has 35: write decimals with a point, and give each row as many fields"),
		weather("semicolons in weather", lineOf(good, 105, "1991;1;5;1;60;?9;4.6;1.6;999;101325"),
			"case.yaml:3: climate.weather_file (place.epw:105): 1 fields, a row has 35: separate them by commas"),
		weather("row cut short", lineOf(good, 105, "1991,1,5,1,60,?9"),
			"case.yaml:3: climate.weather_file (place.epw:105): 6 fields, a row has 35, of which the first 9 are needed: complete the row"),
		column("air that never changes", func(f []string) { f[airColumn] = "10.0" },
			"case.yaml:3: climate.weather_file (place.epw:9): dry bulb varies by 0 K over the year: column 7 must hold the air temperature"),
		column("air in Fahrenheit", func(f []string) { f[airColumn] = fahrenheit(f[airColumn]) },
			"case.yaml:3: climate.weather_file (place.epw:9): the mean dry bulb of month 3 is 46.5 °C, allowed -50 to 45: it looks like degrees Fahrenheit, give °C"+
				"\n..."),
		column("humidity as a share", func(f []string) { f[humidityColumn] = "0.8" },
			"case.yaml:3: climate.weather_file (place.epw:9): relative humidity is never above 0.8 %: it looks like a share of 1, give percent"),
		column("no humidity at all", func(f []string) { f[humidityColumn] = "1" },
			"case.yaml:3: climate.weather_file (place.epw:9): relative humidity is never above 1 %: it looks like a share of 1, give percent"),
	}
}

// fahrenheit converts a temperature in deg C.
func fahrenheit(text string) string {
	var celsius float64
	if _, err := fmt.Sscan(text, &celsius); err != nil {
		return text
	}
	return fmt.Sprintf("%.1f", celsius*1.8+32)
}

// badSeries lists series of prices and of surplus that are refused.
func badSeries() []badInput {
	good := madeSeries("price", func(int) float64 { return 0.2 })
	prices := func(name, file, want string) badInput {
		in := also(name, "tariffs:\n  - {name: dynamic, price_file: prices.csv}\n", want)
		in.files["prices.csv"] = file
		return in
	}
	surplus := func(name, file, want string) badInput {
		in := also(name, "surplus: {file: sun.csv}\n", want)
		in.files["sun.csv"] = file
		return in
	}
	first := func(text string) string { return strings.Replace(good, "2026-01-01T00:00Z,0.200", text, 1) }
	return []badInput{
		also("no price file", "tariffs:\n  - {name: dynamic, price_file: none.csv}\n",
			`case.yaml:6: tariffs[1].price_file names "none.csv", and there is no such file: names count from the folder of the case`),
		also("prices and a rate", "tariffs:\n  - {name: dynamic, price_file: prices.csv, rate_per_kwh: 0.2}\n",
			"case.yaml:6: tariffs[1].rate_per_kwh is stated but plays no part, as price_file gives the rates: leave one of the two out"),
		also("prices and bands", "tariffs:\n  - {name: dynamic, price_file: prices.csv, bands: [{label: a, rate_per_kwh: 1, hours: \"00:00-24:00\"}]}\n",
			"case.yaml:6: tariffs[1].bands is stated but plays no part, as price_file gives the rates: leave one of the two out"),
		prices("empty prices", "",
			"case.yaml:6: tariffs[1].price_file (prices.csv:1): the file has no header that can be read (it is empty): the first line must be start_utc,price"),
		prices("prices without a heading", strings.TrimPrefix(good, "start_utc,price\n"),
			`case.yaml:6: tariffs[1].price_file (prices.csv:1): header "2026-01-01T00:00Z,0.200" lacks start_utc or price: name both columns, separated by commas`),
		prices("heading alone", "start_utc,price\n",
			"case.yaml:6: tariffs[1].price_file (prices.csv:1): 0 rows: the file must hold a year of quarter hours, half hours or hours"),
		prices("prices under another name", strings.Replace(good, "price", "cost", 1),
			`case.yaml:6: tariffs[1].price_file (prices.csv:1): header "start_utc,cost" lacks start_utc or price: name both columns, separated by commas`),
		prices("prices with semicolons", strings.ReplaceAll(good, ",", ";"),
			`case.yaml:6: tariffs[1].price_file (prices.csv:1): header "start_utc;price" lacks start_utc or price: separate columns by commas, and write decimals with a point`),
		prices("price in words", first("2026-01-01T00:00Z,low"),
			`case.yaml:6: tariffs[1].price_file (prices.csv:2): price "low" is not a number: give a plain decimal number without unit or currency sign`),
		prices("price with its currency", first("2026-01-01T00:00Z,£0.20"),
			`case.yaml:6: tariffs[1].price_file (prices.csv:2): price "£0.20" is not a number: give a plain decimal number without unit or currency sign`),
		prices("price that is no number", first("2026-01-01T00:00Z,NaN"),
			`case.yaml:6: tariffs[1].price_file (prices.csv:2): price "NaN" is not a number: give a plain decimal number without unit or currency sign`),
		prices("price left out", first("2026-01-01T00:00Z,"),
			`case.yaml:6: tariffs[1].price_file (prices.csv:2): price "" is not a number: give a plain decimal number without unit or currency sign`),
		prices("decimal comma in prices", first(`2026-01-01T00:00Z,"0,2"`),
			`case.yaml:6: tariffs[1].price_file (prices.csv:2): price "0,2" is not a number: give a plain decimal number without unit or currency sign`),
		prices("price without quotes", first("2026-01-01T00:00Z,0,2"),
			"case.yaml:6: tariffs[1].price_file (prices.csv:2): 3 fields, the header has 2: separate by commas and write decimals with a point"),
		prices("local time", first("2026-01-01 00:00,0.200"),
			`case.yaml:6: tariffs[1].price_file (prices.csv:2): start_utc "2026-01-01 00:00" is not a UTC time: write it like 2026-03-29T00:30Z, with the Z`),
		prices("time with an offset", first("2026-01-01T00:00+01:00,0.200"),
			`case.yaml:6: tariffs[1].price_file (prices.csv:2): start_utc "2026-01-01T00:00+01:00" is not a UTC time: write it like 2026-03-29T00:30Z, with the Z`),
		prices("quote inside a value", first(`2026-01-01T00:00Z,0.2"0`),
			"case.yaml:6: tariffs[1].price_file (prices.csv:2): a quotation mark stands inside a value, or is never closed: remove the quotation marks"),
		prices("hour left out", strings.Replace(good, "2026-03-01T00:00Z,0.200\n", "", 1),
			"case.yaml:6: tariffs[1].price_file (prices.csv:1418): 1 of 8760 values are missing near here, 2026-03-01T00:00Z to 2026-03-01T00:00Z: add the rows"),
		prices("hour given twice", strings.Replace(good, "2026-03-01T00:00Z", "2026-03-01T01:00Z", 1),
			"case.yaml:6: tariffs[1].price_file (prices.csv:1418): 1 of 8760 values are missing near here, 2026-03-01T00:00Z to 2026-03-01T00:00Z: add the rows"+
				"\ncase.yaml:6: tariffs[1].price_file (prices.csv:1419): 2026-03-01T01:00Z was given on line 1418 already: keep one (after the clocks go back, local times occur twice; UTC does not)"),
		prices("hours out of order", strings.Replace(good, "2026-03-01T00:00Z,0.200\n2026-03-01T01:00Z", "2026-03-01T01:00Z,0.200\n2026-03-01T00:00Z", 1),
			"case.yaml:6: tariffs[1].price_file (prices.csv:1419): 2026-03-01T00:00Z comes after 2026-03-01T01:00Z on line 1418: sort the rows by time"),
		prices("prices by the day", daily(),
			"case.yaml:6: tariffs[1].price_file (prices.csv:3): rows are 1440 minutes apart here: they must be 15, 30 or 60 minutes apart throughout"),
		prices("two years of prices", good+strings.ReplaceAll(strings.TrimPrefix(good, "start_utc,price\n"), "2026-", "2027-"),
			"case.yaml:6: tariffs[1].price_file (prices.csv:2): 2026-01-01T00:00Z lies outside 2027, the year of the file: keep rows from 2027-01-01T00:00Z to 2027-12-31T23:00Z"+
				"\n..."),
		prices("prices in pence", strings.ReplaceAll(good, ",0.200", ",20.0"),
			"case.yaml:6: tariffs[1].price_file holds rates of 20 with currency GBP, allowed up to 3: it looks like pence or cents, or like rates per MWh: convert them"),
		prices("prices of a workbook", "PK\x03\x04\x14\x00\x06\x00",
			`case.yaml:6: tariffs[1].price_file (prices.csv:1): header "PK\x03\x04\x14\x00\x06\x00" lacks start_utc or price: the file is no text, save the table as CSV in UTF-8`),
		prices("prices in UTF-16", "\xff\xfes\x00t\x00",
			`case.yaml:6: tariffs[1].price_file (prices.csv:1): header "\xff\xfes\x00t\x00" lacks start_utc or price: the file is UTF-16, save it as CSV in UTF-8`),
		surplus("surplus below zero", strings.Replace(madeSeries("surplus_kwh", func(int) float64 { return 0.1 }), ",0.100", ",-0.100", 1),
			"case.yaml:5: surplus.file (sun.csv:2): surplus_kwh -0.1 is below zero: give zero or more"),
		surplus("prices for surplus", good,
			`case.yaml:5: surplus.file (sun.csv:1): header "start_utc,price" lacks start_utc or surplus_kwh: name both columns, separated by commas`),
	}
}

// daily is a price for each day.
func daily() string {
	var b strings.Builder
	b.WriteString("start_utc,price\n")
	for day := range 365 {
		fmt.Fprintf(&b, "%s,0.2\n", yearHour(2026, 24*day).Format("2006-01-02T15:04Z"))
	}
	return b.String()
}

// badSchedules lists schedules of rates that are refused.
func badSchedules() []badInput {
	schedule := func(name, file, want string) badInput {
		in := also(name, "tariffs:\n  - {name: seasonal, schedule_file: rates.json}\n", want)
		in.files["rates.json"] = file
		return in
	}
	months := func(n, hours int, period string) string {
		row := "[" + strings.TrimSuffix(strings.Repeat(period+",", hours), ",") + "]"
		return "[" + strings.TrimSuffix(strings.Repeat(row+",", n), ",") + "]"
	}
	of := func(rate, week, weekend string) string {
		return fmt.Sprintf("{\"energyratestructure\": [[{\"rate\": %s}]],\n\"energyweekdayschedule\": %s,\n\"energyweekendschedule\": %s}", rate, week, weekend)
	}
	day := months(12, 24, "0")
	return []badInput{
		schedule("open brace", "{",
			"case.yaml:6: tariffs[1].schedule_file (rates.json:1): not the expected JSON: unexpected end of JSON input: give one tariff as one object"),
		schedule("schedule as a list", "[]",
			"case.yaml:6: tariffs[1].schedule_file (rates.json:1): not the expected JSON: the file cannot be of the kind array: give one tariff as one object"),
		schedule("rates as a number", "{\n\"energyratestructure\": 3}",
			"case.yaml:6: tariffs[1].schedule_file (rates.json:2): not the expected JSON: energyratestructure cannot be of the kind number: give one tariff as one object"),
		schedule("eleven rows of months", of("0.3", months(11, 24, "0"), day),
			"case.yaml:6: tariffs[1].schedule_file (rates.json): energyweekdayschedule: has 11 rows: must have 12, January first"),
		schedule("23 hours", of("0.3", day, months(12, 23, "0")),
			"case.yaml:6: tariffs[1].schedule_file (rates.json): energyweekendschedule: row 1 has 23 hours: must have 24, midnight first"+
				"\n..."),
		schedule("period of no rate", of("0.3", months(12, 24, "9"), day),
			"case.yaml:6: tariffs[1].schedule_file (rates.json): energyweekdayschedule: row 1, hour 0: period 9 is not in energyratestructure, which has 1 (the first is 0)"+
				"\n..."),
		schedule("rate in quotes", of(`"0.3"`, day, day),
			"case.yaml:6: tariffs[1].schedule_file (rates.json:1): not the expected JSON: energyratestructure.rate cannot be of the kind string: give one tariff as one object"),
		schedule("schedule in pence", of("30", day, day),
			"case.yaml:6: tariffs[1].schedule_file holds rates of 30 with currency GBP, allowed up to 3: it looks like pence or cents, or like rates per MWh: convert them"),
		schedule("rate beyond all numbers", of("1e999", day, day),
			"case.yaml:6: tariffs[1].schedule_file (rates.json:1): not the expected JSON: energyratestructure.rate cannot be of the kind number 1e999: give one tariff as one object"),
	}
}
