package workbook

import (
	"bytes"
	"errors"
	"strconv"
)

// bulk is many plain rows of numbers at the foot of a sheet. They go into the file
// past the library, which would hold each cell on its own: tens of thousands of them
// would take longer than all else in the workbook.
type bulk struct {
	rows int
	row  func(i int) []cell // from left to right
}

// cell is a number in its place.
type cell struct {
	at    place
	style style
	value float64
}

// into puts the rows behind those of the sheet. The book gives the styles.
func (k bulk) into(sheet []byte, b *book) ([]byte, error) {
	if k.rows == 0 {
		return sheet, nil
	}
	const end = "</sheetData>"
	at := bytes.LastIndex(sheet, []byte(end))
	if at < 0 {
		return nil, errors.New("a sheet without rows has none to follow them")
	}
	const perCell = 48 // bytes, about
	out := make([]byte, 0, len(sheet)+k.rows*len(k.row(0))*perCell)
	out = append(out, sheet[:at]...)
	for i := range k.rows {
		cells := k.row(i)
		number := strconv.Itoa(cells[0].at.row)
		out = append(append(append(out, `<row r="`...), number...), `">`...)
		for _, c := range cells {
			out = c.appendTo(out, number, b.style(c.style))
		}
		out = append(out, "</row>"...)
	}
	return append(out, sheet[at:]...), nil
}

// appendTo writes the cell. A number that is not finite shows as a gap.
func (c cell) appendTo(out []byte, row string, style int) []byte {
	out = append(append(append(out, `<c r="`...), columnName(c.at.col)...), row...)
	out = strconv.AppendInt(append(out, `" s="`...), int64(style), 10)
	out = append(out, `">`...)
	if isFinite(c.value) {
		out = append(appendNumber(append(out, "<v>"...), c.value), "</v>"...)
	}
	return append(out, "</c>"...)
}

// columnName is the letter of one of the first columns.
func columnName(col int) string { return string(rune('A' + col - 1)) }

// appendNumber writes a number to fifteen digits and drops the rest, as the library
// does: a spreadsheet holds no more.
func appendNumber(out []byte, v float64) []byte {
	const most = 15
	from := len(out)
	out = strconv.AppendFloat(out, v, 'f', -1, 64)
	point := bytes.IndexByte(out[from:], '.')
	if point < 0 {
		return out
	}
	digits := 0
	for i := from; i < len(out); i++ {
		if c := out[i]; c < '0' || c > '9' || digits == 0 && c == '0' {
			continue
		}
		if digits++; digits == most && i >= from+point {
			return out[:i+1]
		}
	}
	return out
}
