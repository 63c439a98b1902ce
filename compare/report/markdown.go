package report

import (
	"bytes"
	"fmt"
	"strings"
	"sync"

	"dhwcompare/compare"
	"dhwcompare/compare/report/outline"
)

// Markdown gives the bytes of report.md: the text of the page for those who write
// a report of their own, with the charts as links to the files beside it. Texts
// that somebody else wrote appear as text.
func Markdown(doc *compare.Document) ([]byte, error) {
	o, err := outline.New(doc)
	if err != nil {
		return nil, err
	}
	var m markdown
	m.heading(1, "Hot water from a heat pump: compact store or cylinder?")
	if home := Plain(o.Home); home != "" {
		m.line(escaped(home))
	}
	for i := range o.Customer {
		m.part(&o.Customer[i], 2)
	}
	m.heading(2, "For the consultant")
	for i := range o.Parts {
		m.part(&o.Parts[i], 3)
	}
	m.line(escaped(o.Caution))
	return m.Bytes(), nil
}

// markdown collects paragraphs.
type markdown struct{ bytes.Buffer }

// line writes a paragraph, an empty line after it.
func (m *markdown) line(s string) { m.WriteString(s + "\n\n") }

func (m *markdown) heading(level int, s string) {
	m.line(strings.Repeat("#", level) + " " + escaped(s))
}

func (m *markdown) part(p *outline.Part, level int) {
	title := p.Title
	if p.Number != "" {
		title = p.Number + " " + title
	}
	m.heading(level, title)
	for i := range p.Blocks {
		m.block(&p.Blocks[i])
	}
}

func (m *markdown) block(b *outline.Block) {
	switch {
	case b.Text != nil:
		m.line(marked(b.Text))
	case b.Points != nil:
		for i := range b.Points {
			m.WriteString("- " + marked(&b.Points[i]) + "\n")
		}
		m.WriteString("\n")
	case b.Table != nil:
		m.table(b.Table)
	case b.Picture != nil:
		m.picture(b.Picture)
	case b.Listing != "":
		m.listing(b.Listing)
	}
	for i := range b.Pictures {
		m.picture(&b.Pictures[i])
	}
}

// marked writes a paragraph, its first words standing out.
func marked(p *outline.Paragraph) string {
	if p.Lead == "" {
		return escaped(p.Text)
	}
	return strings.TrimSpace("**" + escaped(p.Lead) + "** " + escaped(p.Text))
}

// picture links to the file of a chart; one that exists on the page alone is told
// in words.
func (m *markdown) picture(p *outline.Picture) {
	if p.Chart != "" {
		m.line(fmt.Sprintf("![%s](charts/%s.svg)", escaped(p.Alt), p.Chart))
		if p.Caption != "" {
			m.line(escaped(p.Caption))
		}
		return
	}
	m.line(marked(&outline.Paragraph{Lead: p.Title + ".", Text: p.Alt + " " + p.Caption}))
}

// table writes heads that span columns in front of those below them.
func (m *markdown) table(t *outline.Table) {
	m.line("**" + escaped(t.Caption) + "**")
	heads := t.FlatHeads()
	m.row(heads)
	rule := make([]string, len(heads))
	for i := range rule {
		rule[i] = "---"
		if t.Figures(i) {
			rule[i] = "---:"
		}
	}
	m.WriteString("| " + strings.Join(rule, " | ") + " |\n")
	for _, g := range t.Groups {
		if g.Name != "" {
			m.WriteString("| **" + escaped(g.Name) + "** " + strings.Repeat("| ", len(heads)-1) + "|\n")
		}
		for _, r := range g.Rows {
			m.row(r)
		}
	}
	m.WriteString("\n")
	if t.Note != "" {
		m.line(escaped(t.Note))
	}
}

func (m *markdown) row(cells []string) {
	list := make([]string, len(cells))
	for i, c := range cells {
		list[i] = escaped(c)
	}
	m.WriteString("| " + strings.Join(list, " | ") + " |\n")
}

// listing fences lines with more signs than any run of them inside.
func (m *markdown) listing(s string) {
	longest, run := 2, 0
	for _, r := range s {
		if r == '`' {
			run++
			longest = max(longest, run)
		} else {
			run = 0
		}
	}
	fence := strings.Repeat("`", longest+1)
	m.line(fence + "yaml\n" + strings.TrimRight(PlainLines(s), "\n") + "\n" + fence)
}

// escaped writes plain text so that it cannot become markup: on one line, with
// every sign that means something taken for itself.
func escaped(s string) string {
	s = inMiddle().Replace(Plain(s))
	return atStart(strings.TrimSpace(s))
}

// inMiddle guards what means something anywhere.
var inMiddle = sync.OnceValue(func() *strings.Replacer {
	return strings.NewReplacer(
		`\`, `\\`, "`", "\\`", `*`, `\*`, `_`, `\_`, `[`, `\[`, `]`, `\]`, `<`, `&lt;`, `>`, `&gt;`, `&`, `&amp;`,
		`|`, `\|`, `~`, `\~`, `$`, `\$`, `://`, `:\//`, `www.`, `www\.`, `@`, `\@`, `#`, `\#`,
	)
})

// atStart guards what means something in front of a line only.
func atStart(s string) string {
	if s == "" {
		return s
	}
	if strings.ContainsRune("+-=:", rune(s[0])) {
		return `\` + s
	}
	if digits := len(s) - len(strings.TrimLeft(s, "0123456789")); digits > 0 && digits < len(s) && strings.ContainsRune(".)", rune(s[digits])) {
		return s[:digits] + `\` + s[digits:]
	}
	return s
}
