package main

import (
	"archive/zip"
	"encoding/json"
	"encoding/xml"
	"errors"
	"html"
	"io"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"
	"unicode"
)

// plainOnly expects a text without anything that could steer a terminal or turn
// the direction of writing.
func plainOnly(t *testing.T, what, text string) {
	t.Helper()
	odd := func(c rune) bool {
		return unicode.IsControl(c) && c != '\n' || unicode.In(c, unicode.Bidi_Control, unicode.Zl, unicode.Zp) || c == '\ufeff' || c == unicode.ReplacementChar
	}
	if i := strings.IndexFunc(text, odd); i >= 0 {
		t.Errorf("%s: %q", what, text[max(0, i-30):min(len(text), i+30)])
	}
}

// soundJSON expects JSON in which the texts stand unchanged, each as a value of its
// own, and no value that could steer a terminal.
func soundJSON(t *testing.T, text string, shown []string) {
	t.Helper()
	var whole any
	if err := json.Unmarshal([]byte(text), &whole); err != nil {
		t.Fatal(err)
	}
	var values []string
	var walk func(any)
	walk = func(v any) {
		switch v := v.(type) {
		case string:
			values = append(values, v)
		case []any:
			for _, item := range v {
				walk(item)
			}
		case map[string]any:
			for key, item := range v {
				if strings.Contains(key, "zq") {
					t.Errorf("a text became the key %q", key)
				}
				walk(item)
			}
		}
	}
	walk(whole)
	for _, v := range values {
		plainOnly(t, "JSON", v)
	}
	allIn(t, values, shown)
}

// allIn expects every text among some values.
func allIn(t *testing.T, values, shown []string) {
	t.Helper()
	for _, text := range shown {
		if !slices.Contains(values, text) {
			t.Errorf("%q is not among the values", text)
		}
	}
}

// soundWorkbook expects a workbook of well-formed parts in which the texts stand
// unchanged in cells of text, and in no formula, name, header or link.
func soundWorkbook(t *testing.T, data string, shown []string) {
	t.Helper()
	allIn(t, workbookCells(t, data), shown)
}

// workbookCells gives the texts of all cells of a sound workbook.
func workbookCells(t *testing.T, data string) (cells []string) {
	t.Helper()
	z, err := zip.NewReader(strings.NewReader(data), int64(len(data)))
	if err != nil {
		t.Fatal(err)
	}
	for _, part := range z.File {
		if strings.Contains(part.Name, "..") || strings.Contains(part.Name, "zq") {
			t.Errorf("a part is called %q", part.Name)
		}
		if !strings.HasSuffix(part.Name, ".xml") && !strings.HasSuffix(part.Name, ".rels") {
			continue
		}
		in, err := part.Open()
		if err != nil {
			t.Fatal(err)
		}
		cells = append(cells, soundPart(t, part.Name, in)...)
		if err := in.Close(); err != nil {
			t.Fatal(err)
		}
	}
	return cells
}

// soundPart reads a part of a workbook and gives the texts of its cells.
func soundPart(t *testing.T, name string, in io.Reader) (cells []string) {
	t.Helper()
	d := xml.NewDecoder(in)
	var path []string
	var text strings.Builder
	for {
		token, err := d.Token()
		if errors.Is(err, io.EOF) {
			return cells
		}
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		switch token := token.(type) {
		case xml.StartElement:
			path = append(path, token.Name.Local)
			text.Reset()
			for _, a := range token.Attr {
				if strings.Contains(a.Value, "zq") {
					t.Errorf("%s: the attribute %s of %s is %q", name, a.Name.Local, token.Name.Local, a.Value)
				}
			}
		case xml.CharData:
			text.Write(token)
		case xml.EndElement:
			switch last := path[len(path)-1]; {
			case last == "t" && !strings.Contains(name, "chart"):
				cells = append(cells, unescapedCell(text.String()))
			case last == "v" || last == "t":
				// A cached result, or a word in a picture.
			case strings.Contains(text.String(), "zq"):
				t.Errorf("%s: %s holds %q", name, strings.Join(path, " "), text.String())
			}
			path = path[:len(path)-1]
			text.Reset()
		}
	}
}

// unescapedCell reads the code _x0041_ of the format as what it stands for.
func unescapedCell(text string) string {
	return regexp.MustCompile(`_x[0-9A-Fa-f]{4}_`).ReplaceAllStringFunc(text, func(code string) string {
		n, err := strconv.ParseUint(code[2:6], 16, 32)
		if err != nil {
			return code
		}
		return string(rune(n))
	})
}

// soundPage expects a page whose elements and attributes are the page's own, and
// which shows the texts.
func soundPage(t *testing.T, page string, shown []string) {
	t.Helper()
	for _, tag := range regexp.MustCompile(`<[^>]*>`).FindAllString(page, -1) {
		if strings.Contains(tag, "zq") && !regexp.MustCompile(`^<(a|td|th|img|svg|figure|section|details) `).MatchString(tag) ||
			regexp.MustCompile(`(?i)\son\w+\s*=|javascript:|^<(script|iframe|object|embed|base|form|link|meta http)`).MatchString(withoutValues(tag)) {
			t.Errorf("the page holds %.200s", tag)
		}
	}
	plainOnly(t, "the page", strings.ReplaceAll(page, "\n\t", "\n"))
	words := html.UnescapeString(page)
	for _, text := range shown {
		if !strings.Contains(words, text) {
			t.Errorf("the page does not show %q", text)
		}
	}
}

// withoutValues takes the values, which are escaped, from the attributes of a tag.
func withoutValues(tag string) string {
	return regexp.MustCompile(`="[^"<>]*"`).ReplaceAllString(tag, `=""`)
}

// soundMarkdown expects no markup of a stranger: no tag, no link but to charts, and
// tables that keep their columns.
func soundMarkdown(t *testing.T, text string) {
	t.Helper()
	plainOnly(t, "the text", text)
	fence, columns := "", 0
	for line := range strings.Lines(text) {
		line = strings.TrimSuffix(line, "\n")
		if m := regexp.MustCompile("^`{3,}").FindString(line); m != "" && (fence == "" || fence == line) {
			if fence == "" {
				fence = m
			} else {
				fence = ""
			}
			continue
		}
		if fence != "" {
			continue
		}
		bare := regexp.MustCompile(`\\.`).ReplaceAllString(line, "")
		if strings.ContainsAny(bare, "<`") || regexp.MustCompile(`\]\([^c]`).MatchString(bare) {
			t.Errorf("markup: %s", line)
		}
		if !strings.HasPrefix(bare, "|") {
			columns = 0
			continue
		}
		if n := strings.Count(bare, "|"); columns == 0 {
			columns = n
		} else if n != columns {
			t.Errorf("%d columns in place of %d: %s", n, columns, line)
		}
	}
	if fence != "" {
		t.Error("a listing never ends")
	}
}

// soundPicture expects a well-formed picture that only draws.
func soundPicture(t *testing.T, text string) {
	t.Helper()
	plainOnly(t, "the picture", strings.ReplaceAll(text, "\n\t", "\n"))
	d := xml.NewDecoder(strings.NewReader(text))
	for {
		token, err := d.Token()
		if errors.Is(err, io.EOF) {
			return
		}
		if err != nil {
			t.Fatal(err)
		}
		start, is := token.(xml.StartElement)
		if !is {
			continue
		}
		if !regexp.MustCompile(`^(svg|g|path|text|tspan|title|desc|defs|rect|line|polyline|polygon|circle|clipPath)$`).MatchString(start.Name.Local) {
			t.Errorf("the picture holds %s", start.Name.Local)
		}
		for _, a := range start.Attr {
			if strings.HasPrefix(strings.ToLower(a.Name.Local), "on") || a.Name.Local == "href" {
				t.Errorf("%s has the attribute %s=%q", start.Name.Local, a.Name.Local, a.Value)
			}
		}
	}
}
