package report

import (
	"bytes"
	"context"
	"encoding/xml"
	"errors"
	"io"
	"regexp"
	"slices"
	"strings"
	"sync"
	"testing"

	"dhwcompare/compare"
	"dhwcompare/compare/casefile"
)

// hostile is a title as it should never be.
const hostile = `<script>alert(1)</script> =1+1 ../x`

// once lives a year of the invented home through what a report may hold.
var once = sync.OnceValues(func() (*compare.Document, error) {
	ctx, data := context.Background(), casefile.Demo()
	c, inputs, err := casefile.Load("demo.yaml", data, nil)
	if err != nil {
		return nil, err
	}
	c.Years = 1
	doc := &compare.Document{Case: c, Inputs: inputs, CaseYAML: data}
	if doc.Comparison, err = compare.Compare(ctx, c, 1, nil); err != nil {
		return nil, err
	}
	if doc.Draws, err = compare.Drawoffs(ctx, c, c.Household.BackToBackGapMin); err != nil {
		return nil, err
	}
	doc.Settings, err = compare.SettingsLadder(ctx, c, 1, 1)
	return doc, err
})

// compared gives the one document that all tests share: none may change it.
func compared(t *testing.T) *compare.Document {
	t.Helper()
	doc, err := once()
	if err != nil {
		t.Fatal(err)
	}
	return doc
}

// spoiled gives a document with the hostile text wherever a stranger's words may
// stand.
func spoiled(of *compare.Document) *compare.Document {
	doc, cmp := *of, *of.Comparison
	doc.Comparison, doc.Inputs = &cmp, slices.Clone(of.Inputs)
	doc.Settings = &compare.Settings{Years: 1, Steps: of.Settings.Steps, List: slices.Clone(of.Settings.List)}
	cmp.Tariffs, cmp.Options.Compact.SpaceItems = slices.Clone(cmp.Tariffs), slices.Clone(cmp.Options.Compact.SpaceItems)
	cmp.Title, cmp.Currency, cmp.CaseDigest = hostile, hostile, hostile
	cmp.Verdict.Text, cmp.Verdict.Reasons = hostile, []string{hostile}
	cmp.Warnings = slices.Clone(cmp.Warnings)
	for i := range cmp.Warnings {
		cmp.Warnings[i].Text = hostile
	}
	doc.CaseYAML = []byte(hostile + "\n```\n")
	for i := range cmp.Tariffs {
		cmp.Tariffs[i].Name = hostile
		cmp.Tariffs[i].Compact.Bands = slices.Clone(cmp.Tariffs[i].Compact.Bands)
		cmp.Tariffs[i].Compact.Bands[0].Name = hostile
	}
	for i := range doc.Inputs {
		in := &doc.Inputs[i]
		in.Key, in.Text, in.Numeric, in.Unit, in.Help, in.Source = hostile, hostile, false, hostile, hostile, hostile
	}
	for i := range doc.Settings.List {
		doc.Settings.List[i].Value = hostile
	}
	for i := range cmp.Options.Compact.SpaceItems {
		cmp.Options.Compact.SpaceItems[i].Name = hostile
	}
	return &doc
}

// found is what is found on a page.
type found struct {
	tags     map[string]int
	text     strings.Builder
	title    string
	ids      []string
	refs     []string // ids that are referred to
	levels   []int    // of the headings, in order
	problems []string
}

// read goes through a page, which must nest as XML does.
func read(t *testing.T, html []byte) *found {
	t.Helper()
	p := &found{tags: map[string]int{}}
	d := xml.NewDecoder(bytes.NewReader(html))
	d.Strict = true
	var open []string
	for {
		token, err := d.Token()
		if errors.Is(err, io.EOF) {
			return p
		}
		if err != nil {
			t.Fatalf("not well nested: %v", err)
		}
		switch token := token.(type) {
		case xml.StartElement:
			open = append(open, token.Name.Local)
			p.element(token)
		case xml.EndElement:
			open = open[:len(open)-1]
		case xml.CharData:
			if n := len(open); n > 0 && open[n-1] == "title" && !slices.Contains(open, "svg") {
				p.title = string(token)
			} else if !slices.Contains(open, "style") {
				p.text.Write(token)
			}
		}
	}
}

func (p *found) element(e xml.StartElement) {
	name := e.Name.Local
	p.tags[name]++
	if len(name) == 2 && name[0] == 'h' && name[1] >= '1' && name[1] <= '6' {
		p.levels = append(p.levels, int(name[1]-'0'))
	}
	for _, a := range e.Attr {
		switch attribute := a.Name.Local; {
		case attribute == "id":
			p.ids = append(p.ids, a.Value)
		case attribute == "aria-labelledby":
			p.refs = append(p.refs, strings.Fields(a.Value)...)
		case attribute == "href" && strings.HasPrefix(a.Value, "#"):
			p.refs = append(p.refs, a.Value[1:])
		case attribute == "href", attribute == "src", attribute == "action", attribute == "data", strings.HasPrefix(attribute, "on"):
			p.problems = append(p.problems, name+" "+attribute+"="+a.Value)
		}
	}
}

func TestPageIsWhole(t *testing.T) {
	html, err := HTML(compared(t))
	if err != nil {
		t.Fatal(err)
	}
	p := read(t, html)
	if len(html) >= 2_000_000 {
		t.Errorf("%d bytes", len(html))
	}
	for _, tag := range []string{"script", "link", "img", "iframe", "object", "form"} {
		if p.tags[tag] > 0 {
			t.Errorf("%d of %s", p.tags[tag], tag)
		}
	}
	for _, tag := range []string{"main", "header", "footer", "nav", "h1"} {
		if p.tags[tag] != 1 {
			t.Errorf("%d of %s, want 1", p.tags[tag], tag)
		}
	}
	if p.tags["svg"] < 12 || p.tags["table"] < 20 || p.tags["caption"] != p.tags["table"] {
		t.Errorf("%d pictures, %d tables with %d captions", p.tags["svg"], p.tags["table"], p.tags["caption"])
	}
	for _, problem := range p.problems {
		t.Error(problem)
	}
	for _, word := range []string{"NaN", "Inf", "%!", "<nil>", "http"} {
		if strings.Contains(p.text.String(), word) {
			t.Errorf("the page reads %q", word)
		}
	}
}

func TestPageRefersToWhatIsThere(t *testing.T) {
	html, err := HTML(compared(t))
	if err != nil {
		t.Fatal(err)
	}
	p := read(t, html)
	seen := map[string]bool{}
	for _, id := range p.ids {
		if seen[id] {
			t.Errorf("the id %s occurs twice", id)
		}
		seen[id] = true
	}
	for _, ref := range p.refs {
		if !seen[ref] {
			t.Errorf("nothing has the id %s", ref)
		}
	}
	above := 0
	for _, level := range p.levels {
		if level > above+1 {
			t.Errorf("a heading of level %d follows one of level %d", level, above)
		}
		above = level
	}
}

func TestPageShowsForeignTextAsText(t *testing.T) {
	doc := compared(t)
	plain, err := HTML(doc)
	if err != nil {
		t.Fatal(err)
	}
	html, err := HTML(spoiled(doc))
	if err != nil {
		t.Fatal(err)
	}
	before, after := read(t, plain), read(t, html)
	for _, tag := range []string{"script", "a", "p", "li", "td", "th", "table", "svg"} {
		// Reasons are fewer, and stand in list items; and no input has a warning, which
		// a note below the table would explain.
		fewer := tag == "p" && after.tags[tag] == before.tags[tag]-1
		if tag != "li" && tag != "td" && tag != "th" && before.tags[tag] != after.tags[tag] && !fewer {
			t.Errorf("%d of %s became %d", before.tags[tag], tag, after.tags[tag])
		}
	}
	if after.tags["script"] > 0 || len(after.problems) > 0 {
		t.Errorf("%d scripts, %q", after.tags["script"], after.problems)
	}
	if !strings.Contains(after.title, hostile) {
		t.Errorf("the title reads %q", after.title)
	}
	text := after.text.String()
	if n := strings.Count(text, hostile); n < 100 {
		t.Errorf("the text is read %d times", n)
	}
	if !slices.Equal(before.ids, after.ids) {
		t.Error("the text changed an id")
	}
}

func TestPageHasNoControlCharacters(t *testing.T) {
	doc := document()
	doc.Comparison.Title = "a\x00b\x1b[31m\u202ec"
	html, err := HTML(doc)
	if err != nil {
		t.Fatal(err)
	}
	if at := regexp.MustCompile("[\x00-\x08\x0b-\x1f\x7f\u202a-\u202e]").FindIndex(html); at != nil {
		t.Errorf("found %q", html[max(0, at[0]-20):at[1]])
	}
}

func TestReportsAreTheSameEachTime(t *testing.T) {
	doc := document()
	for name, form := range map[string]func(*compare.Document) ([]byte, error){"HTML": HTML, "Markdown": Markdown} {
		first, err := form(doc)
		if err != nil {
			t.Fatal(err)
		}
		again, err := form(doc)
		if err != nil || !bytes.Equal(first, again) {
			t.Errorf("%s differs: %v", name, err)
		}
		if data, err := form(&compare.Document{}); err == nil || data != nil {
			t.Errorf("%s of nothing is no error", name)
		}
	}
}
