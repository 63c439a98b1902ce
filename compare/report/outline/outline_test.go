package outline

import (
	"flag"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"dhwcompare/compare"
	"dhwcompare/compare/wording"
)

var update = flag.Bool("update", false, "write the golden files anew")

// said makes the outline of a document.
func said(t *testing.T, doc *compare.Document) *Outline {
	t.Helper()
	o, err := New(doc)
	if err != nil {
		t.Fatal(err)
	}
	return o
}

// written puts an outline into lines, its drawings left out.
func written(o *Outline) string {
	var b strings.Builder
	fmt.Fprintf(&b, "home: %s\n", o.Home)
	for _, p := range append(slices.Clone(o.Customer), o.Parts...) {
		fmt.Fprintf(&b, "\n== %s %s (%s)\n", p.Number, p.Title, p.ID)
		for i := range p.Blocks {
			writeBlock(&b, &p.Blocks[i])
		}
	}
	return b.String()
}

func writeBlock(b *strings.Builder, block *Block) {
	paragraph := func(mark string, p *Paragraph) { fmt.Fprintf(b, "%s[%s] %s\n", mark, p.Lead, p.Text) }
	switch {
	case block.Text != nil:
		paragraph("", block.Text)
	case block.Table != nil:
		writeTable(b, block.Table)
	case block.Picture != nil:
		fmt.Fprintf(b, "chart %s\n", block.Picture.Chart)
	case block.Listing != "":
		fmt.Fprintf(b, "listing %q\n", block.Listing)
	}
	for i := range block.Points {
		paragraph("- ", &block.Points[i])
	}
	for _, p := range block.Pictures {
		fmt.Fprintf(b, "picture %s: %s / %s\n", p.Title, p.Alt, p.Caption)
	}
}

func writeTable(b *strings.Builder, t *Table) {
	fmt.Fprintf(b, "table %s: %s\n  %s\n", t.ID, t.Caption, strings.Join(t.FlatHeads(), " | "))
	for _, g := range t.Groups {
		if g.Name != "" {
			fmt.Fprintf(b, "  %s:\n", g.Name)
		}
		for _, r := range g.Rows {
			fmt.Fprintf(b, "  %s\n", strings.Join(r, " | "))
		}
	}
	fmt.Fprintf(b, "  (%s)\n", t.Note)
}

func TestOutlineIsAsItWas(t *testing.T) {
	got, path := written(said(t, invented())), filepath.Join("testdata", "invented.golden")
	if *update {
		if err := os.WriteFile(path, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(string(want), got); diff != "" {
		t.Errorf("differs from %s (run with -update if it is meant to):\n%s", path, diff)
	}
}

// tables lists every table of an outline.
func tables(o *Outline) []*Table {
	var list []*Table
	for _, p := range append(slices.Clone(o.Customer), o.Parts...) {
		for _, b := range p.Blocks {
			if b.Table != nil {
				list = append(list, b.Table)
			}
		}
	}
	return list
}

func TestTablesAreRegular(t *testing.T) {
	ids := map[string]bool{}
	list := tables(said(t, invented()))
	for _, table := range list {
		if ids[table.ID] || table.ID == "" || table.Caption == "" {
			t.Errorf("table %q: no id and caption of its own", table.ID)
		}
		ids[table.ID] = true
		spans := 0
		for _, o := range table.Over {
			spans += o.Span
		}
		if spans != 0 && spans != table.Columns() {
			t.Errorf("table %s: heads span %d of %d columns", table.ID, spans, table.Columns())
		}
		for _, g := range table.Groups {
			for _, r := range g.Rows {
				if len(r) != table.Columns() {
					t.Errorf("table %s: a row of %d cells under %d heads: %q", table.ID, len(r), table.Columns(), r)
				}
				for _, cell := range r {
					if wording.InPrint(cell) != cell {
						t.Errorf("table %s: %q is not as in print", table.ID, cell)
					}
				}
			}
		}
	}
	if len(list) < 25 {
		t.Errorf("only %d tables", len(list))
	}
}

// Warnings are told in the units of print, whatever a terminal shows.
func TestWarningsAreAsInPrint(t *testing.T) {
	doc := invented()
	doc.Comparison.Warnings = []compare.Warning{{Text: "at -27 C it is cold"}}
	for _, b := range limits(doc).Blocks {
		for _, point := range b.Points {
			if point.Text == "At −27 °C it is cold." {
				return
			}
		}
	}
	t.Error("the warning is not there as in print")
}

// A home without a bath gets no test of one.
func TestNoBathNoTestOfOne(t *testing.T) {
	doc := invented()
	for _, has := range []bool{true, false} {
		doc.Case.Household.HasBath = has
		table := otherTests(doc)
		named := strings.Contains(table.Note, "Bath:")
		for _, o := range table.Over {
			named = named || strings.Contains(o.Text, "bath")
		}
		if named != has {
			t.Errorf("has a bath: %t, the table names one: %t", has, named)
		}
	}
}

func TestPartsWithoutDataAreAbsent(t *testing.T) {
	tests := map[string]struct {
		remove func(*compare.Document)
		absent []string // ids of parts and tables
	}{
		"draws":    {func(d *compare.Document) { d.Draws = nil }, []string{"draw-offs", "design-rule", "shower-table", "other-tests", "measuring"}},
		"settings": {func(d *compare.Document) { d.Settings = nil }, []string{"settings", "ladder", "commissioning", "measuring"}},
		"sizing":   {func(d *compare.Document) { d.Sizing = nil }, []string{"sizing", "sizes"}},
		"levers":   {func(d *compare.Document) { d.Sensitivity = nil }, []string{"sensitivity", "levers"}},
		"inputs":   {func(d *compare.Document) { d.Inputs = nil }, []string{"inputs", "inputs-stated", "all-inputs", "inputs-other"}},
		"case":     {func(d *compare.Document) { d.CaseYAML = nil }, []string{"case"}},
		"beside the years": {func(d *compare.Document) {
			d.Comparison.Spells, d.Comparison.Alternatives, d.Comparison.ByCause.Parts = nil, nil, nil
			for _, side := range bothSides() {
				o := d.Comparison.Options.Of(side)
				o.EqualService, o.Risk = compare.EqualService{}, compare.Risk{}
			}
		}, []string{"spells", "alternatives", "causes-table", "equal-service", "queue", "hours", "chances"}},
		"tariffs": {func(d *compare.Document) { d.Comparison.Tariffs = nil }, []string{"tariffs", "bands", "break-even"}},
	}
	whole := idsOf(said(t, invented()))
	for name, test := range tests {
		t.Run(name, func(t *testing.T) {
			doc := invented()
			test.remove(doc)
			left := idsOf(said(t, doc))
			for _, id := range test.absent {
				if !whole[id] {
					t.Errorf("%s is never there", id)
				}
				if left[id] {
					t.Errorf("%s is still there", id)
				}
			}
			if len(whole)-len(left) != len(test.absent) {
				t.Errorf("%d are gone, want %d", len(whole)-len(left), len(test.absent))
			}
		})
	}
}

func idsOf(o *Outline) map[string]bool {
	ids := map[string]bool{}
	for _, p := range append(slices.Clone(o.Customer), o.Parts...) {
		ids[p.ID] = true
	}
	for _, t := range tables(o) {
		ids[t.ID] = true
	}
	return ids
}

func TestEveryChartHangsOnce(t *testing.T) {
	count := map[string]int{}
	for _, p := range said(t, invented()).Parts {
		for _, b := range p.Blocks {
			if b.Picture != nil {
				count[b.Picture.Chart]++
				if !strings.HasPrefix(string(b.Picture.SVG), "<svg") {
					t.Errorf("%s is not drawn", b.Picture.Chart)
				}
			}
		}
	}
	g, err := newGallery(invented())
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range g.charts {
		if count[c.Name] != 1 {
			t.Errorf("%s hangs %d times", c.Name, count[c.Name])
		}
	}
}

// TestFirstPageHasNoJargon names words that somebody without training stumbles on.
func TestFirstPageHasNoJargon(t *testing.T) {
	for _, years := range []int{1, 20} {
		doc := invented()
		doc.Comparison.Years = years
		o := said(t, doc)
		o.Parts = nil
		page := strings.ToLower(written(o))
		for _, word := range []string{
			"setpoint", "hysteresis", "cop ", "kwh", "draw-off", "changeover", "interval", "percentile", "ensemble", "simulat", "stratif",
			"kelvin", " k ", "dead leg", "compressor", "immersion", "tempering", "legionella", "litres/", "l/min", "commission", "unmet", "nan", "%!",
		} {
			if strings.Contains(page, word) {
				t.Errorf("%d years: the page speaks of %q", years, word)
			}
		}
	}
}

func TestNothingToReportIsAnError(t *testing.T) {
	broken := invented()
	broken.Comparison.Options.Compact.ElectricityKWh = math.NaN()
	for name, doc := range map[string]*compare.Document{"none": nil, "empty": {}, "no case": {Comparison: &compare.Comparison{}}, "no number": broken} {
		if o, err := New(doc); err == nil || o != nil {
			t.Errorf("%s: no error", name)
		}
	}
}
