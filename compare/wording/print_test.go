package wording

import "testing"

func TestInPrint(t *testing.T) {
	for in, want := range map[string]string{
		"Kept at 63 C, with 0.27 m2 of floor.":                          "Kept at 63 °C, with 0.27 m² of floor.",
		"GBP 34 a year for each m2, of 1 m2 (2 m2); 3 m2":               "£34 a year for each m², of 1 m² (2 m²); 3 m²",
		"differs by GBP +103 a year (-3 to +5), or GBP -15":             "differs by +£103 a year (−3 to +5), or −£15",
		"EUR 7 and USD 12 and NOK 9":                                    "€7 and $12 and NOK 9",
		"cold spell (-3 C, mains 8 C, 5 days)":                          "cold spell (−3 °C, mains 8 °C, 5 days)",
		"5 COP, 3 Celsius, floor_value_per_m2_year, W/m2K, two-part, -": "5 COP, 3 Celsius, floor_value_per_m2_year, W/m2K, two-part, -",
		"GBP 103 a year less, GBP -3 to GBP +4; taken as EUR, EUR 5":    "£103 a year less, −£3 to +£4; taken as EUR, €5",
		"kept at 52 C. From -1 to 2 C; CO2, 10-15":                      "kept at 52 °C. From −1 to 2 °C; CO2, 10-15",
		"": "",
	} {
		if got := InPrint(in); got != want {
			t.Errorf("%q becomes %q, want %q", in, got, want)
		}
		if got := InPrint(want); got != want {
			t.Errorf("%q is dressed twice: %q", want, got)
		}
	}
}

func TestUnit(t *testing.T) {
	for in, want := range map[string]string{"": "", "C": "°C", "m2": "m²", "W/m2K": "W/m²K", "min": "min"} {
		if got := Unit(in); got != want {
			t.Errorf("%q: %q, want %q", in, got, want)
		}
	}
}

func TestCurrencySign(t *testing.T) {
	for code, want := range map[string]string{"GBP": "£", "EUR": "€", "USD": "$", "NOK": "", "": ""} {
		if got, known := CurrencySign(code); got != want || known != (want != "") {
			t.Errorf("%q: %q, known %v, want %q", code, got, known, want)
		}
	}
}
