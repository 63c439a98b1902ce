package report

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"dhwcompare/compare/report/outline"
)

func TestEscaped(t *testing.T) {
	for text, want := range map[string]string{
		"plain words, 55 °C":     "plain words, 55 °C",
		hostile:                  `&lt;script&gt;alert(1)&lt;/script&gt; =1+1 ../x`,
		"=1+1":                   `\=1+1`,
		"+1":                     `\+1`,
		"- item":                 `\- item`,
		"# heading":              `\# heading`,
		"12. item":               `12\. item`,
		"12.5 litres":            `12\.5 litres`,
		"3) item":                `3\) item`,
		"12":                     "12",
		"a | b":                  `a \| b`,
		"*b* _i_ `c` ~s~ $m$":    "\\*b\\* \\_i\\_ \\`c\\` \\~s\\~ \\$m\\$",
		"[x](javascript:y)":      `\[x\](javascript:y)`,
		"https://a.example":      `https:\//a.example`,
		"www.example a@example":  `www\.example a\@example`,
		`back\slash &amp;`:       `back\\slash &amp;amp;`,
		"two\nlines\x1b[0m  end": `two lines\[0m  end`,
		"  # spaces":             `\# spaces`,
	} {
		if got := escaped(text); got != want {
			t.Errorf("escaped(%q) = %q, want %q", text, got, want)
		}
	}
}

// bars finds the bars that divide cells.
var bars = regexp.MustCompile(`(^|[^\\])\|`)

func TestMarkdownTablesAreRegular(t *testing.T) {
	data, err := Markdown(spoiled(compared(t)))
	if err != nil {
		t.Fatal(err)
	}
	want, tables := 0, 0
	for i, line := range strings.Split(withoutListing(t, string(data)), "\n") {
		switch n := len(bars.FindAllString(line, -1)); {
		case !strings.HasPrefix(line, "|"):
			want = 0
		case want == 0:
			want, tables = n, tables+1
		case n != want:
			t.Errorf("line %d has %d bars, want %d: %s", i+1, n, want, line)
		}
	}
	if tables < 20 {
		t.Errorf("%d tables", tables)
	}
}

// withoutListing drops the case at the end, which stands between fences that its
// text cannot close.
func withoutListing(t *testing.T, s string) string {
	t.Helper()
	before, rest, found := strings.Cut(s, "\n````yaml\n")
	if !found || strings.Count(rest, "\n````\n") != 1 {
		t.Fatal("the listing is not fenced by more signs than it holds")
	}
	_, after, _ := strings.Cut(rest, "\n````\n")
	return before + "\n" + after
}

func TestMarkdownShowsForeignTextAsText(t *testing.T) {
	data, err := Markdown(spoiled(compared(t)))
	if err != nil {
		t.Fatal(err)
	}
	text := withoutListing(t, string(data))
	if strings.ContainsAny(text, "<>") {
		t.Error("a sign that may begin an element is left")
	}
	if !strings.Contains(text, escaped(hostile)) {
		t.Error("the title is not there")
	}
	for _, link := range regexp.MustCompile(`\]\(([^)]*)\)`).FindAllStringSubmatch(text, -1) {
		if !regexp.MustCompile(`^charts/[a-z-]+\.svg$`).MatchString(link[1]) {
			t.Errorf("links to %q", link[1])
		}
	}
}

// TestFormsSayTheSame looks for every sentence of the outline in both forms.
func TestFormsSayTheSame(t *testing.T) {
	doc := compared(t)
	o, err := outline.New(doc)
	if err != nil {
		t.Fatal(err)
	}
	html, err := HTML(doc)
	if err != nil {
		t.Fatal(err)
	}
	data, err := Markdown(doc)
	if err != nil {
		t.Fatal(err)
	}
	// A unit stays on the line of its number on the page alone.
	words, said := strings.ReplaceAll(read(t, html).text.String(), "\u00a0", " "), 0
	look := func(s string) {
		said++
		if !strings.Contains(words, Plain(s)) {
			t.Errorf("the page does not say %q", s)
		}
		if !strings.Contains(string(data), escaped(s)) {
			t.Errorf("the Markdown does not say %q", s)
		}
	}
	for _, p := range append(append([]outline.Part(nil), o.Customer...), o.Parts...) {
		look(p.Title)
		for _, b := range p.Blocks {
			if b.Text != nil {
				look(b.Text.Text)
			}
			for _, point := range b.Points {
				look(point.Text)
			}
			if b.Table != nil {
				look(b.Table.Caption)
				look(b.Table.Note)
			}
		}
	}
	if said < 100 {
		t.Errorf("only %d texts", said)
	}
}

// TestStyleAsksForNothing keeps the page whole by itself.
func TestStyleAsksForNothing(t *testing.T) {
	css, err := os.ReadFile(filepath.Join("templates", "report.css"))
	if err != nil {
		t.Fatal(err)
	}
	for _, word := range []string{"url(", "@import", "@font-face", "http", "<"} {
		if strings.Contains(string(css), word) {
			t.Errorf("the style holds %s", word)
		}
	}
}
