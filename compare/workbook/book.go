package workbook

import (
	"fmt"

	"dhwcompare/compare"

	"github.com/xuri/excelize/v2"
)

// book is the workbook while it is filled. The first error stays, and what comes
// after it has no effect.
type book struct {
	file   *excelize.File
	doc    *compare.Document
	sheets []*sheet
	styles map[style]int
	given  map[int]bool // styles that keep text text
	err    error

	inputs     *inputRefs
	months     *monthRefs
	bills      *billRefs
	years      *yearRefs
	risk       *riskRefs
	space      *spaceRefs
	draws      *drawRefs
	halves     *halfHourRefs
	costs      *costRefs
	spacePrice *spacePriceRefs
	finding    *findingRefs
	spells     []spellRef
	extra      []check // of the sheets that a document may lack
	overall    term    // result of all checks
}

func newBook(doc *compare.Document) *book {
	b := &book{file: excelize.NewFile(), doc: doc, styles: map[style]int{}, given: map[int]bool{}}
	b.keep(b.file.SetDefaultFont(fontName))
	for i, e := range contents(doc) {
		name := e.name
		if i == 0 {
			b.keep(b.file.SetSheetName("Sheet1", name))
		} else {
			_, err := b.file.NewSheet(name)
			b.keep(err)
		}
		b.sheets = append(b.sheets, newSheet(b, name))
	}
	return b
}

// keep remembers the first error.
func (b *book) keep(err error) {
	if b.err == nil {
		b.err = err
	}
}

func (b *book) sheet(name string) *sheet {
	for _, s := range b.sheets {
		if s.name == name {
			return s
		}
	}
	b.keep(fmt.Errorf("no sheet %q", name))
	return newSheet(b, name)
}

func (b *book) style(s style) int {
	if id, ok := b.styles[s]; ok {
		return id
	}
	id, err := b.file.NewStyle(s.spec())
	b.keep(err)
	b.styles[s] = id
	if s.look.foreign() {
		b.given[id] = true
	}
	return id
}

// name gives a cell a name for formulas. The name is the program's own, never
// one that somebody else wrote.
func (b *book) name(name string, cell term, absolute string) term {
	b.keep(b.file.SetDefinedName(&excelize.DefinedName{Name: name, RefersTo: absolute}))
	return term{text: name, value: cell.value}
}

// comparison is what the workbook shows.
func (b *book) comparison() *compare.Comparison { return b.doc.Comparison }

// sideOrder lists the options in the order in which they always appear.
func sideOrder() []compare.Side { return []compare.Side{compare.SideCompact, compare.SideCylinder} }
