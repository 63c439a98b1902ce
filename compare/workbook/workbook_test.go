package workbook

import (
	"archive/zip"
	"bytes"
	"fmt"
	"io"
	"regexp"
	"strings"
	"testing"
)

func TestTheSameDocumentGivesTheSameBytes(t *testing.T) {
	first := baseBook(t)
	for range 2 { // parts and content types come in random order unless sorted
		if !bytes.Equal(first, written(t, baseDocument(t))) {
			t.Fatal("two workbooks of one document differ")
		}
	}
	const limit = 5 << 20
	if len(first) > limit {
		t.Errorf("%d bytes, more than %d", len(first), limit)
	}
}

// parts unpacks a workbook.
func parts(t *testing.T, data []byte) map[string]string {
	t.Helper()
	z, err := zip.NewReader(bytes.NewReader(data), int64(len(data)))
	must(t, err)
	out := map[string]string{}
	for _, f := range z.File {
		r, err := f.Open()
		must(t, err)
		text, err := io.ReadAll(r)
		must(t, err)
		out[f.Name] = string(text)
	}
	return out
}

func TestEveryFormulaHasAValueOfItsType(t *testing.T) {
	cell := regexp.MustCompile(`<c r="[A-Z]+[0-9]+"(?: s="[0-9]+")?( t="(?:str|b)")?><f>[^<]+</f><v>([^<]*)</v></c>`)
	number := regexp.MustCompile(`^-?[0-9.]+(e[+-][0-9]+)?$`)
	formulas, filled := 0, 0
	for name, text := range parts(t, baseBook(t)) {
		if !strings.HasPrefix(name, "xl/worksheets/") {
			continue
		}
		formulas += strings.Count(text, "<f>") + strings.Count(text, "<f ")
		for _, m := range cell.FindAllStringSubmatch(text, -1) {
			filled++
			if m[1] == "" && !number.MatchString(m[2]) {
				t.Errorf("%s: %s has no number beside it", name, m[0])
			}
		}
	}
	if formulas < 2000 || formulas != filled {
		t.Errorf("%d formulas, %d values beside them", formulas, filled)
	}
}

func TestAFormulaWithoutValueIsAnError(t *testing.T) {
	sheet := []byte(`<c r="A1" s="3" t="str"><f>B1</f></c><c r="A2" t="str"><f>B2</f></c>`)
	got, err := fillCaches("sheet", sheet, map[string]any{"A1": 1.5, "A2": `a<b`})
	must(t, err)
	if want := `<c r="A1" s="3"><f>B1</f><v>1.5</v></c><c r="A2" t="str"><f>B2</f><v>a&lt;b</v></c>`; string(got) != want {
		t.Errorf("got %s", got)
	}
	if _, err := fillCaches("sheet", sheet, map[string]any{"A1": 1.5}); err == nil || !strings.Contains(err.Error(), "2 formulas but 1 values") {
		t.Errorf("error %v", err)
	}
}

// Numbers belong in cells with a name and a source, not in formulas. 0 and 1 are
// no quantities.
func TestNoNumberHidesInAFormula(t *testing.T) {
	quoted := regexp.MustCompile(`"[^"]*"|'[^']*'!`)
	number := regexp.MustCompile(`(?:^|[^A-Za-z0-9_.$])([0-9]+(?:\.[0-9]+)?(?:[eE][+-]?[0-9]+)?)`)
	for _, f := range formulaCells(t, open(t, variedBook(t))) {
		for _, m := range number.FindAllStringSubmatch(quoted.ReplaceAllString(f.text, "''"), -1) {
			if m[1] != "0" && m[1] != "1" {
				t.Errorf("%s!%s: %s holds %s", f.sheet, f.cell, f.text, m[1])
			}
		}
	}
}

func TestEveryCheckPasses(t *testing.T) {
	for name, data := range map[string][]byte{"two years": baseBook(t), "every kind of tariff": variedBook(t)} {
		f := open(t, data)
		rows, err := f.GetRows(checksName)
		must(t, err)
		passed := 0
		for _, row := range rows {
			if len(row) < checkResultCol {
				continue
			}
			switch row[checkResultCol-1] {
			case passWord:
				passed++
			case failWord, changedWord:
				t.Errorf("%s: %s", name, strings.Join(row, " | "))
			}
		}
		if passed < 150 {
			t.Errorf("%s: only %d checks pass", name, passed)
		}
		if got := raw(t, f, summaryName, beside(t, f, summaryName, "Checks of this workbook", 2)); got != "all pass" {
			t.Errorf("%s: the Summary says %q", name, got)
		}
	}
}

func TestAWrongFigureFailsItsChecks(t *testing.T) {
	doc := *baseDocument(t)
	wrong := *doc.Comparison
	wrong.Options.Cylinder.Months[3].VesselLossKWh += 0.01
	wrong.Options.Compact.Months[7].ElectricityByCause.Pump += 1e-5
	doc.Comparison = &wrong
	f := open(t, written(t, &doc))
	if got := raw(t, f, summaryName, beside(t, f, summaryName, "Checks of this workbook", 2)); got != "some FAIL" {
		t.Errorf("the Summary says %q", got)
	}
	for _, row := range []string{"Cylinder, Apr", "Compact store, Aug"} {
		failed := false
		rows, err := f.GetRows(checksName)
		must(t, err)
		for _, r := range rows {
			failed = failed || len(r) >= checkResultCol && r[0] == row && r[checkResultCol-1] == failWord
		}
		if !failed {
			t.Errorf("%s passes", row)
		}
	}
}

func TestSheetsAreReadyForPrint(t *testing.T) {
	f := open(t, baseBook(t))
	var names []string
	for _, e := range contents(baseDocument(t)) {
		names = append(names, e.name)
	}
	if got := f.GetSheetList(); strings.Join(got, "|") != strings.Join(names, "|") {
		t.Errorf("sheets %v", got)
	}
	areas := map[string]bool{}
	for _, n := range f.GetDefinedName() {
		if n.Name == "_xlnm.Print_Area" {
			areas[n.Scope] = true
		}
	}
	for _, sheet := range f.GetSheetList() {
		layout, err := f.GetPageLayout(sheet)
		must(t, err)
		if !areas[sheet] || layout.Size == nil || *layout.Size != paperA4 {
			t.Errorf("%s: print area %v, paper %v", sheet, areas[sheet], layout.Size)
		}
	}
	props, err := f.GetDocProps()
	must(t, err)
	if props.Creator != "dhwcompare" || props.Created != fixedTime || props.Modified != fixedTime {
		t.Errorf("properties %+v", props)
	}
	calc, err := f.GetCalcProps()
	must(t, err)
	if calc.FullCalcOnLoad == nil || !*calc.FullCalcOnLoad {
		t.Error("not calculated on loading")
	}
}

func TestOnlyInputsMayBeChanged(t *testing.T) {
	f := open(t, baseBook(t))
	validated := map[string]bool{}
	rules, err := f.GetDataValidations(assumptionsName)
	must(t, err)
	for _, r := range rules {
		validated[r.Sqref] = true
	}
	if len(validated) < 8 {
		t.Errorf("%d cells are validated", len(validated))
	}
	rows, err := f.GetRows(assumptionsName)
	must(t, err)
	for r := headRow; r < len(rows); r++ {
		cell := place{valueCol, r + 1}.String()
		id, err := f.GetCellStyle(assumptionsName, cell)
		must(t, err)
		st, err := f.GetStyle(id)
		must(t, err)
		if locked := st.Protection == nil || st.Protection.Locked; locked == validated[cell] {
			t.Errorf("%s: locked %v, validated %v", cell, locked, validated[cell])
		}
	}
	for i, e := range contents(baseDocument(t)) {
		text := parts(t, baseBook(t))[fmt.Sprintf("xl/worksheets/sheet%d.xml", i+1)]
		if keeps := e.name == assumptionsName || e.name == settingsName; keeps != strings.Contains(text, "<sheetProtection") {
			t.Errorf("%s: protected is not %v", e.name, keeps)
		}
	}
}

func TestChartsNameTheirUnitsAndCells(t *testing.T) {
	count := 0
	for name, text := range parts(t, baseBook(t)) {
		if !strings.HasPrefix(name, "xl/charts/chart") {
			continue
		}
		count++
		if strings.Count(text, "<f>") != 3*strings.Count(text, "<c:ser>")+3*strings.Count(text, "<ser>") { // name, categories and values of each
			t.Errorf("%s does not follow its cells", name)
		}
		if !regexp.MustCompile(`, (kWh|per|GBP|min|l/min)`).MatchString(text) {
			t.Errorf("%s: no unit in its title", name)
		}
	}
	if count < 14 {
		t.Errorf("%d charts", count)
	}
}

func TestADocumentWithoutComparisonIsRefused(t *testing.T) {
	if _, err := Write(nil); err == nil {
		t.Error("no document gives no error")
	}
}
