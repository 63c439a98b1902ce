package charts

import (
	"bytes"
	"fmt"
	"html"
)

const (
	// fontWritten is how the drawing library names the font; other machines need
	// one that they have, of the same widths or close. In text the quote would be
	// escaped, so that this can only be an attribute.
	fontWritten = `style="font-family:Liberation Sans;`
	fontWanted  = `style="font-family:Liberation Sans,Arial,Helvetica,sans-serif;`

	declaration = `<?xml version="1.0" encoding="UTF-8"?>` + "\n"
)

// svgDocument is a file: it states its size in print.
func (c Chart) svgDocument(body []byte) []byte {
	size := fmt.Sprintf(` width="%.5gpt" height="%.5gpt"`, width.Points(), c.height.Points())
	return append([]byte(declaration), c.svgElement(body, size)...)
}

// svgElement replaces the head that the drawing library wrote by one with a role,
// a title and a description.
func (c Chart) svgElement(body []byte, size string) []byte {
	var out bytes.Buffer
	id := "chart-" + c.Name
	fmt.Fprintf(&out, `<svg xmlns="http://www.w3.org/2000/svg"%s viewBox="0 0 %.5g %.5g" role="img" aria-labelledby="%s-title %s-desc">`+"\n",
		size, width.Points(), c.height.Points(), id, id)
	fmt.Fprintf(&out, "<title id=\"%s-title\">%s</title>\n<desc id=\"%s-desc\">%s</desc>\n",
		id, html.EscapeString(c.Title), id, html.EscapeString(c.Alt))
	out.Write(bytes.ReplaceAll(withoutHead(body), []byte(fontWritten), []byte(fontWanted)))
	return out.Bytes()
}

// withoutHead drops everything up to the end of the opening svg tag.
func withoutHead(svg []byte) []byte {
	_, rest, _ := bytes.Cut(svg, []byte("<svg"))
	_, rest, _ = bytes.Cut(rest, []byte(">\n"))
	return rest
}
