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

	"dhwcompare/compare"

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

// LibreOffice is started once for all workbooks: a start takes seconds.
func TestLibreOffice(t *testing.T) {
	changes := inputChanges()
	books := [][]byte{baseBook(t), variedBook(t), staleBook(t), changedBook(t, changes)}
	now := recalculate(t, books...)
	t.Run("agrees with every stored value", func(t *testing.T) {
		for i, name := range []string{"filled in by hand", "every kind of tariff, one year"} {
			t.Logf("%s: %d formulas", name, agree(t, name, open(t, books[i]), now[i]))
		}
	})
	t.Run("catches a stale value", func(t *testing.T) {
		if got := raw(t, now[2], summaryName, takeCell(t)); got != string(baseDocument(t).Comparison.Verdict.Recommend) {
			t.Errorf("LibreOffice shows %q: it did not work the formula out", got)
		}
	})
	t.Run("follows changed inputs", func(t *testing.T) { followChanges(t, now[3], changes) })
}

// agree holds every formula's stored value against what LibreOffice works out.
func agree(t *testing.T, name string, was, now *excelize.File) int {
	t.Helper()
	list := formulaCells(t, was)
	for _, f := range list {
		stored, worked := raw(t, was, f.sheet, f.cell), raw(t, now, f.sheet, f.cell)
		if !sameValue(stored, worked) {
			t.Errorf("%s: %s!%s: stored %q, LibreOffice works out %q from %s", name, f.sheet, f.cell, stored, worked, f.text)
		}
	}
	return len(list)
}

// takeCell is the cell of the Summary that says which option to take.
func takeCell(t *testing.T) string {
	t.Helper()
	return beside(t, open(t, baseBook(t)), summaryName, "Take", 2)
}

// staleBook stores a wrong value beside a formula: a check by LibreOffice proves
// something only if it does not take the stored values for granted.
func staleBook(t *testing.T) []byte {
	t.Helper()
	b := newBook(baseDocument(t))
	b.fill()
	const stale = "neither here nor there"
	b.sheet(summaryName).caches[takeCell(t)] = stale
	data, err := b.bytes()
	must(t, err)
	if got := raw(t, open(t, data), summaryName, takeCell(t)); got != stale {
		t.Fatalf("the file stores %q", got)
	}
	return data
}

// inputChange is an input that is changed in the workbook, by its name, and in the
// case.
type inputChange struct {
	name   string
	value  float64
	change func(c *compare.Case, v float64)
}

func inputChanges() []inputChange {
	return []inputChange{
		{"Tariff1_rate_1", 0.31, func(c *compare.Case, v float64) { c.Tariffs[0].Remaining.PerKWh = v }},
		{"Tariff2_rate_1", 0.11, func(c *compare.Case, v float64) { c.Tariffs[1].Bands[0].PerKWh = v }},
		{"Tariff2_rate_2", 0.39, func(c *compare.Case, v float64) { c.Tariffs[1].Remaining.PerKWh = v }},
		{"Tariff1_standing_per_day", 0.8, func(c *compare.Case, v float64) { c.Tariffs[0].StandingPerDay = v }},
		{"Materiality_per_year", 500, func(c *compare.Case, v float64) { c.Money.MaterialityPerYear = v }},
		{"Failing_showers_allowed", 10000, func(c *compare.Case, v float64) { c.Service.FailuresPerYear = v }},
		{"Discount_percent", 5, func(c *compare.Case, v float64) { c.Money.DiscountPercent = v }},
		{"Energy_growth_percent", 2, func(c *compare.Case, v float64) { c.Money.EnergyGrowthPercent = v }},
		{"Horizon_years", 27, func(c *compare.Case, v float64) { c.Money.HorizonYears = int(v) }},
		{"Compact_purchase", 2300, func(c *compare.Case, v float64) { c.Money.Compact.Purchase = v }},
		{"Cylinder_life_years", 12, func(c *compare.Case, v float64) { c.Money.Cylinder.LifeYears = int(v) }},
		{"Floor_value_per_m2_year", 350, func(c *compare.Case, v float64) { c.Money.FloorValuePerM2Year = v }},
		{"Carbon_Jan", 0.4, func(c *compare.Case, v float64) { c.Money.CarbonKgPerKWh[0] = v }},
		{"Room_height_mm", 1900, func(c *compare.Case, v float64) { c.Room.HeightMM = v }},
		{"Design_starts", 70000, func(c *compare.Case, v float64) { c.HeatPump.DesignStarts = v }},
	}
}

// changedBook changes inputs in the workbook.
func changedBook(t *testing.T, changes []inputChange) []byte {
	t.Helper()
	f := open(t, baseBook(t))
	for _, c := range changes {
		sheet, cell := named(t, f, c.name)
		must(t, f.SetCellFloat(sheet, cell, c.value, -1, 64))
	}
	var edited bytes.Buffer
	must(t, f.Write(&edited))
	return edited.Bytes()
}

// followChanges expects what the program gives for the same changed case.
func followChanges(t *testing.T, got *excelize.File, changes []inputChange) {
	changed := british()
	for _, c := range changes {
		c.change(&changed, c.value)
	}
	before, want := open(t, baseBook(t)), open(t, written(t, documentOf(t, changed)))
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
	if was, is := raw(t, before, summaryName, takeCell(t)), raw(t, got, summaryName, takeCell(t)); was == is || is != string(compare.RecommendCompact) {
		t.Errorf("the recommendation was %q and is %q", was, is)
	}
}

// skipsOnChange names what is meant to differ: the notes that inputs were
// changed, and the checks against values of the simulated inputs.
func skipsOnChange(f formulaCell) bool {
	return f.sheet == checksName || strings.HasPrefix(f.text, checksName+"!") || strings.Contains(f.text, "Inputs_changed") || strings.Contains(f.text, `"changed"`)
}
