package charts

import (
	"fmt"
	"image"
	"image/color"
	paint "image/draw"
	"math"

	"git.sr.ht/~sbinet/gg"
	xfont "golang.org/x/image/font"
	"golang.org/x/image/math/fixed"
	"gonum.org/v1/plot/font"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"
	"gonum.org/v1/plot/vg/vgimg"
)

// dpi of the PNG: twice that of a screen.
const dpi = 192

// PNG renders the chart as a bitmap.
func (c Chart) PNG() ([]byte, error) {
	var b *bitmap
	err := c.guard(func() {
		b = newBitmap(width, c.height)
		c.drawOnPaper(draw.NewCanvas(b, width, c.height))
	})
	if err != nil {
		return nil, err
	}
	data, err := encodePNG(b.picture)
	if err != nil {
		return nil, fmt.Errorf("chart %s: %w", c.Name, err)
	}
	return data, nil
}

// bitmap is the library's canvas with words of our own: it makes the letters of a font
// ready once, not for each line, and sets them upright only.
type bitmap struct {
	*vgimg.Canvas
	picture *image.RGBA
	height  vg.Length
	faces   map[font.Font]xfont.Face
	colour  []color.Color // of the drawing in hand, the latest last
}

// newBitmap is a blank sheet of paper. A size that is none is a panic, as it is of the
// library.
func newBitmap(wide, high vg.Length) *bitmap {
	if wide <= 0 || high <= 0 {
		panic("a picture needs a width and a height")
	}
	picture := image.NewRGBA(image.Rect(0, 0, dots(wide), dots(high)))
	context := gg.NewContextForRGBA(picture)
	context.SetLineCapButt()
	context.InvertY() // heights count from the foot
	b := &bitmap{picture: picture, height: high, faces: map[font.Font]xfont.Face{}, colour: []color.Color{color.Black}}
	b.Canvas = vgimg.NewWith(vgimg.UseImageWithContext(picture, context), vgimg.UseDPI(dpi))
	paint.Draw(picture, picture.Rect, image.NewUniform(rgb(paperHex)), image.Point{}, paint.Src)
	return b
}

// dots is a length in whole dots.
func dots(l vg.Length) int { return int(l.Dots(dpi) + 0.5) }

// SetColor is the library's; letters need the colour too.
func (b *bitmap) SetColor(c color.Color) {
	b.Canvas.SetColor(c)
	b.colour[len(b.colour)-1] = c
}

// Push keeps the state of the drawing.
func (b *bitmap) Push() {
	b.Canvas.Push()
	b.colour = append(b.colour, b.colour[len(b.colour)-1])
}

// Pop goes back to the state before.
func (b *bitmap) Pop() {
	b.Canvas.Pop()
	b.colour = b.colour[:len(b.colour)-1]
}

// Rotate is not for letters, which would stay upright: a panic of the drawing becomes an
// error.
func (b *bitmap) Rotate(float64) { panic("a picture has no turned words") }

// FillString writes a line of letters.
func (b *bitmap) FillString(f font.Face, at vg.Point, text string) {
	if f.Font.Size == 0 {
		return
	}
	face := b.faces[f.Font]
	if face == nil {
		face = f.FontFace(dpi)
		b.faces[f.Font] = face
	}
	to26_6 := func(l vg.Length) fixed.Int26_6 { return fixed.Int26_6(math.Round(l.Dots(dpi) * 64)) }
	line := xfont.Drawer{
		Dst: b.picture, Src: image.NewUniform(b.colour[len(b.colour)-1]), Face: face,
		Dot: fixed.Point26_6{X: to26_6(at.X), Y: to26_6(b.height - at.Y)},
	}
	line.DrawString(text)
}
