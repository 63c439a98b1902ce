package charts

import (
	"bytes"
	"encoding/xml"
	"errors"
	"io"
	"regexp"
	"slices"
	"strings"
	"testing"

	"dhwcompare/compare"
)

func svgOf(t testing.TB, c *Chart) []byte {
	t.Helper()
	svg, err := c.SVG()
	if err != nil {
		t.Fatal(err)
	}
	return svg
}

// checkXML reads every token, and gives the element names and the text.
func checkXML(t testing.TB, name string, doc []byte) (elements []string, text string) {
	t.Helper()
	d := xml.NewDecoder(bytes.NewReader(doc))
	var all strings.Builder
	for {
		token, err := d.Token()
		if errors.Is(err, io.EOF) {
			return elements, all.String()
		}
		if err != nil {
			t.Fatalf("%s: not well-formed XML: %v", name, err)
		}
		switch e := token.(type) {
		case xml.StartElement:
			elements = append(elements, e.Name.Local)
		case xml.CharData:
			all.Write(e)
			all.WriteByte('\n')
		}
	}
}

var notANumber = regexp.MustCompile(`NaN|[+-]?Inf\b`)

func TestSVGIsWellFormed(t *testing.T) {
	for _, c := range drawn(t, everything(t)) {
		svg := svgOf(t, &c)
		elements, text := checkXML(t, c.Name, svg)
		if elements[0] != "svg" || elements[1] != "title" || elements[2] != "desc" {
			t.Errorf("%s starts with %v", c.Name, elements[:3])
		}
		if !strings.Contains(text, c.Title) || !strings.Contains(text, c.Alt) {
			t.Errorf("%s lacks its title or description", c.Name)
		}
		if bad := notANumber.Find(svg); bad != nil {
			t.Errorf("%s holds %s", c.Name, bad)
		}
		if bytes.Contains(svg, []byte("<!--")) {
			t.Errorf("%s holds a comment", c.Name)
		}
		texts, fonts := bytes.Count(svg, []byte("<text")), bytes.Count(svg, []byte("font-family:Liberation Sans,Arial,Helvetica,sans-serif"))
		if texts == 0 || texts != fonts {
			t.Errorf("%s: %d texts, %d with fonts to fall back on", c.Name, texts, fonts)
		}
		if !bytes.Contains(svg, []byte(`role="img"`)) || !bytes.Contains(svg, []byte(`viewBox="0 0 `)) {
			t.Errorf("%s lacks its role or its view box", c.Name)
		}
	}
}

func TestInlineSVG(t *testing.T) {
	ids := regexp.MustCompile(` id="([^"]*)"`)
	seen := map[string]bool{}
	for _, c := range drawn(t, everything(t)) {
		svg, err := c.InlineSVG()
		if err != nil {
			t.Fatal(err)
		}
		checkXML(t, c.Name, svg)
		head, _, _ := bytes.Cut(svg, []byte(">"))
		if !bytes.HasPrefix(svg, []byte("<svg ")) || bytes.Contains(head, []byte(" width=")) || bytes.Contains(head, []byte(" height=")) {
			t.Errorf("%s starts with %s", c.Name, head)
		}
		found := ids.FindAllSubmatch(svg, -1)
		if len(found) != 2 {
			t.Errorf("%s has %d ids, want those of title and description", c.Name, len(found))
		}
		for _, m := range found {
			id := string(m[1])
			if seen[id] {
				t.Errorf("id %s twice", id)
			}
			seen[id] = true
			if !bytes.Contains(head, m[1]) {
				t.Errorf("%s: id %s is not referred to", c.Name, id)
			}
		}
	}
}

// TestForeignText puts text that could do harm wherever a case can bring text.
func TestForeignText(t *testing.T) {
	const bad = "<script>alert(\"x\")</script> & 'y'"
	cmp := home(t)
	cmp.Title = bad + "\x00\x01\u202e\ufffe\xff\nsecond line"
	cmp.Currency = "<b>"
	cmp.Tariffs[0].Name = `<i a="1">`
	cmp.Options.Compact.SpaceItems[0].Name = "]]><!--"
	doc := everything(t)
	doc.Comparison = cmp
	doc.Sensitivity.Inputs[0].Label, doc.Sensitivity.Inputs[0].Unit = "<i>", "<b>"
	doc.Draws.States[1] = "<script>"
	cmp.ByCause.Parts[0].Label = "<script>"
	for _, c := range drawn(t, doc) {
		svg := svgOf(t, &c)
		elements, text := checkXML(t, c.Name, svg)
		for _, e := range []string{"script", "b", "i"} {
			if slices.Contains(elements, e) {
				t.Errorf("%s: text became the element %s", c.Name, e)
			}
		}
		if !strings.Contains(text, bad+"\uFFFD second line") {
			t.Errorf("%s does not show the title as it is:\n%s", c.Name, text)
		}
	}
}

func TestAltText(t *testing.T) {
	for _, c := range drawn(t, everything(t)) {
		if len(c.Alt) < len(c.Title) || strings.ContainsAny(c.Title+c.Alt, "\n\t") {
			t.Errorf("%s: title %q, alternative text %q", c.Name, c.Title, c.Alt)
		}
		for _, jargon := range []string{"COP", "unmet", "hysteresis", "SE ", "p05", "residual"} {
			if strings.Contains(c.Title+" "+c.subtitle, jargon) {
				t.Errorf("%s: %q in %q", c.Name, jargon, c.Title)
			}
		}
	}
}

func TestRefusesWhatIsNoNumber(t *testing.T) {
	nan := func() float64 { z := 0.0; return z / z }()
	for name, spoil := range map[string]func(*compare.Comparison){
		"a year's figure":  func(c *compare.Comparison) { c.Options.Compact.ElectricityKWh = nan },
		"a month's figure": func(c *compare.Comparison) { c.Options.Cylinder.Months[3].StartsPerDay = nan },
		"a month's spread": func(c *compare.Comparison) { c.Options.Compact.FailuresByMonth[0].P95 = nan },
		"a cause":          func(c *compare.Comparison) { c.Options.Compact.ElectricityByCause.Pump = nan },
		"a dimension":      func(c *compare.Comparison) { c.Options.Compact.SpaceItems[0].WidthMM = nan },
		"a difference":     func(c *compare.Comparison) { c.Difference.CostPerYear = nan },
		"a half hour":      func(c *compare.Comparison) { c.Profiles[1] = []float64{nan} },
		"a bill":           func(c *compare.Comparison) { c.Tariffs[0].Cylinder.Cost = nan },
		"a spread": func(c *compare.Comparison) {
			c.Difference.Spread["electricity_kwh"] = compare.DifferenceSpread{Spread: compare.Spread{CILow: nan}}
		},
	} {
		cmp := home(t)
		spoil(cmp)
		if _, err := All(cmp); err == nil {
			t.Errorf("%s that is no number is drawn", name)
		}
	}
	if _, err := All(nil); err == nil {
		t.Error("nothing is drawn")
	}
}
