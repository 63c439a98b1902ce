package workbook

import (
	"archive/zip"
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"regexp"
	"sort"
	"strconv"
	"strings"
	"sync"
	"time"

	"github.com/xuri/excelize/v2"
)

// archive takes the parts of the file from the library, puts the values beside
// the formulas and writes the parts in one order with one time: the library
// stores no typed values beside formulas, and orders some parts at random.
type archive struct {
	out    io.Writer
	parts  map[string]*bytes.Buffer
	sheets map[string]*sheet // by part
	given  map[int]bool      // styles that keep text text
}

var _ excelize.ZipWriter = (*archive)(nil)

// Create begins a part.
func (a *archive) Create(name string) (io.Writer, error) {
	part := &bytes.Buffer{}
	a.parts[name] = part
	return part, nil
}

// AddFS is part of the library's interface; nothing here comes from files.
func (a *archive) AddFS(fs.FS) error { return errors.New("a workbook takes no files from a folder") }

// Close writes the archive.
func (a *archive) Close() error {
	names := make([]string, 0, len(a.parts))
	for name := range a.parts {
		names = append(names, name)
	}
	sort.Strings(names)
	z := zip.NewWriter(a.out)
	for _, name := range names {
		data, err := a.finish(name, a.parts[name].Bytes())
		if err != nil {
			return err
		}
		// The oldest time that the format knows: the file tells no time.
		w, err := z.CreateHeader(&zip.FileHeader{Name: name, Method: zip.Deflate, Modified: time.Date(1980, 1, 1, 0, 0, 0, 0, time.UTC)})
		if err != nil {
			return err
		}
		if _, err := w.Write(data); err != nil {
			return err
		}
	}
	return z.Close()
}

func (a *archive) finish(name string, data []byte) ([]byte, error) {
	switch {
	case name == "[Content_Types].xml":
		return sortDefaults(data), nil
	case name == "xl/styles.xml":
		return quoteGiven(data, a.given)
	case a.sheets[name] != nil:
		s := a.sheets[name]
		filled, err := fillCaches(name, data, s.caches)
		if err != nil {
			return nil, err
		}
		return s.rest.into(filled, s.book)
	}
	return data, nil
}

// sortDefaults puts the default content types in order.
func sortDefaults(data []byte) []byte {
	entry := regexp.MustCompile(`<Default [^>]*?(?:/>|></Default>)`)
	all := entry.FindAllString(string(data), -1)
	sort.Strings(all)
	i := -1
	return entry.ReplaceAllFunc(data, func([]byte) []byte {
		i++
		return []byte(all[i])
	})
}

// quoteGiven marks the styles of text that somebody else wrote, so that editing
// such a cell does not turn the text into a formula.
func quoteGiven(data []byte, given map[int]bool) ([]byte, error) {
	block := regexp.MustCompile(`(?s)<cellXfs .*?</cellXfs>`)
	found := block.FindIndex(data)
	if found == nil {
		return nil, errors.New("the workbook's styles have no cell formats")
	}
	i := -1
	marked := regexp.MustCompile(`<xf `).ReplaceAllFunc(data[found[0]:found[1]], func(xf []byte) []byte {
		i++
		if given[i] {
			return []byte(`<xf quotePrefix="1" `)
		}
		return xf
	})
	return append(append(append([]byte(nil), data[:found[0]]...), marked...), data[found[1]:]...), nil
}

// Around a formula as the library writes it, in a cell of which name and style come
// before.
const (
	cellBegins    = `<c r="`
	formulaBegins = ` t="str"><f>`
	formulaEnds   = `</f></c>`
)

// fillCaches puts a typed value beside every formula of a sheet. A formula
// without one is an error: readers that do not calculate would show a gap.
func fillCaches(name string, data []byte, values map[string]any) ([]byte, error) {
	filled := 0
	var out []byte
	for rest := data; ; {
		head, tail, found := bytes.Cut(rest, []byte(formulaBegins))
		if !found {
			out = append(out, rest...)
			break
		}
		formula, after, _ := bytes.Cut(tail, []byte(formulaEnds))
		begin := bytes.LastIndex(head, []byte(cellBegins)) + len(cellBegins)
		cellName, style, _ := bytes.Cut(head[begin:], []byte(`"`))
		kind, value, ok := encode(values[string(cellName)])
		if ok {
			filled++
		}
		out = append(out, head[:begin]...)
		out = fmt.Appendf(out, `%s"%s%s><f>%s</f><v>%s</v></c>`, cellName, style, kind, formula, value)
		rest = after
	}
	if formulas := bytes.Count(data, []byte("<f>")) + bytes.Count(data, []byte("<f ")); formulas != filled {
		return nil, fmt.Errorf("%s: %d formulas but %d values beside them", name, formulas, filled)
	}
	return out, nil
}

// encode gives type attribute and text of a value.
func encode(v any) (kind, value string, ok bool) {
	switch v := v.(type) {
	case float64:
		return "", strconv.FormatFloat(v, 'g', -1, 64), true
	case bool:
		if v {
			return ` t="b"`, "1", true
		}
		return ` t="b"`, "0", true
	case string:
		return ` t="str"`, escapeXML(v), true
	}
	return "", "", false
}

func escapeXML(s string) string { return xmlSigns().Replace(s) }

var xmlSigns = sync.OnceValue(func() *strings.Replacer {
	return strings.NewReplacer("&", "&amp;", "<", "&lt;", ">", "&gt;")
})
