package charts

import (
	"image/color"
	"testing"

	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"
	"gonum.org/v1/plot/vg/vgimg"
)

// TestBitmapWritesAsTheLibrary: words stand where the library's own canvas puts them, in
// the same colour, to a shade that nobody sees.
func TestBitmapWritesAsTheLibrary(t *testing.T) {
	const wide, high, faint = 6 * vg.Centimeter, 2.03 * vg.Centimeter, 6
	ours := newBitmap(wide, high)
	theirs := vgimg.NewWith(vgimg.UseWH(wide, high), vgimg.UseDPI(dpi))
	for _, c := range []draw.Canvas{draw.NewCanvas(ours, wide, high), draw.New(theirs)} {
		put(c, words(textSize, rgb(inkHex)), vg.Point{X: 3.3, Y: 20.7}, "Waffle, 21 °C to 60 °C")
		c.Push()
		c.SetColor(rgb(failHex))
		put(c, bold(words(titleSize, rgb(compactTextHex))), vg.Point{X: 20.1, Y: 50.2}, "AVA £ 1,234")
		c.Pop()
		box(c, rgb(failHex), 100, 5, 120, 15)
	}
	if ours.picture.Rect != theirs.Image().Bounds() {
		t.Fatalf("%v, the library's is %v", ours.picture.Rect, theirs.Image().Bounds())
	}
	inked := 0
	for y := range ours.picture.Rect.Dy() {
		for x := range ours.picture.Rect.Dx() {
			got, want := ours.picture.RGBAAt(x, y), color.RGBAModel.Convert(theirs.Image().At(x, y)).(color.RGBA)
			for i, c := range [][2]uint8{{got.R, want.R}, {got.G, want.G}, {got.B, want.B}, {got.A, want.A}} {
				if max(c[0], c[1])-min(c[0], c[1]) > faint {
					t.Fatalf("dot %d, %d, channel %d: %d, the library has %d", x, y, i, c[0], c[1])
				}
			}
			if want.R < 0x80 {
				inked++
			}
		}
	}
	if inked < 500 {
		t.Errorf("only %d dots have ink", inked)
	}
}

// TestBitmapRefusesTurnedWords rather than set them upright.
func TestBitmapRefusesTurnedWords(t *testing.T) {
	c := Chart{Name: "turned", frame: frame{height: vg.Centimeter}, body: func(c draw.Canvas) {
		s := words(textSize, nil)
		s.Rotation = 1
		c.FillText(s, vg.Point{}, "words")
	}}
	if _, err := c.PNG(); err == nil {
		t.Error("words are turned in silence")
	}
}
