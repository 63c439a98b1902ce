package workbook

import (
	"fmt"
	"strings"

	"github.com/xuri/excelize/v2"
)

// page is how a sheet is shown and printed.
type page struct {
	portrait  bool
	onePage   bool
	freeze    place // first cell that scrolls; zero for none
	titleRows int   // repeated on each printed page, from the top; zero for none
	titleCols int   // the same, from the left
	pagesWide int   // printed pages side by side; zero for one
	last      place // bottom right corner of what is printed
}

const paperA4 = 9

// lay sets up view and print.
func (s *sheet) lay(p page) {
	s.layout(p)
	s.freeze(p.freeze)
	s.headerFooter()
	s.printArea(p)
}

func (s *sheet) layout(p page) {
	paper, wide, high, orientation := paperA4, max(1, p.pagesWide), 0, "landscape"
	if p.portrait {
		orientation = "portrait"
	}
	if p.onePage {
		high = 1
	}
	f, fit, noGrid := s.book.file, true, false
	s.book.keep(f.SetPageLayout(s.name, &excelize.PageLayoutOptions{Size: &paper, Orientation: &orientation, FitToWidth: &wide, FitToHeight: &high}))
	s.book.keep(f.SetSheetProps(s.name, &excelize.SheetPropsOptions{FitToPage: &fit}))
	s.book.keep(f.SetSheetView(s.name, 0, &excelize.ViewOptions{ShowGridLines: &noGrid}))
	side, top, edge := 0.5, 0.75, 0.35
	s.book.keep(f.SetPageMargins(s.name, &excelize.PageLayoutMarginsOptions{Left: &side, Right: &side, Top: &top, Bottom: &top, Header: &edge, Footer: &edge}))
}

func (s *sheet) freeze(p place) {
	if p == (place{}) {
		return
	}
	pane := "bottomRight"
	switch {
	case p.col == 1:
		pane = "bottomLeft"
	case p.row == 1:
		pane = "topRight"
	}
	s.book.keep(s.book.file.SetPanes(s.name, &excelize.Panes{Freeze: true, XSplit: p.col - 1, YSplit: p.row - 1, TopLeftCell: p.String(), ActivePane: pane}))
}

// breakBefore starts a printed page with the empty row above a place, so that the
// repeated title stands clear.
func (s *sheet) breakBefore(p place) {
	s.book.keep(s.book.file.InsertPageBreak(s.name, place{1, p.row - 1}.String()))
}

// headerFooter names sheet, page and case. The digest is the program's own; a
// title could hold marks that a header reads as commands.
func (s *sheet) headerFooter() {
	const short = 12
	digest := s.book.comparison().CaseDigest
	s.book.keep(s.book.file.SetHeaderFooter(s.name, &excelize.HeaderFooterOptions{
		OddHeader: "&L&\"Arial,Regular\"&9Hot water: compact store or cylinder&R&\"Arial,Regular\"&9&A",
		OddFooter: fmt.Sprintf("&L&\"Arial,Regular\"&9Case %s&R&\"Arial,Regular\"&9Page &P of &N", digest[:min(short, len(digest))]),
	}))
}

func (s *sheet) printArea(p page) {
	define := func(name, refersTo string) {
		s.book.keep(s.book.file.SetDefinedName(&excelize.DefinedName{Name: name, RefersTo: refersTo, Scope: s.name}))
	}
	define("_xlnm.Print_Area", s.absolute(place{1, 1}, p.last))
	var titles []string
	if p.titleCols > 0 {
		last, err := excelize.ColumnNumberToName(p.titleCols)
		s.book.keep(err)
		titles = append(titles, fmt.Sprintf("%s$A:$%s", s.prefix(), last))
	}
	if p.titleRows > 0 {
		titles = append(titles, fmt.Sprintf("%s$1:$%d", s.prefix(), p.titleRows))
	}
	if len(titles) > 0 {
		define("_xlnm.Print_Titles", strings.Join(titles, ","))
	}
}
