package casefile

import "testing"

func BenchmarkLoad(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		if _, _, err := Load("demo.yaml", Demo()); err != nil {
			b.Fatal(err)
		}
	}
}
func BenchmarkWrite(b *testing.B) {
	c, _, _ := Load("demo.yaml", Demo())
	b.ReportAllocs()
	for b.Loop() {
		Write(c)
	}
}
