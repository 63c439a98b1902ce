package casefile

import (
	"fmt"
	"strings"
	"unicode/utf8"

	"dhwcompare/compare"
)

// Write gives the filled-in case: every key with its value, its unit and what it
// means. Values that follow from others stand in comments, so that a change of
// what they follow from takes effect. Load gives an equal case again, and the
// same case always gives the same bytes. A price series of a tariff is not part
// of a case file.
func Write(c *compare.Case) []byte {
	w := writer{currency: c.Currency}
	w.line("# A filled-in case: every key with the value that was used. A key behind a # is")
	w.line("# not stated: its value follows from others, or it plays no part here.")
	fields := table()
	for i := range fields {
		w.field(c, &fields[i])
	}
	return []byte(w.text.String())
}

// writer lays out a case file.
type writer struct {
	text    strings.Builder
	section string
	// currency is the code of the case.
	currency string
}

const (
	commentColumn = 44
	pageWidth     = 120
)

func (w *writer) line(text string) { w.text.WriteString(text + "\n") }

// field writes one key, after the headings of a section that it begins.
func (w *writer) field(c *compare.Case, f *field[compare.Case]) {
	w.enter(f.section())
	v := f.bind(c)
	remark := ""
	switch {
	case f.why(c) != "":
		remark = "plays no part: " + f.why(c)
	case v.derived():
		remark = "follows from " + nearNames(&f.Key)
	}
	w.key(&f.Key, v, remark != "", remark)
}

// key writes a key with its value, as a comment if it is not stated.
func (w *writer) key(k *Key, v value, asComment bool, remark string) {
	indent := strings.Repeat("  ", strings.Count(k.Path, "."))
	head, rest, block := strings.Cut(v.yaml(indent+"  "), "\n")
	first := k.name() + ":"
	if head != "" {
		first += " " + head
	}
	w.commented(indent, first, note(k, w.currency, remark), asComment)
	if block {
		for _, l := range strings.Split(rest, "\n") {
			w.commented("", l, "", asComment)
		}
	}
}

// commented writes a line with a note behind it, or above it where it is long.
func (w *writer) commented(indent, text, remark string, asComment bool) {
	if asComment {
		text = "# " + text
	}
	text = indent + text
	if remark == "" {
		w.line(text)
		return
	}
	pad := max(2, commentColumn-utf8.RuneCountInString(text))
	if wide := text + strings.Repeat(" ", pad) + "# " + remark; utf8.RuneCountInString(wide) <= pageWidth {
		w.line(wide)
		return
	}
	w.line(indent + "# " + remark)
	w.line(text)
}

// note is what stands beside a key: unit, meaning, and a remark.
func note(k *Key, currency, remark string) string {
	text := k.Help
	if k.Unit != "" && k.Unit != shareUnit {
		text = k.unitIn(currency) + "; " + text
	}
	if remark != "" {
		text += " (" + remark + ")"
	}
	return text
}

func nearNames(k *Key) string {
	list := make([]string, len(k.From))
	for i, from := range k.From {
		list[i] = (&Key{Path: from}).name()
	}
	return strings.Join(list, ", ")
}

// enter writes the headings of a section that begins here.
func (w *writer) enter(section string) {
	if section == w.section {
		return
	}
	if section == "" {
		w.line("")
	}
	path := ""
	for i, name := range strings.Split(section, ".") {
		path = strings.TrimPrefix(path+"."+name, ".")
		if section == "" || path == w.section || strings.HasPrefix(w.section, path+".") {
			continue
		}
		w.line("")
		w.heading(strings.Repeat("  ", i), name, path)
	}
	w.section = section
}

func (w *writer) heading(indent, name, path string) {
	if title := sectionTitle(path); title != "" {
		w.line(fmt.Sprintf("%s# %s", indent, title))
	}
	w.line(indent + name + ":")
}
