package charts

import (
	"math"
	"strings"
	"testing"

	"dhwcompare/compare"
)

// varied is a document with inputs of invented effect.
func varied(t testing.TB) *compare.Document {
	t.Helper()
	input := func(label, unit string, low, high, costLow, costHigh float64) compare.SensitivityInput {
		in := compare.SensitivityInput{Name: label, Label: label, Unit: unit, LowValue: low, HighValue: high}
		in.Low.CostDifference, in.High.CostDifference = costLow, costHigh
		in.Low.FailingCompact, in.High.FailingCompact = 12-(low+high)/20, 3
		in.Low.FailingCylinder, in.High.FailingCylinder = 0.5, 0.5+costHigh/20
		return in
	}
	s := &compare.Sensitivity{Years: 4, Inputs: []compare.SensitivityInput{
		input("setpoint of the compact store", "C", 56, 64, -20, 60),
		input("efficiency in the field over the test bench, of both", "", 0.8, 1, 45, 15),
		input("mains water warmer by", "K", -2, 2, 24, 16),
		input("people", "", 2, 4, 20, 20),
	}}
	s.Base = compare.SensitivityPoint{CostDifference: 20, FailingCompact: 4, FailingCylinder: 0.5}
	s.Inputs[0].Turn = &compare.Turn{At: 58.1234}
	return &compare.Document{Comparison: home(t), Sensitivity: s}
}

func TestTornado(t *testing.T) {
	c := findChart(t, drawn(t, varied(t)), "tornado")
	if want := "What moves the difference in cost most: setpoint of the compact store. One input turns the recommendation"; c.Title != want {
		t.Errorf("title %q, want %q", c.Title, want)
	}
	checkPicture(t, c)
	for _, want := range []string{
		"Setpoint of the compact store, °C from 56 to 64: −£20 to +£60, turns at about 58.",
		"Mains water warmer by, K from −2 to 2: +£24 to +£16, does not turn.",
	} {
		if !strings.Contains(c.Alt, want) {
			t.Errorf("%q is not in %q", want, c.Alt)
		}
	}
	// One bar lies on both sides of zero, three at its right; one of those has no
	// width.
	svg := string(svgOf(t, c))
	if a, b := strings.Count(svg, `Z" style="fill:#D4752A"`), strings.Count(svg, `Z" style="fill:#2B2F77"`); a != 1 || b != 4 {
		t.Errorf("%d bars where the compact store costs less and %d where the cylinder does, want 1 and 4", a, b)
	}
}

func TestTornadoTitle(t *testing.T) {
	s := varied(t).Sensitivity
	s.Inputs[0].Turn = nil
	if got, want := tornadoTitle(s), "What moves the difference in cost most: setpoint of the compact store. No input alone turns the recommendation"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
	s.Inputs[1].Turn, s.Inputs[2].Turn = &compare.Turn{}, &compare.Turn{}
	if got, want := tornadoTitle(s), "What moves the difference in cost most: setpoint of the compact store. 2 of 4 inputs turn the recommendation"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
}

// TestEndsCarryTheirValue holds that a bar whose high input lies at the left says
// so there.
func TestEndsCarryTheirValue(t *testing.T) {
	s := varied(t).Sensitivity
	low, high, left, right := ends(&s.Inputs[1])
	if low != 15 || high != 45 || left != 1 || right != 0.8 {
		t.Errorf("from %v (%v) to %v (%v)", low, left, high, right)
	}
}

func TestDigits(t *testing.T) {
	for _, c := range []struct {
		v    float64
		most int
		want string
	}{
		{0.906, 2, "0.91"}, {5.04, 2, "5"}, {-2, 3, "−2"}, {1234, 3, "1230"}, {0.0625, 3, "0.0625"}, {0, 2, "0"},
		{1e12, 3, "1e+12"}, {1.234e-9, 2, "1.2e−09"},
	} {
		if got := digits(c.v, c.most); got != c.want {
			t.Errorf("digits(%v, %d) = %q, want %q", c.v, c.most, got, c.want)
		}
	}
}

// The values of an input whose bar ends on one side of the case as stated stand on both
// sides of its dashed line.
func TestValuesKeepClearOfTheLine(t *testing.T) {
	doc := varied(t)
	in := &doc.Sensitivity.Inputs[3]
	in.LowValue, in.HighValue, in.Low.CostDifference, in.High.CostDifference = 77.7, 88.8, 26, 24
	c := findChart(t, drawn(t, doc), "tornado")
	checkPicture(t, c)
	at, texts := map[string]label{}, labels(t, svgOf(t, c))
	for _, l := range texts {
		at[l.text] = l
	}
	stated := at["as stated: +20"]
	line := (stated.x0 + stated.x1) / 2
	if left, right := at["88.8"], at["77.7"]; left.x1 == 0 || right.x0 == 0 || left.x1 > line || right.x0 < line {
		t.Errorf("the line at %.1f, values at %.1f to %.1f and %.1f to %.1f", line, left.x0, left.x1, right.x0, right.x1)
	}
}

func TestUnitsOfInputsAsInPrint(t *testing.T) {
	for unit, want := range map[string]string{"": "a", "C": "a, °C", "W/m2K": "a, W/m²K", "min": "a, min"} {
		if got := joinedUnit("a", unit); got != want {
			t.Errorf("%q: %q, want %q", unit, got, want)
		}
	}
}

func TestTornadoExtremes(t *testing.T) {
	each := func(f func(*compare.SensitivityInput)) func(*compare.Sensitivity) {
		return func(s *compare.Sensitivity) {
			for i := range s.Inputs {
				f(&s.Inputs[i])
			}
		}
	}
	for name, change := range map[string]func(*compare.Sensitivity){
		"nothing": func(s *compare.Sensitivity) { *s = compare.Sensitivity{} },
		"one":     func(s *compare.Sensitivity) { s.Inputs = s.Inputs[:1] },
		"many":    func(s *compare.Sensitivity) { s.Inputs = append(make([]compare.SensitivityInput, 60), s.Inputs...) },
		"all zero": func(s *compare.Sensitivity) {
			s.Base.CostDifference = 0
			each(func(in *compare.SensitivityInput) { in.Low, in.High = s.Base, s.Base })(s)
		},
		"all less": func(s *compare.Sensitivity) {
			s.Base.CostDifference = -300
			each(func(in *compare.SensitivityInput) { in.Low.CostDifference -= 300; in.High.CostDifference -= 300 })(s)
		},
		"base outside": func(s *compare.Sensitivity) { s.Base.CostDifference = 4000 },
		"huge":         each(func(in *compare.SensitivityInput) { in.Low.CostDifference *= 1e250; in.High.CostDifference *= 1e250 }),
		"tiny":         each(func(in *compare.SensitivityInput) { in.Low.CostDifference *= 1e-250; in.High.CostDifference *= 1e-250 }),
		"long values":  each(func(in *compare.SensitivityInput) { in.LowValue, in.HighValue = -1.234e-123, 1.234e+123 }),
		"long names":   each(func(in *compare.SensitivityInput) { in.Label = strings.Repeat("a long name ", 30) }),
		"no spaces": each(func(in *compare.SensitivityInput) {
			in.Label, in.Unit = strings.Repeat("x", 500), strings.Repeat("y", 500)
		}),
		"floods":       each(func(in *compare.SensitivityInput) { in.High.FailingCompact *= 1e250; in.Low.FailingCylinder = 1e250 }),
		"all alike":    each(func(in *compare.SensitivityInput) { in.Low.FailingCompact, in.High.FailingCompact = 9, 9 }),
		"foreign text": each(func(in *compare.SensitivityInput) { in.Label = "<script>\x00\u202e" }),
	} {
		t.Run(name, func(t *testing.T) {
			doc := varied(t)
			change(doc.Sensitivity)
			charts := drawn(t, doc)
			for _, chart := range []string{"tornado", "tornado-showers"} {
				c := findChart(t, charts, chart)
				checkPicture(t, c)
				if name != "nothing" && name != "all zero" {
					checkClear(t, c)
				}
			}
		})
	}
}

func TestRefusesInputsThatAreNoNumbers(t *testing.T) {
	for name, spoil := range map[string]func(*compare.Sensitivity){
		"base":   func(s *compare.Sensitivity) { s.Base.CostDifference = math.NaN() },
		"shower": func(s *compare.Sensitivity) { s.Inputs[1].High.FailingCylinder = math.Inf(1) },
		"end":    func(s *compare.Sensitivity) { s.Inputs[1].Low.CostDifference = math.Inf(1) },
		"turn":   func(s *compare.Sensitivity) { s.Inputs[0].Turn.At = math.NaN() },
	} {
		doc := varied(t)
		spoil(doc.Sensitivity)
		if _, err := Of(doc); err == nil {
			t.Errorf("%s: drawn all the same", name)
		}
	}
}
