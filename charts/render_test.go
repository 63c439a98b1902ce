package charts

import (
	"bytes"
	"image/png"
	"runtime"
	"sync"
	"testing"

	"gonum.org/v1/plot/vg"
)

func pngOf(t testing.TB, c *Chart) []byte {
	t.Helper()
	data, err := c.PNG()
	if err != nil {
		t.Fatal(err)
	}
	return data
}

func TestPNG(t *testing.T) {
	for _, c := range drawn(t, everything(t)) {
		img, err := png.Decode(bytes.NewReader(pngOf(t, &c)))
		if err != nil {
			t.Fatalf("%s: %v", c.Name, err)
		}
		size := img.Bounds().Size()
		wide, high := width.Dots(dpi), c.height.Dots(dpi)
		// Whole dots.
		if float64(size.X) < wide-1 || float64(size.X) > wide+1 || float64(size.Y) < high-1 || float64(size.Y) > high+1 {
			t.Errorf("%s is %v, want %.0f x %.0f", c.Name, size, wide, high)
		}
		if r, g, b, _ := img.At(0, 0).RGBA(); r != 0xFFFF || g != 0xFFFF || b != 0xFFFF {
			t.Errorf("%s is not on white", c.Name)
		}
	}
}

// TestSameBytes makes every chart on one core and again on two, all at once.
func TestSameBytes(t *testing.T) {
	doc := everything(t)
	defer runtime.GOMAXPROCS(runtime.GOMAXPROCS(1))
	first := rendered(t, drawn(t, doc))
	runtime.GOMAXPROCS(2)
	for name, data := range rendered(t, drawn(t, doc)) {
		if !bytes.Equal(data, first[name]) {
			t.Errorf("%s differs on two cores", name)
		}
	}
}

func rendered(t *testing.T, charts []Chart) map[string][]byte {
	out := map[string][]byte{}
	var lock sync.Mutex
	var wait sync.WaitGroup
	for i := range charts {
		wait.Add(1)
		go func() {
			defer wait.Done()
			c := &charts[i]
			p, s := pngOf(t, c), svgOf(t, c)
			lock.Lock()
			defer lock.Unlock()
			out[c.Name+".png"], out[c.Name+".svg"] = p, s
		}()
	}
	wait.Wait()
	return out
}

// TestBadDrawing holds that what goes wrong in the drawing library is an error.
func TestBadDrawing(t *testing.T) {
	c := all(t, home(t))[0]
	c.height = -vg.Centimeter
	if _, err := c.SVG(); err == nil {
		t.Error("a picture of negative height has no error")
	}
	if _, err := c.PNG(); err == nil {
		t.Error("a bitmap of negative height has no error")
	}
}

func BenchmarkAllCharts(b *testing.B) {
	doc := everything(b)
	for b.Loop() {
		for _, c := range drawn(b, doc) {
			pngOf(b, &c)
			svgOf(b, &c)
		}
	}
}
