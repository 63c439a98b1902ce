package charts

import (
	"bytes"
	"image"
	"image/color"
	"image/png"
	"math/rand/v2"
	"testing"
)

// TestEncodePNG holds that the general decoder reads the same dots, of pictures of any
// shape and of part of a picture.
func TestEncodePNG(t *testing.T) {
	chance := rand.New(rand.NewPCG(3, 4))
	whole := image.NewRGBA(image.Rect(0, 0, 97, 61))
	for i := range whole.Pix {
		whole.Pix[i] = byte(chance.IntN(256))
		if i%4 == 3 {
			whole.Pix[i] = 0xFF
		}
	}
	part := whole.SubImage(image.Rect(0, 0, 40, 20)).(*image.RGBA)
	for _, want := range []*image.RGBA{whole, part, image.NewRGBA(image.Rect(0, 0, 1, 1))} {
		data, err := encodePNG(want)
		if err != nil {
			t.Fatal(err)
		}
		got, err := png.Decode(bytes.NewReader(data))
		if err != nil {
			t.Fatal(err)
		}
		if got.Bounds() != want.Bounds() {
			t.Fatalf("%v instead of %v", got.Bounds(), want.Bounds())
		}
		for y := range want.Bounds().Dy() {
			for x := range want.Bounds().Dx() {
				d := want.RGBAAt(x, y)
				if dot := color.RGBAModel.Convert(got.At(x, y)); dot != (color.RGBA{d.R, d.G, d.B, 0xFF}) {
					t.Fatalf("dot %d, %d is %v instead of %v", x, y, dot, d)
				}
			}
		}
	}
}
