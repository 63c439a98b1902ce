package workbook

import (
	"bytes"
	"context"
	"fmt"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"testing"
	"time"

	"github.com/xuri/excelize/v2"
)

// recalculateAlways makes LibreOffice work out every formula on loading. Left to
// itself it shows the values stored beside the formulas, and a check proves
// nothing.
const recalculateAlways = `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
</oor:items>
`

// recalculate has LibreOffice open the workbooks, work out every formula and
// save them again. It skips the test where LibreOffice is not installed.
func recalculate(t *testing.T, books ...[]byte) []*excelize.File {
	t.Helper()
	office, err := exec.LookPath("soffice")
	if err != nil {
		t.Skip("LibreOffice is not installed (no soffice on PATH): formulas are not recalculated by a second program; install libreoffice-calc")
	}
	home, out := t.TempDir(), t.TempDir()
	profile := filepath.Join(home, "profile")
	must(t, os.MkdirAll(filepath.Join(profile, "user"), 0o755))
	must(t, os.WriteFile(filepath.Join(profile, "user", "registrymodifications.xcu"), []byte(recalculateAlways), 0o644))
	args := []string{"--headless", "--norestore", "-env:UserInstallation=file://" + profile, "--convert-to", "xlsx", "--outdir", out}
	for i, data := range books {
		path := filepath.Join(home, fmt.Sprintf("book%d.xlsx", i))
		must(t, os.WriteFile(path, data, 0o644))
		args = append(args, path)
	}
	ctx, stop := context.WithTimeout(t.Context(), 3*time.Minute) // 5 s as a rule; a hang must not outlast the test
	defer stop()
	cmd := exec.CommandContext(ctx, office, args...)
	cmd.Env = append(os.Environ(), "HOME="+home)
	if text, err := cmd.CombinedOutput(); err != nil {
		t.Fatalf("LibreOffice: %v\n%s", err, text)
	}
	var files []*excelize.File
	for i := range books {
		f, err := excelize.OpenFile(filepath.Join(out, fmt.Sprintf("book%d.xlsx", i)))
		must(t, err)
		t.Cleanup(func() { _ = f.Close() })
		files = append(files, f)
	}
	return files
}

func must(t testing.TB, err error) {
	t.Helper()
	if err != nil {
		t.Fatal(err)
	}
}

func open(t testing.TB, data []byte) *excelize.File {
	t.Helper()
	f, err := excelize.OpenReader(bytes.NewReader(data))
	must(t, err)
	t.Cleanup(func() { _ = f.Close() })
	return f
}


// raw reads a cell's stored value.
func raw(t testing.TB, f *excelize.File, sheet, cell string) string {
	t.Helper()
	v, err := f.GetCellValue(sheet, cell, excelize.Options{RawCellValue: true})
	must(t, err)
	return v
}

// formulaCells lists the cells with a formula, sheet by sheet.
func formulaCells(t testing.TB, f *excelize.File) map[string][]string {
	t.Helper()
	out := map[string][]string{}
	for _, sheet := range f.GetSheetList() {
		rows, err := f.GetRows(sheet)
		must(t, err)
		for r, row := range rows {
			for c := range row {
				name := place{c + 1, r + 1}.String()
				if formula, err := f.GetCellFormula(sheet, name); err == nil && formula != "" {
					out[sheet] = append(out[sheet], name)
				}
			}
		}
	}
	return out
}

// sameValue holds two stored values against each other: numbers within 1e-9 of
// each other, or within 1e-10 as such (cells keep 15 digits, so the difference of
// two figures of some thousands is not known better), anything else exactly.
func sameValue(a, b string) bool {
	const relative, absolute = 1e-9, 1e-10
	x, errX := strconv.ParseFloat(a, 64)
	y, errY := strconv.ParseFloat(b, 64)
	if errX != nil || errY != nil {
		return a == b
	}
	return math.Abs(x-y) <= math.Max(relative*math.Max(math.Abs(x), math.Abs(y)), absolute)
}

func TestLibreOfficeAgreesWithEveryStoredValue(t *testing.T) {
	data, err := Write(baseDocument(t))
	must(t, err)
	was, now := open(t, data), recalculate(t, data)[0]
	bad, count := 0, 0
	for sheet, cells := range formulaCells(t, was) {
		for _, cell := range cells {
			count++
			stored, worked := raw(t, was, sheet, cell), raw(t, now, sheet, cell)
			if sameValue(stored, worked) {
				continue
			}
			if bad++; bad < 30 {
				formula, _ := was.GetCellFormula(sheet, cell)
				t.Errorf("%s!%s: stored %q, LibreOffice works out %q from %s", sheet, cell, stored, worked, formula)
			}
		}
	}
	t.Logf("%d formulas, %d differ", count, bad)
}
