package main

import (
	"encoding/json"
	"html"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"dhwcompare/compare"
	"dhwcompare/compare/casefile"
)

// warnedEverywhere expects the warnings of a comparison in every output of its
// folder, and a mark beside the figure or key that each is about.
func warnedEverywhere(t *testing.T, files map[string]string, terminal string) {
	t.Helper()
	var cmp compare.Comparison
	if err := json.Unmarshal([]byte(files["comparison.json"]), &cmp); err != nil {
		t.Fatal(err)
	}
	about := map[string]bool{}
	// The page keeps numbers and units on one line.
	page := strings.NewReplacer("\u00a0", " ", "\u202f", " ").Replace(html.UnescapeString(files["report.html"]))
	words := unescapedMarkdown(files["report.md"])
	workbook := strings.Join(workbookCells(t, files["comparison.xlsx"]), "\n")
	for _, w := range cmp.Warnings {
		about[w.About] = true
		// Sentences begin with a capital, and lines have no control characters.
		text := w.Text[1:]
		for name, output := range map[string]string{"report.html": page, "report.md": words, "comparison.xlsx": workbook} {
			if !strings.Contains(output, text) {
				t.Errorf("%s does not warn: %s", name, w.Text)
			}
		}
	}
	for _, name := range []string{"years", "compact_store.layers", "cylinder.layers", "climate.weather_file"} {
		if !about[name] {
			t.Errorf("nothing warns about %s: %q", name, cmp.Warnings)
		}
	}
	if !strings.Contains(terminal, "Mean of 1 simulated year (!)") {
		t.Error("the terminal does not mark the years")
	}
	marked := 0
	for _, f := range compare.Figures() {
		if !about[f.Name] || *f.Of(&cmp.Options.Compact.Totals) == 0 && *f.Of(&cmp.Options.Cylinder.Totals) == 0 {
			continue
		}
		marked++
		for name, output := range map[string]string{"report.html": page, "report.md": words, "comparison.xlsx": workbook} {
			if !strings.Contains(output, f.Label[1:]+compare.WarningMark) {
				t.Errorf("%s does not mark %q", name, f.Label)
			}
		}
	}
	if marked == 0 {
		t.Error("no figure is marked")
	}
	for _, k := range casefile.Keys() {
		_, rest, _ := strings.Cut(k.Path, ".")
		if about[k.Path] && rest != "" && (!strings.Contains(page, rest+compare.WarningMark) || !strings.Contains(words, rest+compare.WarningMark)) {
			t.Errorf("the inputs do not mark %s", k.Path)
		}
	}
}

// unescapedMarkdown gives the words of a text.
func unescapedMarkdown(text string) string {
	return html.UnescapeString(regexp.MustCompile(`\\(.)`).ReplaceAllString(text, "$1"))
}

// TestUnusualValues sets each value of a case that has a usual range to the edges of
// what its key allows: outside the range there is one warning about it, inside none.
func TestUnusualValues(t *testing.T) {
	keys := casefile.Keys()
	for _, u := range compare.UsualRanges() {
		i := slices.IndexFunc(keys, func(k casefile.Key) bool { return k.Path == u.Key })
		if i < 0 {
			t.Errorf("%s is no key", u.Key)
			continue
		}
		k := &keys[i]
		if u.Unit != k.Unit || u.Low > u.High || u.Low < k.Min || u.High > k.Max || u.Low == k.Min && u.High == k.Max {
			t.Errorf("%s: %g to %g %s is no part of %g to %g %s", u.Key, u.Low, u.High, u.Unit, k.Min, k.Max, k.Unit)
		}
		for _, value := range []float64{k.Min, u.Low, u.High, k.Max} {
			c, _, err := casefile.Load("demo", casefile.Demo(), nil)
			if err != nil {
				t.Fatal(err)
			}
			if err := casefile.Set(c, u.Key, strconv.FormatFloat(value, 'f', -1, 64)); err != nil {
				t.Fatal(err)
			}
			got := compare.Unusual(c)
			if inside := value >= u.Low && value <= u.High || value == 0 && k.Zero != ""; inside && len(got) > 0 || !inside && (len(got) != 1 || got[0].About != u.Key) {
				t.Errorf("%s at %g: %v", u.Key, value, got)
			}
		}
	}
	for name, data := range map[string][]byte{"demo": casefile.Demo(), "template": casefile.Template()} {
		c, _, err := casefile.Load(name, data, nil)
		if err != nil {
			t.Fatal(err)
		}
		if got := compare.Unusual(c); len(got) > 0 {
			t.Errorf("%s: %v", name, got)
		}
	}
}
