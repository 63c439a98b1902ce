package household

import "testing"

func BenchmarkYear(b *testing.B) {
	p := Defaults(2.3, true)
	b.ReportAllocs()
	for b.Loop() {
		Draws(p, testYear, britishMainsC, testSeed, 0)
	}
}
