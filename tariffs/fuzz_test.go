package tariffs

import (
	"bytes"
	"strings"
	"testing"

	"dhwcompare/compare/calendar"
)

// Whatever the bytes, a reader gives an error that names the file, or a full year
// of finite values.
func FuzzReadPrices(f *testing.F) {
	f.Add([]byte("start_utc,price\n2026-01-01T00:00Z,0.2\n2026-01-01T00:30Z,-0.1\n"))
	f.Add([]byte("# note\nprice,start_utc,x\n0.2,2026-01-01T00:00Z,a\n"))
	f.Add([]byte("\ufeffstart_utc,price\r\n\"2026-02-30T00:00Z\",1e999\r\n"))
	f.Add([]byte(""))
	f.Fuzz(func(t *testing.T, data []byte) {
		s, err := ReadPrices(bytes.NewReader(data), options())
		if err != nil {
			if !strings.HasPrefix(err.Error(), "prices.csv:") {
				t.Fatalf("error without a place: %v", err)
			}
			return
		}
		if _, err := halfHourly(s.HalfHours).Compile(british()); err != nil {
			t.Fatal(err)
		}
	})
}

// Whatever the bytes, an import gives an error or a tariff that covers the year
// without overlap.
func FuzzReadMatrix(f *testing.F) {
	day := "[" + strings.Repeat("0,", 23) + "0]"
	months := "[" + strings.Repeat(day+",", 11) + day + "]"
	f.Add([]byte(`{"energyratestructure":[[{"rate":0.2}]],"energyweekdayschedule":` + months + `,"energyweekendschedule":` + months + `}`))
	f.Add([]byte(`{"energyratestructure":[[{"rate":0.2},{"rate":0.3}]]}`))
	f.Add([]byte(`{"items":[]}`))
	f.Add([]byte(`[`))
	f.Fuzz(func(t *testing.T, data []byte) {
		tariff, _, err := ReadMatrix(bytes.NewReader(data), "matrix.json")
		if err != nil {
			return
		}
		r, err := tariff.Compile(british())
		if err != nil {
			t.Fatal(err)
		}
		if _, err := r.Bill(make([]float64, calendar.HalfHours)); err != nil {
			t.Fatal(err)
		}
	})
}
