package workbook

import (
	"bytes"
	"context"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
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

func TestLibreOfficeAgreesWithEveryStoredValue(t *testing.T) {
	for name, data := range map[string][]byte{"two years": written(t, baseDocument(t)), "every kind of tariff, one year": written(t, variedDocument(t))} {
		was, now := open(t, data), recalculate(t, data)[0]
		for _, f := range formulaCells(t, was) {
			stored, worked := raw(t, was, f.sheet, f.cell), raw(t, now, f.sheet, f.cell)
			if !sameValue(stored, worked) {
				t.Errorf("%s: %s!%s: stored %q, LibreOffice works out %q from %s", name, f.sheet, f.cell, stored, worked, f.text)
			}
		}
	}
}

// A check by LibreOffice proves something only if it does not take the stored
// values for granted.
func TestLibreOfficeCatchesAStaleValue(t *testing.T) {
	b := newBook(baseDocument(t))
	b.fill()
	const stale = "neither here nor there"
	cell := beside(t, open(t, written(t, baseDocument(t))), summaryName, "Take", 3)
	b.sheet(summaryName).caches[cell] = stale
	data, err := b.bytes()
	must(t, err)
	if got := raw(t, open(t, data), summaryName, cell); got != stale {
		t.Fatalf("the file stores %q", got)
	}
	if got := raw(t, recalculate(t, data)[0], summaryName, cell); got != string(baseDocument(t).Comparison.Verdict.Recommend) {
		t.Errorf("LibreOffice shows %q: it did not work the formula out", got)
	}
}

// Prices and judgements that are changed in the workbook give what the program
// gives for the same changed case.
func TestChangedInputsFollowThrough(t *testing.T) {
	changed := british()
	changed.Tariffs[0].Remaining.PerKWh = 0.31
	changed.Tariffs[1].Bands[0].PerKWh = 0.11
	changed.Tariffs[1].Remaining.PerKWh = 0.39
	changed.Tariffs[0].StandingPerDay = 0.8
	changed.Money.MaterialityPerYear = 500
	changed.Service.FailuresPerYear = 10000
	changed.Money.DiscountPercent, changed.Money.EnergyGrowthPercent, changed.Money.HorizonYears = 5, 2, 27
	changed.Money.Compact.Purchase, changed.Money.Cylinder.LifeYears, changed.Money.FloorValuePerM2Year = 2300, 12, 350
	changed.Money.CarbonKgPerKWh[0] = 0.4
	before, f := open(t, written(t, baseDocument(t))), open(t, written(t, baseDocument(t)))
	for name, v := range map[string]float64{
		"Tariff1_rate_1": 0.31, "Tariff2_rate_1": 0.11, "Tariff2_rate_2": 0.39, "Tariff1_standing_per_day": 0.8,
		"Materiality_per_year": 500, "Failing_showers_allowed": 10000,
		"Discount_percent": 5, "Energy_growth_percent": 2, "Horizon_years": 27, "Compact_purchase": 2300, "Cylinder_life_years": 12,
		"Floor_value_per_m2_year": 350, "Carbon_Jan": 0.4,
	} {
		sheet, cell := named(t, f, name)
		must(t, f.SetCellFloat(sheet, cell, v, -1, 64))
	}
	var edited bytes.Buffer
	must(t, f.Write(&edited))
	got, want := recalculate(t, edited.Bytes())[0], open(t, written(t, documentOf(t, changed)))
	differs := 0
	for _, f := range formulaCells(t, want) {
		if skipsOnChange(f) {
			continue
		}
		if a, b := raw(t, got, f.sheet, f.cell), raw(t, want, f.sheet, f.cell); !sameValue(a, b) {
			t.Errorf("%s!%s: changed in the workbook %q, run anew %q", f.sheet, f.cell, a, b)
		}
		if a, b := raw(t, got, f.sheet, f.cell), raw(t, before, f.sheet, f.cell); !sameValue(a, b) {
			differs++
		}
	}
	if differs < 100 {
		t.Errorf("only %d cells follow the changes", differs)
	}
}

// skipsOnChange names what is meant to differ: the notes that inputs were
// changed, and the checks against values of the simulated inputs.
func skipsOnChange(f formulaCell) bool {
	return f.sheet == checksName || strings.Contains(f.text, "Inputs_changed") || strings.Contains(f.text, `"changed"`)
}
