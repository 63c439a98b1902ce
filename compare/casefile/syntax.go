package casefile

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"strconv"
	"strings"
	"unicode/utf8"

	"gopkg.in/yaml.v3"
)

// largestFile is far above any case; years of prices or weather live in files of
// their own.
const largestFile = 1 << 20

// parse gives the one document of a file, or nil after noting what is wrong.
func (r *reader) parse(data []byte) *yaml.Node {
	data = bytes.TrimPrefix(data, []byte("\ufeff"))
	if at, fault := textFault(data); fault != "" {
		r.add(at, "", fault)
		return nil
	}
	d := yaml.NewDecoder(bytes.NewReader(data))
	var first, second yaml.Node
	if err := d.Decode(&first); err != nil {
		r.syntaxError(data, err)
		return nil
	}
	switch err := d.Decode(&second); {
	case errors.Is(err, io.EOF):
	case err != nil:
		r.syntaxError(data, err)
		return nil
	default:
		r.add(positionOf(&second), "", "begins a second document (---): a file holds one case, put the other in a file of its own")
		return nil
	}
	return r.root(first.Content[0])
}

func (r *reader) root(n *yaml.Node) *yaml.Node {
	switch {
	case n.Kind == yaml.ScalarNode && n.Tag == "!!null":
		r.add(position{1, 1}, "", emptyFile)
	case !r.usable("", n):
	case n.Kind != yaml.MappingNode:
		r.add(positionOf(n), "", fmt.Sprintf("the file is %s, allowed a group of keys: begin with a key such as household", seen(n)))
	default:
		return n
	}
	return nil
}

const emptyFile = "the file is empty: 'dhwcompare new FILE' writes a case to start from"

// textFault finds what keeps data from being text, and where.
func textFault(data []byte) (position, string) {
	if len(data) > largestFile {
		return position{1, 1}, fmt.Sprintf("the file has %d bytes, allowed up to %d: a case is small, check that this is the right file", len(data), largestFile)
	}
	if bytes.HasPrefix(data, []byte("\xff\xfe")) || bytes.HasPrefix(data, []byte("\xfe\xff")) {
		return position{1, 1}, "the file is UTF-16: save it as UTF-8"
	}
	if i := bytes.IndexByte(data, 0); i >= 0 {
		return positionIn(data, i), "holds a zero byte: this is no text file"
	}
	for i := 0; i < len(data); {
		c, size := utf8.DecodeRune(data[i:])
		if fault := runeFault(c, size, data[i]); fault != "" {
			return positionIn(data, i), fault
		}
		i += size
	}
	return position{}, ""
}

// runeFault says why a character may not stand in a file.
func runeFault(c rune, size int, first byte) string {
	switch {
	case c == utf8.RuneError && size == 1:
		return fmt.Sprintf("holds the byte %#02x, which is not UTF-8%s: save the file as UTF-8", first, latin(first))
	case c < ' ' && c != '\t' && c != '\n' && c != '\r', c == 0x7f:
		return fmt.Sprintf("holds the control character %#02x: delete it", c)
	default:
		return ""
	}
}

// latin reads a byte as the older encoding of western languages, in which 0xa0 to
// 0xff are the same characters as in Unicode.
func latin(b byte) string {
	const firstPrintable = 0xa0
	if b < firstPrintable {
		return ""
	}
	return fmt.Sprintf(" (in Latin-1 it is %q)", rune(b))
}

// positionIn gives line and column of a byte. CR, LF and both together end a line.
func positionIn(data []byte, offset int) position {
	before := bytes.ReplaceAll(data[:offset], []byte("\r\n"), []byte("\n"))
	before = bytes.ReplaceAll(before, []byte("\r"), []byte("\n"))
	return position{
		line:   1 + bytes.Count(before, []byte("\n")),
		column: 1 + utf8.RuneCount(before[bytes.LastIndexByte(before, '\n')+1:]),
	}
}

// syntaxError notes why a file is not sound YAML, in words for people.
func (r *reader) syntaxError(data []byte, err error) {
	if errors.Is(err, io.EOF) {
		r.add(position{1, 1}, "", emptyFile)
		return
	}
	at, text := position{1, 1}, strings.TrimPrefix(err.Error(), "yaml: ")
	if line, rest, ok := leadingLine(text); ok {
		at, text = position{line, 1}, rest
	}
	if line, what := referenceIn(data, text); what != "" {
		r.add(position{line, 1}, "", what)
		return
	}
	r.add(at, "", "is not sound YAML: "+advice(text, lineOf(data, at.line)))
}

func leadingLine(text string) (line int, rest string, ok bool) {
	number, rest, found := strings.Cut(strings.TrimPrefix(text, "line "), ": ")
	line, err := strconv.Atoi(number)
	return line, rest, found && err == nil
}

// referenceIn finds the place of a reference to nothing, which the parser does not
// give.
func referenceIn(data []byte, text string) (line int, what string) {
	rest, is := strings.CutPrefix(text, "unknown anchor '")
	name, _, ended := strings.Cut(rest, "' referenced")
	if !is || !ended {
		return 0, ""
	}
	at := max(0, bytes.Index(data, []byte("*"+name)))
	return positionIn(data, at).line, "refers to " + shown("*"+name) + ", which the file does not have: write the value itself"
}

// advice turns the parser's words into what to look for.
func advice(text, line string) string {
	indent := line[:len(line)-len(strings.TrimLeft(line, " \t"))]
	switch {
	case strings.Contains(indent, "\t") || strings.Contains(text, "tab character"):
		return "a tab stands in the indent of this line: indent with spaces"
	case strings.Contains(text, "exceeded max depth"):
		return "values lie deeper than in any case: look for brackets that are never closed"
	case strings.Contains(text, "unexpected end of stream"), strings.Contains(text, "did not find expected ',' or"):
		return "a quote or a bracket near this line, or above it, is never closed"
	case strings.Contains(text, "mapping values are not allowed"):
		return "a colon stands where none can: quote a text that holds one, and indent keys of a group alike"
	case strings.Contains(text, "cannot start any token"):
		return "a value begins with a sign that has a meaning of its own: put the text in quotes"
	default:
		return text + ": look at the indent, the colons and the quotes of this line and the one before"
	}
}

func lineOf(data []byte, number int) string {
	lines := strings.Split(strings.ReplaceAll(string(data), "\r\n", "\n"), "\n")
	if number < 1 || number > len(lines) {
		return ""
	}
	return lines[number-1]
}
