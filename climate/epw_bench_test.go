package climate

import (
	"strings"
	"testing"
)

func BenchmarkReadEPW(b *testing.B) {
	text := newInvented().text(nil)
	b.SetBytes(int64(len(text)))
	for b.Loop() {
		if _, err := ReadEPW(strings.NewReader(text), "x.epw"); err != nil {
			b.Fatal(err)
		}
	}
}
