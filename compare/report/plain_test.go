package report

import (
	"slices"
	"testing"
)

func TestPlain(t *testing.T) {
	tests := map[string][2]string{
		"ordinary":          {"Hot water, 55 °C £", "Hot water, 55 °C £"},
		"escape":            {"\x1b[31mred\x1b[0m", "[31mred[0m"},
		"one-byte escape":   {"\u009b31mred", "31mred"},
		"bell, backspace":   {"a\a\b\x7fz", "az"},
		"lines and tabs":    {"a\nb\r\tc\u2028d\u2029e", "a b  c d e"},
		"direction":         {"\u202efdp\u202c\u2066x\u2069\u200e\u061c", "fdpx"},
		"byte-order mark":   {"\ufeffa", "a"},
		"joiners":           {"\u0915\u094d\u200d\u0937", "\u0915\u094d\u200d\u0937"},
		"not UTF-8":         {"a\xffb", "a\ufffdb"},
		"hidden characters": {"a\u00ad\U000e0041b", "ab"},
	}
	for name, test := range tests {
		t.Run(name, func(t *testing.T) {
			if got := Plain(test[0]); got != test[1] {
				t.Errorf("Plain(%q) = %q, want %q", test[0], got, test[1])
			}
		})
	}
}

func TestPlainLinesKeepsLines(t *testing.T) {
	if got, want := PlainLines("a\x1b\nb\u202e\n"), "a\nb\n"; got != want {
		t.Errorf("got %q, want %q", got, want)
	}
}

func TestWidth(t *testing.T) {
	for s, want := range map[string]int{"": 0, "abc": 3, "e\u0301": 1, "\u5bbf\u6cca": 4, "\U0001f6bf": 2, "\uff1d": 2, "\uac00": 2, "°£": 2} {
		if got := width(s); got != want {
			t.Errorf("width(%q) = %d, want %d", s, got, want)
		}
	}
}

func TestWrap(t *testing.T) {
	tests := map[string]struct {
		text    string
		columns int
		indent  string
		want    []string
	}{
		"nothing":     {"  ", 10, "", nil},
		"fits":        {"one two", 7, "", []string{"one two"}},
		"breaks":      {"one two three", 8, "  ", []string{"one two", "  three"}},
		"long word":   {"a abcdefghij b", 6, "  ", []string{"a abcd", "  efgh", "  ij b"}},
		"wide runes":  {"\u5bbf\u6cca\u5bbf", 4, "", []string{"\u5bbf\u6cca", "\u5bbf"}},
		"exact width": {"ab cd", 2, "", []string{"ab", "cd"}},
	}
	for name, test := range tests {
		t.Run(name, func(t *testing.T) {
			if got := wrap(test.text, test.columns, test.indent); !slices.Equal(got, test.want) {
				t.Errorf("got %q, want %q", got, test.want)
			}
		})
	}
}

func TestCut(t *testing.T) {
	for _, test := range []struct {
		text    string
		columns int
		want    string
	}{
		{"short", 5, "short"}, {"longer", 5, "lo..."}, {"\u5bbf\u6cca\u5bbf", 5, "\u5bbf..."}, {"ab\u5bbf\u6cca", 5, "ab..."},
	} {
		if got := cut(test.text, test.columns); got != test.want {
			t.Errorf("cut(%q, %d) = %q, want %q", test.text, test.columns, got, test.want)
		}
	}
}

func TestSigned(t *testing.T) {
	for _, test := range []struct {
		v        float64
		decimals int
		want     string
	}{
		{12.4, 0, "+12"}, {-0.36, 2, "-0.36"}, {0.04, 1, "0.0"}, {-0.04, 1, "0.0"}, {0, 0, "0"}, {-0.4, 0, "0"}, {10, 0, "+10"}, {2.65, 1, "+2.7"}, {-0.95, 1, "-1.0"},
	} {
		if got := signed(test.v, test.decimals); got != test.want {
			t.Errorf("signed(%g, %d) = %q, want %q", test.v, test.decimals, got, test.want)
		}
	}
}

func TestUnitsStayWithTheirNumbers(t *testing.T) {
	for in, want := range map[string]string{
		"90 % interval":          "90\u00a0% interval",
		"kept at 63 °C.":         "kept at 63\u00a0°C.",
		"at 63 C, 7 l/min":       "at 63\u00a0C, 7\u00a0l/min",
		"5 litres in 3 minutes":  "5\u00a0litres in 3\u00a0minutes",
		"3 cylinders of 2 Kinds": "3 cylinders of 2 Kinds",
		"a\x1b % \u202eb":        "a % b",
	} {
		if got := prose(in); got != want {
			t.Errorf("prose(%q) = %q, want %q", in, got, want)
		}
	}
}
