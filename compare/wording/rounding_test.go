package wording

import (
	"math"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

// ties are numbers half-way between two that are written, most of them stored as a
// little less or more than that, and some that are not half-way.
func ties() map[float64][2]string { // with no decimal and with one
	return map[float64][2]string{
		2.65: {"3", "2.7"}, 0.95: {"1", "1.0"}, 0.05: {"0", "0.1"}, 0.25: {"0", "0.3"}, 1.15: {"1", "1.2"}, 2.5: {"3", "2.5"}, 0.5: {"1", "0.5"},
		-2.65: {"-3", "-2.7"}, -0.5: {"-1", "-0.5"}, 1.005: {"1", "1.0"}, 9.95: {"10", "10.0"}, 99.95: {"100", "100.0"}, 10234.5: {"10235", "10234.5"},
		2.649999: {"3", "2.6"}, 0.4999999: {"0", "0.5"}, 0.049: {"0", "0.0"}, -0.04: {"0", "0.0"}, 0: {"0", "0.0"},
		0.005: {"0", "0.0"}, 1e-300: {"0", "0.0"}, 123456789.25: {"123456789", "123456789.3"},
		// A mean that its sum has brought a rounding error below the tie.
		math.Nextafter(2.65, 0): {"3", "2.7"}, math.Nextafter(-0.45, 0): {"0", "-0.5"},
	}
}

func TestHalvesRoundAwayFromZero(t *testing.T) {
	for v, want := range ties() {
		for decimals, text := range want {
			if got := Fixed(v, decimals); got != text {
				t.Errorf("%v with %d decimals: %q, want %q", v, decimals, got, text)
			}
			if got := Sprintf("%.*f", decimals, v); got != text {
				t.Errorf("%v with %d decimals in a sentence: %q, want %q", v, decimals, got, text)
			}
		}
	}
	if got := Amount(-10234.65, 1); got != "−10,234.7" {
		t.Errorf("an amount: %q", got)
	}
}

func TestRoundedLeavesWhatItCannotShorten(t *testing.T) {
	for _, v := range []float64{math.MaxFloat64, 1e15 + 0.5, 1e300, math.Inf(1), math.Inf(-1), 0.1, -3, 2.65} {
		if got := Rounded(v, 17); got != v {
			t.Errorf("%v becomes %v", v, got)
		}
	}
	if got := Rounded(math.NaN(), 1); !math.IsNaN(got) {
		t.Errorf("no number becomes %v", got)
	}
	if got := Rounded(math.MaxFloat64, -308); got != math.MaxFloat64 {
		t.Errorf("the largest number becomes %v", got)
	}
	if got := Rounded(-0.04, 1); math.Signbit(got) {
		t.Error("what rounds to zero has a sign")
	}
}

func TestRoundedToTens(t *testing.T) {
	for v, want := range map[float64]float64{125: 130, 124.9: 120, -125: -130, 5: 10, 4.9: 0, 0.5: 0} {
		if got := Rounded(v, -1); got != want {
			t.Errorf("%v in tens: %v, want %v", v, got, want)
		}
	}
}

func TestSignificant(t *testing.T) {
	for _, c := range []struct {
		v      float64
		digits int
		want   float64
	}{
		{1.005, 3, 1.01}, {0.0125, 2, 0.013}, {1235, 3, 1240}, {9.995, 3, 10}, {0.906, 2, 0.91}, {-2.5, 1, -3}, {1.234e-9, 2, 1.2e-9}, {7, 3, 7},
	} {
		if got := Significant(c.v, c.digits); got != c.want {
			t.Errorf("%v to %d digits: %v, want %v", c.v, c.digits, got, c.want)
		}
	}
}

// TestSprintf holds that a sentence keeps everything else that fmt does.
func TestSprintf(t *testing.T) {
	for _, c := range []struct {
		got, want string
	}{
		{Sprintf("%+.1f", 2.65), "+2.7"}, {Sprintf("%8.1f|%-8.1f|%08.2f", 2.65, 2.65, 1.005), "     2.7|2.7     |00001.01"},
		{Sprintf("%.3g and %.3g", 1.005, 1e6), "1.01 and 1e+06"}, {Sprintf("%.0e", 2.5e-13), "3e-13"}, {Sprintf("%.1E", 1.25), "1.3E+00"},
		{Sprintf("%g and %v", 2.65, 1e21), "2.65 and 1e+21"}, {Sprintf("%s, %d, %q, %5.1f %%", "a", 3, "b", -0.04), `a, 3, "b",   0.0 %`},
		{Sprintf("%+.0f", -0.3), "+0"}, {Sprintf("%.1f", math.Inf(-1)), "-Inf"}, {Sprintf("none"), "none"},
	} {
		if c.got != c.want {
			t.Errorf("%q, want %q", c.got, c.want)
		}
	}
}

// TestWordsAreRoundedHere holds that what people read is not rounded by fmt or strconv,
// whose ties go by the binary number.
func TestWordsAreRoundedHere(t *testing.T) {
	drawn := map[string]string{"sketch.go": "coordinates", "svg.go": "coordinates", "beside.go": "an error"}
	ownRounding := regexp.MustCompile(`fmt\.\w*f\(.*%[-+0]?[0-9]*\.[0-9*]+[efgEG]|FormatFloat\([^'\n]*'[efg]', [^-]`)
	read := 0
	for _, pattern := range []string{"../*.go", "../space/*.go", "../workbook/*.go", "../report/*.go", "../report/outline/*.go", "../../charts/*.go"} {
		files, err := filepath.Glob(pattern)
		if err != nil {
			t.Fatal(err)
		}
		for _, name := range files {
			if drawn[filepath.Base(name)] != "" || strings.HasSuffix(name, "_test.go") {
				continue
			}
			text, err := os.ReadFile(name)
			if err != nil {
				t.Fatal(err)
			}
			read++
			if found := ownRounding.Find(text); found != nil {
				t.Errorf("%s rounds by itself: %s", name, found)
			}
		}
	}
	if read < 100 {
		t.Errorf("only %d files read", read)
	}
}
