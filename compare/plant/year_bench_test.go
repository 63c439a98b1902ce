package plant

import (
	"context"
	"testing"

	"dhwcompare/compare/calendar"
)

// BenchmarkYear is one option-year on one core with everything that the engine knows
// switched on.
func BenchmarkYear(b *testing.B) {
	in := twoPeople()
	for _, name := range []string{"compact", "cylinder"} {
		b.Run(name, func(b *testing.B) { benchmarkYear(b, everything(b, name), in) })
	}
}

// BenchmarkHotWaterYear is the same without a house, frost, hot spells and glycol.
func BenchmarkHotWaterYear(b *testing.B) {
	in := twoPeople()
	b.Run("compact", func(b *testing.B) { benchmarkYear(b, compactParams(b), in) })
	b.Run("cylinder", func(b *testing.B) { benchmarkYear(b, cylinderParams(b), in) })
}

func benchmarkYear(b *testing.B, params Params, in Inputs) {
	p, l := New(params), NewLedger()
	b.ReportAllocs()
	for b.Loop() {
		l.Reset()
		if err := p.Run(context.Background(), 0, calendar.YearS, in, Override{}, Recorder{Ledger: l}); err != nil {
			b.Fatal(err)
		}
	}
}
