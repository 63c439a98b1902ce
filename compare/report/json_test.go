package report

import (
	"bytes"
	"encoding/json"
	"math"
	"testing"

	"dhwcompare/compare"
)

func TestJSONReadsBackToTheSameBytes(t *testing.T) {
	doc := document()
	doc.Comparison.Title = "<script> & \u00a3"
	doc.Comparison.Options.Compact.ElectricityKWh = math.Nextafter(0.3, 1) // needs all 17 digits
	first, err := JSON(doc)
	if err != nil {
		t.Fatal(err)
	}
	var read compare.Comparison
	if err := json.Unmarshal(first, &read); err != nil {
		t.Fatal(err)
	}
	again, err := JSON(&compare.Document{Comparison: &read})
	if err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(first, again) {
		t.Error("reading and writing changed the bytes")
	}
	for _, want := range []string{`"title": "<script> & £"`, `"electricity_kwh": 0.30000000000000004`} {
		if !bytes.Contains(first, []byte(want)) {
			t.Errorf("lacks %s", want)
		}
	}
	if !bytes.HasSuffix(first, []byte("\n}\n")) {
		t.Error("does not end in one newline")
	}
}

func TestJSONRefusesWhatIsNoNumber(t *testing.T) {
	for _, v := range []float64{math.NaN(), math.Inf(1), math.Inf(-1)} {
		doc := document()
		doc.Comparison.Options.Cylinder.Months[3].HeatPumpCOP = v
		if data, err := JSON(doc); err == nil || data != nil {
			t.Errorf("%g was written", v)
		}
	}
}
