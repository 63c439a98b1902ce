package workbook

import (
	"bytes"
	"errors"
	"fmt"
	"io"

	"dhwcompare/compare"

	"github.com/xuri/excelize/v2"
)

// Write gives the bytes of the workbook of a comparison. The same document gives
// the same bytes.
func Write(doc *compare.Document) ([]byte, error) {
	if doc == nil || doc.Case == nil || doc.Comparison == nil {
		return nil, errors.New("workbook: the document lacks its case or its comparison")
	}
	b := newBook(doc)
	defer func() { _ = b.file.Close() }() // closes temporary files only; there are none
	b.fill()
	b.properties()
	if b.err != nil {
		return nil, fmt.Errorf("workbook: %w", b.err)
	}
	return b.bytes()
}

// fill writes the sheets in the order in which they depend on each other.
func (b *book) fill() {
	b.writeAssumptions()
	b.writeMonths()
	b.writeCauses()
	b.writeBills()
	b.writeCharts()
	b.writeYears()
	b.writeRisk()
	b.writeSpace()
	b.writeFinding()
	b.writeLifeCost()
	b.writeSpacePrice()
	b.writeOutlets()
	b.writeDraws()
	b.writeHalfHours()
	b.writeExtras()
	b.writeChecks()
	b.writeReasons()
	b.writeSummary()
	b.writeAbout()
}

// writeExtras writes the sheets for which a document may have nothing.
func (b *book) writeExtras() {
	for _, e := range []struct {
		name  string
		write func()
	}{
		{whyName, b.writeWhy}, {drawoffsName, b.writeDrawoffs}, {spellsName, b.writeSpells}, {alternativesName, b.writeAlternatives},
		{settingsName, b.writeSettings}, {showersName, b.writeShowers}, {sizingName, b.writeSizing}, {sensitivityName, b.writeSensitivity},
	} {
		if b.has(e.name) {
			e.write()
		}
	}
}

// fixedTime stands for every time that the format asks for: the file tells none.
const fixedTime = "2000-01-01T00:00:00Z"

func (b *book) properties() {
	b.keep(b.file.SetDocProps(&excelize.DocProperties{
		Title: "Hot water: compact store or cylinder", Subject: "Comparison of two ways to make hot water with a heat pump",
		Creator: "dhwcompare", LastModifiedBy: "dhwcompare", Created: fixedTime, Modified: fixedTime,
		Description: "Case " + b.comparison().CaseDigest, Language: "en-GB", Version: compare.Schema,
	}))
	b.keep(b.file.SetAppProps(&excelize.AppProperties{Application: "dhwcompare"}))
	yes := true
	b.keep(b.file.SetCalcProps(&excelize.CalcPropsOptions{FullCalcOnLoad: &yes}))
	b.file.SetActiveSheet(0)
}

func (b *book) bytes() ([]byte, error) {
	var out bytes.Buffer
	sheets := map[string]*sheet{}
	for i, s := range b.sheets {
		sheets[fmt.Sprintf("xl/worksheets/sheet%d.xml", i+1)] = s
	}
	b.file.SetZipWriter(func(w io.Writer) excelize.ZipWriter {
		return &archive{out: w, parts: map[string]*bytes.Buffer{}, sheets: sheets, given: b.given}
	})
	if err := b.file.Write(&out); err != nil {
		return nil, fmt.Errorf("workbook: %w", err)
	}
	return out.Bytes(), nil
}
