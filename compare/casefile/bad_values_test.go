package casefile

import (
	"strings"
	"testing"
)

func TestBadValues(t *testing.T) {
	refused(t, []badInput{
		{"out of range", strings.Replace(sound, "people: 3", "people: 30", 1),
			"case.yaml:2: household.people is 30, allowed 1 to 12: give the number of people who live there"},
		{"zero people", strings.Replace(sound, "people: 3", "people: 0", 1),
			"case.yaml:2: household.people is 0, allowed 1 to 12: give the number of people who live there"},
		{"negative people", strings.Replace(sound, "people: 3", "people: -3", 1),
			"case.yaml:2: household.people is -3, allowed 1 to 12: give the number of people who live there"},
		{"word", strings.Replace(sound, "people: 3", "people: three", 1),
			"case.yaml:2: household.people is three, allowed a number from 1 to 12: give a number in digits"},
		{"quoted number", strings.Replace(sound, "people: 3", "people: \"3\"", 1),
			`case.yaml:2: household.people is the text "3", allowed a number from 1 to 12: write it without the quotes`},
		{"nan", strings.Replace(sound, "people: 3", "people: .nan", 1),
			"case.yaml:2: household.people is .nan, allowed a number from 1 to 12: give a finite number"},
		{"bare nan", strings.Replace(sound, "people: 3", "people: NaN", 1),
			"case.yaml:2: household.people is NaN, allowed a number from 1 to 12: give a finite number"},
		{"inf", strings.Replace(sound, "people: 3", "people: -.inf", 1),
			"case.yaml:2: household.people is -.inf, allowed a number from 1 to 12: give a finite number"},
		{"too big for a number", strings.Replace(sound, "people: 3", "people: 1e999", 1),
			"case.yaml:2: household.people is 1e999, allowed a number from 1 to 12: give a finite number"},
	})
}

func TestBadNotation(t *testing.T) {
	refused(t, []badInput{
		{"octal", withHousehold("  bathrooms: 010\n"),
			"case.yaml:3: household.bathrooms is 010, allowed a whole number from 1 to 6: write it in decimal digits without leading zeros"},
		{"octal 0o", withHousehold("  bathrooms: 0o10\n"),
			"case.yaml:3: household.bathrooms is 0o10, allowed a whole number from 1 to 6: write it in decimal digits without leading zeros"},
		{"hex", withHousehold("  bath_l: 0x50\n"),
			"case.yaml:3: household.bath_l is 0x50, allowed a number from 20 to 400 l: write it in decimal digits without leading zeros"},
		{"underscore", withHousehold("  bath_l: 1_00\n"),
			"case.yaml:3: household.bath_l is 1_00, allowed a number from 20 to 400 l: write decimals after a point, and thousands without any sign between them"},
		{"comma", withHousehold("  shower_minutes: 6,5\n"),
			"case.yaml:3: household.shower_minutes is 6,5, allowed a number from 0.5 to 60 min: write decimals after a point, and thousands without any sign between them"},
		{"thousands", with("pipes:\n  loop_length_m: 1,600\n"),
			"case.yaml:6: pipes.loop_length_m is 1,600, allowed a number from 1 to 200 m: write decimals after a point, and thousands without any sign between them"},
		{"unit in value", withHousehold("  shower_c: 40 C\n"),
			"case.yaml:3: household.shower_c is 40 C, allowed a number from 35 to 48 °C: give the number alone, the unit is in the name of the key"},
		{"percent in value", withHousehold("  back_to_back_share: 30%\n"),
			"case.yaml:3: household.back_to_back_share is 30%, allowed a number from 0 to 1: give the number alone, the unit is in the name of the key"},
		{"half a bathroom", withHousehold("  bathrooms: 1.5\n"),
			"case.yaml:3: household.bathrooms is 1.5, allowed a whole number from 1 to 6: give a whole number"},
		{"boolean as number", withHousehold("  bathrooms: true\n"),
			"case.yaml:3: household.bathrooms is true, allowed a whole number from 1 to 6: give a number in digits"},
		{"date as number", withHousehold("  bathrooms: 2026-01-02\n"),
			"case.yaml:3: household.bathrooms is 2026-01-02, allowed a whole number from 1 to 6: give a number in digits"},
	})
}

func TestBadWords(t *testing.T) {
	refused(t, []badInput{
		{"yes", withHousehold("  has_bath: yes\n"),
			"case.yaml:3: household.has_bath is yes, allowed true or false: write true"},
		{"off", withHousehold("  has_bath: off\n"),
			"case.yaml:3: household.has_bath is off, allowed true or false: write false"},
		{"True", withHousehold("  has_bath: True\n"),
			"case.yaml:3: household.has_bath is True, allowed true or false: write true"},
		{"one", withHousehold("  has_bath: 1\n"),
			"case.yaml:3: household.has_bath is 1, allowed true or false: write true"},
		{"quoted true", withHousehold("  has_bath: \"true\"\n"),
			`case.yaml:3: household.has_bath is the text "true", allowed true or false: write true`},
		{"maybe", withHousehold("  has_bath: maybe\n"),
			"case.yaml:3: household.has_bath is maybe, allowed true or false: write true or false"},
		{"rhythm", withHousehold("  rhythm: mornings\n"),
			"case.yaml:3: household.rhythm is mornings, allowed one of measured, morning, evening, even: did you mean morning?"},
		{"profile", withHousehold("  load_profile: MM\n"),
			"case.yaml:3: household.load_profile is MM, allowed one of none, 3XS, XXS, XS, S, M, L, XL, XXL, 3XL, 4XL: leave it out for the default, none"},
		{"weekday", strings.Replace(sound, "climate:\n", "climate:\n  first_weekday: Thu\n", 1),
			"case.yaml:4: climate.first_weekday is Thu, allowed one of Sunday, Monday, Tuesday, Wednesday, Thursday, Friday, Saturday: leave it out for the default, Thursday"},
		{"size", with("heat_pump:\n  size: huge\n"),
			"case.yaml:6: heat_pump.size is huge, allowed one of small, medium: leave it out for the default, small"},
	})
}

func TestBadLists(t *testing.T) {
	refused(t, []badInput{
		{"eleven months", "household:\n  people: 3\nclimate:\n  outdoor_c: [4, 5, 6, 9, 12, 15, 17, 16, 14, 11, 7]\n",
			"case.yaml:4: climate.outdoor_c has 11 numbers, allowed are 12: give one for each month, January first"},
		{"month name", strings.Replace(sound, "[4,", "[Jan,", 1),
			"case.yaml:4: climate.outdoor_c[1] is Jan, allowed twelve numbers, January first, each from -50 to 45 °C: give a number in digits"},
		{"nested months", strings.Replace(sound, "[4,", "[[4],", 1),
			"case.yaml:4: climate.outdoor_c[1] is a list of 1, allowed twelve numbers, January first, each from -50 to 45 °C: give monthly means in °C, January first"},
		{"fahrenheit months", strings.Replace(sound, "17, 16", "63, 61", 1),
			"case.yaml:4: climate.outdoor_c[7] is 63, allowed -50 to 45 °C: it looks like degrees Fahrenheit: 63 would be 17.22 °C" + "\n" +
				"case.yaml:4: climate.outdoor_c[8] is 61, allowed -50 to 45 °C: it looks like degrees Fahrenheit: 61 would be 16.11 °C"},
		{"kelvin months", strings.Replace(sound, "[4,", "[277,", 1),
			"case.yaml:4: climate.outdoor_c[1] is 277, allowed -50 to 45 °C: it looks like kelvin: 277 would be 3.85 °C"},
		{"months as number", "household:\n  people: 3\nclimate:\n  outdoor_c: 10\n",
			"case.yaml:4: climate.outdoor_c is 10, allowed twelve numbers, January first, each from -50 to 45 °C: give monthly means in °C, January first"},
		{"frozen mains", strings.Replace(sound, "climate:\n", "climate:\n  mains_c: [0, 5, 6, 9, 12, 15, 17, 16, 14, 11, 7, 4]\n", 1),
			"case.yaml:4: climate.mains_c[1] is 0, allowed 2 to 30 °C: give monthly means in °C, January first"},
		{"arctic", "household:\n  people: 3\nclimate:\n  outdoor_c: [-30, -30, -20, -10, 0, 5, 9, 8, 2, -8, -20, -30]\n",
			"case.yaml:4: climate.mains_c follows from climate.outdoor_c as 0 °C in month 1, allowed 2 to 30 °C: state climate.mains_c"},
		{"many windows", with("cylinder:\n  control:\n    windows: [" + strings.Repeat("01:00-02:00,", 25) + "]\n"),
			"case.yaml:7: cylinder.control.windows has 25 items, allowed up to 24: make the list shorter"},
		{"many months", with("tariffs:\n  - name: a\n    rate_per_kwh: 0.3\n    bands:\n      - {label: b, rate_per_kwh: 0.1, hours: 01:00-02:00, months: [" + strings.Repeat("Jan,", 13) + "]}\n"),
			"case.yaml:9: tariffs[1].bands[1].months has 13 items, allowed up to 12: make the list shorter"},
		{"a month twice", with("tariffs:\n  - name: a\n    rate_per_kwh: 0.3\n    bands:\n      - {label: b, rate_per_kwh: 0.1, hours: 01:00-02:00, months: [Jan, Feb, January]}\n"),
			"case.yaml:9: tariffs[1].bands[1].months[3] is January, allowed a list of months, such as [Nov, Dec, Jan]: give each month once, by its name"},
	})
}
