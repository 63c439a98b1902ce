package report

import (
	"bytes"
	"embed"
	"fmt"
	"html/template"
	"regexp"
	"sync"

	"dhwcompare/compare"
	"dhwcompare/compare/report/outline"
)

//go:embed templates
var templates embed.FS

// pageData is what the page is filled with.
type pageData struct {
	*outline.Outline
	Style template.CSS // a file of this program
}

// HTML gives the bytes of report.html: one page that needs nothing but itself. It
// holds no script and no address, its pictures are inline, and it prints on A4.
// Texts that somebody else wrote appear as text. Equal documents have equal bytes.
func HTML(doc *compare.Document) ([]byte, error) {
	o, err := outline.New(doc)
	if err != nil {
		return nil, err
	}
	style, err := templates.ReadFile("templates/report.css")
	if err != nil {
		return nil, err
	}
	page, err := template.New("report.html").Funcs(helpers()).ParseFS(templates, "templates/*.html")
	if err != nil {
		return nil, err
	}
	var out bytes.Buffer
	if err := page.Execute(&out, pageData{o, template.CSS(style)}); err != nil {
		return nil, fmt.Errorf("the report cannot be written as HTML: %w", err)
	}
	return out.Bytes(), nil
}

// helpers are the functions that the templates call.
func helpers() template.FuncMap {
	return template.FuncMap{
		"plain": Plain, "lines": PlainLines, "prose": prose, "class": class,
		"at": func(level int, p outline.Part) leveled { return leveled{p, level} },
	}
}

// prose is Plain for sentences: a unit stays on the line of its number.
func prose(s string) string { return withUnit().ReplaceAllString(Plain(s), "$1\u00a0$2") }

// withUnit finds a number and the space before its unit.
var withUnit = sync.OnceValue(func() *regexp.Regexp {
	return regexp.MustCompile(`([0-9]) ((?:%|°C|C|K|W|kW|kWh|kg|mm|cm|m²|l|litres|minutes|hours|seconds|years|days)(?:[^A-Za-z]|$))`)
})

// leveled is a part with the level of its heading.
type leveled struct {
	outline.Part
	Level int
}

// class is what the cells of a column are styled by.
func class(t *outline.Table, column int) string {
	switch figures, begins := t.Figures(column), t.Begins(column); {
	case figures && begins:
		return "figure begins"
	case figures:
		return "figure"
	case begins:
		return "begins"
	default:
		return ""
	}
}
