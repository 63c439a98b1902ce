package workbook

import "testing"

// BenchmarkWrite times the whole workbook.
func BenchmarkWrite(b *testing.B) {
	doc := baseDocument(b)
	for b.Loop() {
		written(b, doc)
	}
}
