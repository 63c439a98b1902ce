package plant

import (
	"context"
	"runtime"
	"sync"
	"sync/atomic"
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

// BenchmarkPairedYears is a hundred years of both options with everything on, each with
// weather and draw-offs of its own, on all processors: -cpu 1,2 shows how it scales.
func BenchmarkPairedYears(b *testing.B) {
	const years = 100
	workers := runtime.GOMAXPROCS(0)
	plants, ledgers := make([][2]*Plant, workers), make([]*Ledger, workers)
	for w := range plants {
		plants[w] = [2]*Plant{New(everything(b, "compact")), New(everything(b, "cylinder"))}
		ledgers[w] = NewLedger()
	}
	for b.Loop() {
		var next atomic.Int64
		var all sync.WaitGroup
		for w := range workers {
			all.Go(func() {
				for year := int(next.Add(1)) - 1; year < years; year = int(next.Add(1)) - 1 {
					in := twoPeopleIn(year)
					for _, p := range plants[w] {
						ledgers[w].Reset()
						if err := p.Run(b.Context(), 0, calendar.YearS, in, Override{}, Recorder{Ledger: ledgers[w]}); err != nil {
							b.Error(err)
						}
					}
				}
			})
		}
		all.Wait()
	}
}
