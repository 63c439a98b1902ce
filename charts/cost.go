package charts

import (
	"fmt"
	"math"
	"strings"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"dhwcompare/compare"
)

// mostTariffs fit a page.
const mostTariffs = 10

// costs is the picture of what each option costs: bars on the left, and on the
// right their difference with its interval, which is far narrower than that of
// either bar, since both options meet the same years.
type costs struct {
	bars     pairs
	list     []compare.TariffCost
	interval bool
}

func costChart(cmp *compare.Comparison) Chart {
	k := costs{bars: pairs{unit: currencyName(cmp) + " a year"}, list: cmp.Tariffs, interval: cmp.Years > 1}
	k.list = k.list[:min(len(k.list), mostTariffs)]
	for i := range k.list {
		t := &k.list[i]
		row := pair{label: plain(t.Name)}
		for _, side := range bothSides() {
			row.values[side], row.texts[side] = t.Of(side).Cost, money(cmp, t.Of(side).Cost)
		}
		k.bars.rows = append(k.bars.rows, row)
	}
	return Chart{
		Name:     "cost-by-tariff",
		Title:    costTitle(cmp),
		Alt:      k.inWords(cmp),
		subtitle: k.subtitle(cmp),
		caption:  meanYears(cmp),
		height:   pairsHeight(len(k.list)) + vg.Points(headRoom+lineHeight*textSize),
		body:     k.draw,
	}
}

func currencyName(cmp *compare.Comparison) string { return strings.TrimSpace(currency(cmp)) }

// costTitle follows the verdict's finding on the first tariff.
func costTitle(cmp *compare.Comparison) string {
	gap := money(cmp, math.Abs(cmp.Difference.CostPerYear))
	switch cmp.Verdict.Cost {
	case compare.CostNotCompared:
		return "Running costs cannot be compared: an option that runs cold only looks cheap"
	case compare.CostNoDifference:
		return "No real difference in running cost"
	case compare.CostCompactLess:
		return fmt.Sprintf("Hot water costs %s a year less with the compact store", gap)
	case compare.CostCylinderLess:
		return fmt.Sprintf("Hot water costs %s a year less with the cylinder", gap)
	default:
		return "The simulated years do not settle which option costs less to run"
	}
}

func (k *costs) subtitle(cmp *compare.Comparison) string {
	text := "Electricity for hot water on each tariff, without the standing charge."
	if k.interval {
		text += " Right: the difference, with the 90 % interval of its mean."
	}
	if hidden := len(cmp.Tariffs) - len(k.list); hidden > 0 {
		text += fmt.Sprintf(" %d more tariffs are not drawn.", hidden)
	}
	return text
}

func (k *costs) inWords(cmp *compare.Comparison) string {
	list := []string{"Paired bars, cost a year. " + k.bars.inWords()}
	for i := range k.list {
		t := &k.list[i]
		text := fmt.Sprintf("Difference on %s: %s", plain(t.Name), signed(t.Difference, 0))
		if k.interval {
			text += fmt.Sprintf(" (90 %% interval %s to %s)", signed(t.DifferenceOver.CILow, 0), signed(t.DifferenceOver.CIHigh, 0))
		}
		list = append(list, text+".")
	}
	return strings.Join(list, " ")
}

const (
	gapShare  = 0.34 // of the width, for the difference
	gapMargin = 10.0 // between the two
	dotRadius = 2.0
)

func (k *costs) draw(c draw.Canvas) {
	if len(k.list) == 0 {
		empty(c, "no tariff in the case")
		return
	}
	gap := c.Size().X * gapShare
	head := step(textSize)
	left := draw.Crop(c, 0, -gap-gapMargin, 0, -head)
	right := draw.Crop(c, c.Size().X-gap, 0, 0, -head)
	style := aligned(words(textSize, rgb(inkHex)), draw.XCenter, draw.YTop)
	put(c, style, vg.Point{X: right.Center().X, Y: c.Max.Y}, "compact store against cylinder")
	k.bars.draw(left)
	k.differences(right)
}

// differences draws the right half, row for row beside the bars.
func (k *costs) differences(c draw.Canvas) {
	p := rowPlot(make([]string, len(k.list)))
	low, high := k.reach()
	p.X.Min, p.X.Max = low, high
	p.X.Tick.Marker = marksThatFit(low, high, c.Size().X, signed)
	p.Add(drawing(gridUp), drawing(originUp), drawing(k.dots))
	muted := words(textSize, rgb(mutedHex))
	put(c, aligned(muted, draw.XLeft, draw.YBottom), c.Min, "← costs less")
	put(c, aligned(muted, draw.XRight, draw.YBottom), vg.Point{X: c.Max.X, Y: c.Min.Y}, "costs more →")
	p.Draw(draw.Crop(c, 0, 0, step(textSize), 0))
}

// aroundGap is kept free on either side of the differences, of their reach.
const aroundGap = 0.3

// reach gives the ends of the axis of differences, zero among them.
func (k *costs) reach() (low, high float64) {
	for i := range k.list {
		l, h := k.ends(i)
		low, high = min(low, l), max(high, h)
	}
	around := aroundGap * (high - low)
	if around == 0 {
		around = 1
	}
	return low - around, high + around
}

func (k *costs) ends(row int) (low, high float64) {
	t := &k.list[row]
	if !k.interval {
		return t.Difference, t.Difference
	}
	return t.DifferenceOver.CILow, t.DifferenceOver.CIHigh
}

func (k *costs) dots(c draw.Canvas, p *plot.Plot) {
	x, y := p.Transforms(&c)
	for i := range k.list {
		at := y(-float64(i))
		low, high := k.ends(i)
		s := line(rgb(inkHex), whiskerWidth)
		c.StrokeLine2(s, x(low), at, x(high), at)
		if high > low {
			c.StrokeLine2(s, x(low), at-capWidth/2, x(low), at+capWidth/2)
			c.StrokeLine2(s, x(high), at-capWidth/2, x(high), at+capWidth/2)
		}
		glyph := draw.GlyphStyle{Color: rgb(inkHex), Radius: dotRadius, Shape: draw.CircleGlyph{}}
		c.DrawGlyphNoClip(glyph, vg.Point{X: x(k.list[i].Difference), Y: at})
		k.write(c, i, vg.Point{X: x(k.list[i].Difference), Y: at + dotRadius + 1})
	}
}

// write puts the difference and its interval over its dot, and keeps them inside.
func (k *costs) write(c draw.Canvas, row int, at vg.Point) {
	text := signed(k.list[row].Difference, 0)
	if low, high := k.ends(row); high > low {
		text += fmt.Sprintf(" (%s to %s)", signed(low, 0), signed(high, 0))
	}
	style := aligned(words(textSize, rgb(inkHex)), draw.XCenter, draw.YBottom)
	half := style.Width(text) / 2
	at.X = min(max(at.X, c.Min.X+half), c.Max.X-half)
	box(c, rgb(paperHex), at.X-half, at.Y, at.X+half, at.Y+step(textSize))
	put(c, style, at, text)
}

// empty says in the middle of a picture why there is nothing in it.
func empty(c draw.Canvas, why string) {
	put(c, aligned(words(textSize, rgb(mutedHex)), draw.XCenter, draw.YCenter), c.Center(), why)
}
