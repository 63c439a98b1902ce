package workbook

import (
	"strings"

	"github.com/xuri/excelize/v2"
)

// look is what a cell is, which decides how it is shown. The looks differ in
// slant, weight and frame too, so that they hold in grey print.
type look int

const (
	sentence     look = iota // text that runs on over empty cells
	unit                     // beside a number
	given                    // text that somebody else wrote
	givenHeading             // the same, as the heading of a block
	title                    // of a sheet
	heading                  // of a block
	columnTop                // of a column
	topLeft                  // of a block of columns, over empty ones
	label                    // of a row
	note                     // small print
	prose                    // wrapped text
	verdict                  // the answer
	input                    // may be changed
	locked                   // needs a new simulation
	lockedText               // the same, text that somebody else wrote
	simulated                // comes from the simulation
	derived                  // a formula
	total                    // a formula that adds up
	rightFigure              // a formula that may give a word
	strong                   // a formula that matters most
	strongRight              // the same, or a word in its place
	rightText                // words in a column of numbers
	outcome                  // a finding in words
	answer                   // the same, to the left
	jump                     // leads to another sheet
	keyCompact               // names an option in its colour
	keyCylinder
)

// foreign reports whether cells of the look may hold text that somebody else
// wrote, so that the cell has to stay text when it is edited.
func (l look) foreign() bool {
	switch l {
	case sentence, unit, given, givenHeading, columnTop, label, note, prose, verdict, lockedText:
		return true
	}
	return false
}

// style is a look with a number format.
type style struct {
	look   look
	format string
}

const (
	fontName = "Arial"
	fontSize = 10

	inkColour    = "1A1A1A"
	paperColour  = "FFFFFF"
	softColour   = "595959"
	accentColour = "12436D"
	inputFill    = "FFF6D6"
	lockedFill   = "E7E6E6"
	headFill     = "DCE3EA"
	shortFill    = "F2D3BC"
	frameColour  = "7F7F7F"
	hairColour   = "BFBFBF"
)

// spec builds what the library wants to know of a style.
func (s style) spec() *excelize.Style {
	font := &excelize.Font{Family: fontName, Size: fontSize, Color: inkColour}
	out := &excelize.Style{Font: font, Alignment: &excelize.Alignment{Vertical: "center"}, Protection: &excelize.Protection{Locked: true}}
	if s.format != "" {
		format := s.format
		out.CustomNumFmt = &format
	}
	s.look.apply(out)
	return out
}

func (l look) apply(out *excelize.Style) {
	switch l {
	case title:
		out.Font.Bold, out.Font.Size, out.Font.Color = true, 15, accentColour
	case heading, givenHeading:
		out.Font.Bold, out.Font.Size, out.Font.Color = true, 11, accentColour
	case columnTop:
		out.Font.Bold = true
		out.Fill = solid(headFill)
		out.Border = borders(hairColour, 1, "bottom", "top")
		out.Alignment = &excelize.Alignment{Vertical: "center", Horizontal: "center", WrapText: true}
	case topLeft:
		columnTop.apply(out)
		out.Alignment = &excelize.Alignment{Vertical: "center"}
	case note:
		out.Font.Size, out.Font.Color = 9, softColour
		wrap(out)
	case prose:
		wrap(out)
	case given:
		out.Alignment.WrapText = true
	case unit:
		indent(out)
	case verdict:
		out.Font.Bold, out.Font.Size = true, 11
		wrap(out)
	default:
		l.applyValue(out)
	}
}

func (l look) applyValue(out *excelize.Style) {
	switch l {
	case label:
		out.Alignment.WrapText = true
	case input:
		out.Font.Bold = true
		out.Fill = solid(inputFill)
		out.Border = borders(inkColour, 2, "left", "right", "top", "bottom")
		out.Protection.Locked = false
	case locked:
		out.Fill = solid(lockedFill)
		out.Border = borders(hairColour, 1, "left", "right", "top", "bottom")
	case lockedText:
		locked.apply(out)
		out.Alignment = &excelize.Alignment{Vertical: "center", Horizontal: "right", WrapText: true}
	case simulated:
		out.Font.Italic = true
	case total:
		out.Font.Bold = true
		out.Border = borders(frameColour, 1, "top")
	case answer:
		out.Font.Bold = true
		out.Alignment.Horizontal = "left"
	case jump:
		out.Font.Color, out.Font.Underline = accentColour, "single"
		indent(out)
	case keyCompact, keyCylinder:
		out.Font.Bold = true
		out.Fill = solid(optionColour(int(l - keyCompact)))
		if l == keyCylinder {
			out.Font.Color = paperColour
		}
		out.Alignment.Horizontal = "center"
	case rightFigure:
		out.Alignment.Horizontal = "right"
	case strong, strongRight:
		out.Font.Bold = true
		out.Alignment.Horizontal = "right"
	case rightText:
		out.Font.Italic = true
		out.Alignment.Horizontal = "right"
	case outcome:
		out.Font.Bold = true
		out.Alignment = &excelize.Alignment{Vertical: "center", Horizontal: "center", WrapText: true}
	}
}

// indent sets text off from the number to its left.
func indent(out *excelize.Style) {
	out.Alignment.Horizontal, out.Alignment.Indent = "left", 1
}

func wrap(out *excelize.Style) {
	out.Alignment = &excelize.Alignment{Vertical: "top", WrapText: true}
}

func solid(colour string) excelize.Fill {
	return excelize.Fill{Type: "pattern", Pattern: 1, Color: []string{colour}}
}

func borders(colour string, weight int, edges ...string) []excelize.Border {
	var out []excelize.Border
	for _, e := range edges {
		out = append(out, excelize.Border{Type: e, Color: colour, Style: weight})
	}
	return out
}

// Number formats. Units stand in a column or a heading of their own.
const (
	formatWhole   = "#,##0"
	formatOne     = "#,##0.0"
	formatTwo     = "#,##0.00"
	formatRate    = "0.0000"
	formatPercent = "0 %"
	formatShare   = "0.0 %"
	formatTime    = "hh:mm"
	formatTiny    = "0.0E+00"
	formatFine    = "#,##0.000000"
	formatAny     = "General"
)

// decimals is the format with so many decimals.
func decimals(n int) string {
	switch n {
	case 0:
		return formatWhole
	case 1:
		return formatOne
	case 2:
		return formatTwo
	default:
		return formatRate
	}
}

// blankZero is the format of a figure that is mostly nothing.
func blankZero(format string) string { return format + ";-" + format + ";" }

// signed is the format of a difference: it shows the sign, but none where the
// difference rounds to nothing.
func signed(format string) string {
	half := map[string]string{
		formatWhole: "0.5", formatOne: "0.05", formatTwo: "0.005", formatRate: "0.00005", formatPercent: "0.005", formatShare: "0.0005",
	}[format]
	if half == "" {
		return format // of no figure that has differences
	}
	return "[>=" + half + "]+" + format + ";[<=-" + half + "]-" + format + ";" + strings.TrimPrefix(format, "#,##")
}

// optionColour is the colour of an option in charts, the same as in the pictures
// of the comparison: copper and night blue, more than 3:1 apart in lightness, so
// that they hold in grey print.
func optionColour(side int) string {
	const copper, nightBlue = "D4752A", "2B2F77"
	if side == 0 {
		return copper
	}
	return nightBlue
}
