package plant

import (
	"context"
	"testing"

	"dhwcompare/compare/calendar"
)

func BenchmarkYear(b *testing.B) {
	in := exploreInputs()
	for name, compact := range map[string]bool{"compact": true, "cylinder": false} {
		b.Run(name, func(b *testing.B) {
			p := New(exploreParams(compact))
			l := NewLedger()
			for range b.N {
				l.Reset()
				if err := p.Run(context.Background(), 0, calendar.YearS, in, Override{}, Recorder{Ledger: l}); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
