package casefile

import "testing"

func BenchmarkLoad(b *testing.B) {
	data := Demo()
	b.ReportAllocs()
	for b.Loop() {
		if _, _, err := Load("demo.yaml", data, nil); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkWrite(b *testing.B) {
	c := example()
	b.ReportAllocs()
	for b.Loop() {
		Write(&c)
	}
}
