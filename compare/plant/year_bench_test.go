package plant

import (
	"context"
	"testing"

	"dhwcompare/compare/calendar"
)

// BenchmarkYear is one option-year with everything switched on, on one core.
func BenchmarkYear(b *testing.B) {
	in := twoPeople()
	for _, option := range []struct {
		name   string
		params func(testing.TB) Params
	}{{"compact", compactParams}, {"cylinder", cylinderParams}} {
		b.Run(option.name, func(b *testing.B) {
			p, l := New(option.params(b)), NewLedger()
			b.ReportAllocs()
			for b.Loop() {
				l.Reset()
				if err := p.Run(context.Background(), 0, calendar.YearS, in, Override{}, Recorder{Ledger: l}); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
