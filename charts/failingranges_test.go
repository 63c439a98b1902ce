package charts

import (
	"strings"
	"testing"

	"dhwcompare/compare"
)

func TestFailingRanges(t *testing.T) {
	doc := varied(t)
	c := compare.Default()
	doc.Case = &c
	chart := findChart(t, drawn(t, doc), "tornado-showers")
	// Low values fail 12 a year less a twentieth of both values, high ones 3; widest
	// is the input whose values add up to nothing.
	if want := "What moves failing showers most: mains water warmer by, from 3 to 12 a year with the compact store"; chart.Title != want {
		t.Errorf("title %q, want %q", chart.Title, want)
	}
	checkPicture(t, chart)
	checkClear(t, chart)
	if want := "Mains water warmer by, K from −2 to 2: compact store 12 to 3, cylinder 0.5 to 1.3."; !strings.Contains(chart.Alt, want) {
		t.Errorf("%q is not in %q", want, chart.Alt)
	}
	if svg := string(svgOf(t, chart)); !strings.Contains(svg, "service rule: at most 2<") {
		t.Error("the service rule is not drawn")
	}
	doc.Case = nil
	if svg := string(svgOf(t, findChart(t, drawn(t, doc), "tornado-showers"))); strings.Contains(svg, "service rule") {
		t.Error("a service rule that is not stated is drawn")
	}
}

// TestFailingRangesShowWhatMoves holds that inputs that move nothing are left out
// and counted, and that the others are sorted.
func TestFailingRangesShowWhatMoves(t *testing.T) {
	doc := varied(t)
	for i := range doc.Sensitivity.Inputs[:3] {
		in := &doc.Sensitivity.Inputs[i]
		in.Low, in.High = doc.Sensitivity.Base, doc.Sensitivity.Base
	}
	doc.Sensitivity.Inputs[2].High.FailingCylinder += 40
	f := failingRangesChart(doc.Sensitivity, 2)
	if want := "What moves failing showers most: mains water warmer by, from 0.5 to 41 a year with the cylinder"; f.Title != want {
		t.Errorf("title %q, want %q", f.Title, want)
	}
	if !strings.Contains(f.subtitle, "2 more inputs move them less") {
		t.Errorf("what is left out is not counted: %s", f.subtitle)
	}
	doc.Sensitivity.Inputs = doc.Sensitivity.Inputs[:2]
	f = failingRangesChart(doc.Sensitivity, 2)
	if want := "No input alone moves the number of showers that run too cold"; f.Title != want {
		t.Errorf("title %q, want %q", f.Title, want)
	}
}
