package wording

import "testing"

func TestAmount(t *testing.T) {
	for _, c := range []struct {
		v        float64
		decimals int
		want     string
	}{
		{0, 0, "0"}, {-0.4, 0, "0"}, {-0.04, 1, "0.0"}, {999.6, 0, "1,000"}, {-12, 1, "−12.0"},
		{1234567.891, 2, "1,234,567.89"}, {-1234, 0, "−1,234"}, {123, 0, "123"},
	} {
		if got := Amount(c.v, c.decimals); got != c.want {
			t.Errorf("%g with %d decimals: %q, want %q", c.v, c.decimals, got, c.want)
		}
	}
}

func TestSigned(t *testing.T) {
	for _, c := range []struct {
		v          float64
		text, want string
	}{
		{0.04, "0.0", "0.0"}, {3, "3", "+3"}, {-3, "−3", "−3"}, {0, "0", "0"}, {60, "£60", "+£60"},
	} {
		if got := Signed(c.v, c.text); got != c.want {
			t.Errorf("%g as %q: %q, want %q", c.v, c.text, got, c.want)
		}
	}
}

func TestCapital(t *testing.T) {
	for in, want := range map[string]string{"": "", "heat pump": "Heat pump", "Heat": "Heat", "émail": "Émail", "90 %": "90 %", "\xff": "\xff"} {
		if got := Capital(in); got != want {
			t.Errorf("%q: %q, want %q", in, got, want)
		}
	}
}
