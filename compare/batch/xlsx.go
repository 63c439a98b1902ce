package batch

import (
	"fmt"
	"io"
	"strconv"
	"unicode/utf8"

	"github.com/xuri/excelize/v2"

	"dhwcompare/compare"
)

// xlsxSink writes the results as a workbook of one sheet, row by row.
type xlsxSink struct {
	out   io.Writer
	file  *excelize.File
	sheet *excelize.StreamWriter
	text  int // style of cells that stay text
	rows  int
	width int
}

const sheetName = "Results"

func newXLSX(w io.Writer, headings []string) (sink, error) {
	s := &xlsxSink{out: w, file: excelize.NewFile(), width: len(headings)}
	if err := s.set(headings); err != nil {
		return nil, fmt.Errorf("the workbook of results cannot be made: %w", err)
	}
	return s, nil
}

// set prepares the sheet. What is asked of it after the first row would be lost.
func (s *xlsxSink) set(headings []string) (err error) {
	const fixed = "2000-01-01T00:00:00Z" // the file tells no time
	const columnWidth, textFormat = 18, 49
	font := &excelize.Font{Family: "Arial", Size: 10}
	bold := &excelize.Font{Family: "Arial", Size: 10, Bold: true}
	if err = s.file.SetSheetName("Sheet1", sheetName); err != nil {
		return err
	}
	if err = s.file.SetDocProps(&excelize.DocProperties{
		Title: "Hot water of many homes: compact store or cylinder", Creator: "dhwcompare", LastModifiedBy: "dhwcompare",
		Created: fixed, Modified: fixed, Language: "en-GB", Version: compare.Schema,
	}); err != nil {
		return err
	}
	if s.text, err = s.file.NewStyle(&excelize.Style{Font: font, NumFmt: textFormat}); err != nil {
		return err
	}
	head, err := s.file.NewStyle(&excelize.Style{Font: bold, Alignment: &excelize.Alignment{WrapText: true, Vertical: "top"}})
	if err != nil {
		return err
	}
	if s.sheet, err = s.file.NewStreamWriter(sheetName); err != nil {
		return err
	}
	if err = s.sheet.SetColWidth(1, s.width, columnWidth); err != nil {
		return err
	}
	if err = s.sheet.SetPanes(&excelize.Panes{Freeze: true, XSplit: 1, YSplit: 1, TopLeftCell: "B2", ActivePane: "bottomRight"}); err != nil {
		return err
	}
	var cells []any
	for _, h := range headings {
		cells = append(cells, excelize.Cell{StyleID: head, Value: h})
	}
	const headHeight = 45
	s.rows = 1
	return s.sheet.SetRow("A1", cells, excelize.RowOpts{Height: headHeight})
}

func (s *xlsxSink) row(r *Result) error {
	s.rows++
	at, err := excelize.CoordinatesToCellName(1, s.rows)
	if err != nil {
		return err
	}
	cells := r.cells(s.width)
	for i, v := range cells {
		if text, is := v.(string); is {
			cells[i] = s.cell(i, r, text)
		}
	}
	return s.sheet.SetRow(at, cells)
}

// cell makes a cell of a text. What the table states as a number is one here too;
// all else, the id above all, stays text.
func (s *xlsxSink) cell(i int, r *Result, text string) any {
	if text == "" {
		return nil
	}
	if v, is := number(text); is && i > 0 && i <= len(r.Inputs) && strconv.FormatFloat(v, 'f', -1, 64) == text {
		return v // anything else, such as 007, loses something as a number
	}
	return excelize.Cell{StyleID: s.text, Value: cut(text)}
}

// cut shortens a text to what a cell can hold, by UTF-16 units at worst.
func cut(text string) string {
	const longest = 16_000
	if utf8.RuneCountInString(text) <= longest {
		return text
	}
	return string([]rune(text)[:longest]) + "..."
}

func (s *xlsxSink) end() error {
	if err := s.sheet.Flush(); err != nil {
		return fmt.Errorf("the workbook of results cannot be written: %w", err)
	}
	if err := s.file.Write(s.out); err != nil {
		return fmt.Errorf("the workbook of results cannot be written: %w", err)
	}
	return s.file.Close()
}
