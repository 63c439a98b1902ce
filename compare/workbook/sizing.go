package workbook

import (
	"fmt"
	"slices"
	"strings"

	"dhwcompare/compare"
	"dhwcompare/compare/wording"

	"github.com/xuri/excelize/v2"
)

// Columns of the tables of sizes: how the option is set up, what it takes, the
// trial, then what it stands for.
const (
	sizeSpaceCol = 8
	sizeTrialCol = sizeSpaceCol + 1
	sizeCostCol  = sizeTrialCol + 4 // of the trial
	sizeMoreCol  = sizeTrialCol + trialCols
	sizeLastCol  = sizeMoreCol + 2
)

// sizeRefs are the sizes of one option as they stand on the sheet.
type sizeRefs struct{ first, last place }

func (b *book) writeSizing() {
	s, d := b.sheet(sizingName), b.doc.Sizing
	s.head("Sizing: the best compact store against the best cylinder", "Sizes and settings that keep the service rule over all years. Best of its kind: no other is at least as good in cost, failing showers, space and runs, and better in one.")
	s.frozenNote(place{1, 3})
	s.text(place{1, 5}, label, "Settings tried")
	s.number(place{2, 5}, style{simulated, formatWhole}, float64(d.Tried))
	s.text(place{3, 5}, sentence, fmt.Sprintf("of both options, screened on %d years; what is listed was confirmed on %d.", d.ScreenYears, d.ConfirmYears))
	s.widths(14)
	s.columnWidth(2, sizeLastCol-1, 9.5)
	s.columnWidth(sizeLastCol, sizeLastCol, 20)
	s.text(place{1, 6}, sentence, "A size that serves only with a flow limiter which the case does not have is chosen where no other serves.")
	at := place{1, 8}
	var refs [2]sizeRefs
	for side := range sideOrder() {
		refs[side], at = s.sizes(side, d.Of(compare.Side(side)), at)
	}
	s.breakBefore(at)
	at = s.headToHead(d.HeadToHead, at)
	at = s.sizeChart(refs, at)
	s.lay(page{titleRows: 2, last: place{sizeLastCol, at.row}})
}

// sizes lists one option's sizes and gives the place below.
func (s *sheet) sizes(side int, r *compare.SizingResult, at place) (sizeRefs, place) {
	s.text(at, heading, "Sizes that serve: "+blockName(side))
	heads := append([]string{"Volume, l", "Setpoint, °C", "Setpoint in summer, °C", "Hysteresis, K", "Output cap", "Shower limiter, l/min", "Floor, m²", "Cupboard, l"}, s.book.trialTops()...)
	s.tops(at.down(1), 70, append(heads, "Cost less that of the cheapest, "+s.book.currency(), "Cupboard less that of the smallest, l", "Chosen as")...)
	refs := sizeRefs{first: at.down(2), last: at.down(1)}
	for i := range r.Sizes {
		refs.last = refs.last.down(1)
		s.size(&r.Sizes[i], r, refs.last)
	}
	s.against(r.Cheapest, r, refs.first, sizeCostCol, place{sizeMoreCol, refs.first.row}, formatTwo)
	s.against(r.Smallest, r, refs.first, sizeSpaceCol, place{sizeMoreCol + 1, refs.first.row}, formatWhole)
	p := refs.last.down(1)
	for _, text := range sizingNotes(r) {
		s.text(p, sentence, text)
		p = p.down(1)
	}
	return refs, p.down(1)
}

// against writes how far a column of each size lies from that of the one chosen.
func (s *sheet) against(chosen *compare.Size, r *compare.SizingResult, first place, col int, to place, format string) {
	i := slices.IndexFunc(r.Sizes, func(z compare.Size) bool { return sameSize(&z, chosen) })
	if i < 0 {
		return
	}
	figure := func(n int) term {
		p := place{col, first.row + n}
		return s.ref(p, s.numbers[p])
	}
	for n := range r.Sizes {
		s.live(to.down(n), style{derived, signed(format)}, minus(figure(n), figure(i)))
	}
}

// sizingNotes say which volumes are not in the table, and why.
func sizingNotes(r *compare.SizingResult) []string {
	var out []string
	if r.Note != "" {
		out = append(out, told(r.Note))
	}
	if len(r.TooLarge) > 0 {
		out = append(out, "Too large for the room, with what stands beside: "+litres(r.TooLarge)+".")
	}
	if len(r.Failing) > 0 {
		out = append(out, "Keeping the service rule at no setting tried: "+litres(r.Failing)+".")
	}
	return out
}

func litres(list []float64) string {
	texts := make([]string, len(list))
	for i, v := range list {
		texts[i] = wording.Sprintf("%.0f l", v)
	}
	return strings.Join(texts, ", ")
}

func (s *sheet) size(z *compare.Size, r *compare.SizingResult, p place) {
	s.number(p, style{simulated, formatWhole}, z.VolumeL)
	for i, v := range []float64{z.SetpointC, z.SummerC, z.HysteresisK} {
		s.number(p.right(1+i), style{simulated, formatOne}, v)
	}
	s.number(p.right(4), style{simulated, formatPercent}, z.OutputCap)
	s.numberOrNone(p.right(5), formatOne, z.ShowerLimit, z.ShowerLimit > 0)
	s.number(p.right(6), style{simulated, formatTwo}, z.FloorAreaM2)
	s.number(p.right(7), style{simulated, formatWhole}, z.SpaceL)
	s.trial(place{sizeTrialCol, p.row}, &z.Trial, "Sizing, "+p.String())
	s.text(place{sizeLastCol, p.row}, outcome, standing(z, r))
}

// standing says what a size is chosen for.
func standing(z *compare.Size, r *compare.SizingResult) string {
	cheapest, smallest := sameSize(z, r.Cheapest), sameSize(z, r.Smallest)
	switch {
	case cheapest && smallest:
		return "cheapest and smallest"
	case cheapest:
		return "cheapest"
	case smallest:
		return "smallest"
	case z.NonDominated:
		return "best of its kind"
	}
	return ""
}

// sameSize reports whether two sizes are the same way to set an option up.
func sameSize(a, b *compare.Size) bool {
	return b != nil && a.VolumeL == b.VolumeL && a.SetpointC == b.SetpointC && a.SummerC == b.SummerC &&
		a.HysteresisK == b.HysteresisK && a.OutputCap == b.OutputCap && a.ShowerLimit == b.ShowerLimit
}

// headToHead sets the two winners against each other.
func (s *sheet) headToHead(h *compare.HeadToHead, at place) place {
	if h == nil {
		s.text(at, sentence, "One option has no size that serves, so there are no two winners to compare.")
		return at.down(2)
	}
	s.text(at, heading, "Best against best, over the same years")
	p := at
	row := func(words, unitText, format string, v float64) term {
		p = p.down(1)
		s.text(p, sentence, words)
		s.text(p.right(5), unit, unitText)
		return s.number(p.right(4), style{simulated, format}, v)
	}
	money := s.book.currency()
	row("Compact store, volume", "l", formatWhole, h.CompactVolumeL)
	row("Cylinder, volume", "l", formatWhole, h.CylinderVolumeL)
	cost := row("Difference in cost a year, mean", money, signed(formatTwo), h.Cost.Mean)
	row("90 % interval, low", money, signed(formatTwo), h.Cost.CILow)
	row("90 % interval, high", money, signed(formatTwo), h.Cost.CIHigh)
	litres := row("Cupboard freed", "l", signed(formatWhole), h.SpaceFreedL)
	floor := row("Floor freed", "m²", signed(formatTwo), h.FloorFreedM2)
	for _, l := range []struct {
		words, unit string
		of          term
	}{{"Running cost of a litre freed", money + " a year", litres}, {"Running cost of a square metre freed", money + " a year", floor}} {
		p = p.down(1)
		s.text(p, sentence, l.words)
		s.text(p.right(5), unit, l.unit)
		freed := compared(l.of, ">", zero(), l.of.num() > 0)
		s.live(p.right(4), style{rightFigure, signed(formatTwo)}, choose(freed, safeQuotient(cost, l.of), words(noneWord)))
	}
	return p.down(2)
}

// sizeChart draws cost against cupboard space, and gives the last row.
func (s *sheet) sizeChart(refs [2]sizeRefs, at place) place {
	var series []excelize.ChartSeries
	for side, r := range refs {
		if r.last.row < r.first.row {
			continue
		}
		one := s.optionSeries(side, s.absolute(place{sizeSpaceCol, r.first.row}, place{sizeSpaceCol, r.last.row}),
			s.absolute(place{sizeCostCol, r.first.row}, place{sizeCostCol, r.last.row}))
		one.Line = excelize.LineOptions{Type: excelize.LineNone}
		one.Marker = excelize.ChartMarker{Symbol: []string{"circle", "diamond"}[side], Size: 8, Fill: solid(optionColour(side))}
		series = append(series, one)
	}
	if len(series) == 0 {
		return at
	}
	s.drawChart(at, chart{title: "Cost, " + s.book.currency() + " a year, against cupboard space, l", kind: excelize.Scatter, width: 760, height: 330,
		description: "Cost of electricity of each size that serves, against the cupboard that it takes"}, series)
	const chartSpace = 17 // rows
	return at.down(chartSpace)
}
