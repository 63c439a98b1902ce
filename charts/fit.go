package charts

import (
	"sort"
	"strings"

	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"
)

const ellipsis = "…"

// wrap breaks text at spaces into lines no wider than room, and ends the last
// line that is allowed with an ellipsis if there is more.
func wrap(text string, s draw.TextStyle, room vg.Length, most int) []string {
	var lines []string
	rest := unbroken(strings.Fields(text))
	for len(rest) > 0 {
		if len(lines) == most-1 {
			return append(lines, fit(strings.Join(rest, " "), s, room))
		}
		n := wordsThatFit(rest, s, room)
		lines = append(lines, fit(strings.Join(rest[:n], " "), s, room))
		rest = rest[n:]
	}
	return lines
}

// unbroken keeps a unit on the line of its number.
func unbroken(list []string) []string {
	var out []string
	for _, w := range list {
		if n := len(out); n > 0 && isUnit(w) && endsInDigit(out[n-1]) {
			out[n-1] += " " + w
			continue
		}
		out = append(out, w)
	}
	return out
}

func isUnit(w string) bool {
	switch strings.TrimRight(w, ".,;:)") {
	case "°C", "kWh", "kW", "W", "l", "l/min", "m²", "%":
		return true
	}
	return false
}

func endsInDigit(w string) bool {
	last := w[len(w)-1]
	return last >= '0' && last <= '9'
}

// balanced is wrap with the lines about equally long: no word is left alone on the
// last line.
func balanced(text string, s draw.TextStyle, room vg.Length, most int) []string {
	const narrower, narrowest = 0.95, 0.5
	lines := wrap(text, s, room, most)
	for r := room * narrower; len(lines) > 1 && r > room*narrowest; r *= narrower {
		tried := wrap(text, s, r, most+1)
		if len(tried) > len(lines) {
			break
		}
		lines = tried
	}
	return lines
}

// wordsThatFit counts the words that fit on a line; one always goes.
func wordsThatFit(list []string, s draw.TextStyle, room vg.Length) int {
	n := 1
	for n < len(list) && s.Width(strings.Join(list[:n+1], " ")) <= room {
		n++
	}
	return n
}

// fit cuts text to the room there is.
func fit(text string, s draw.TextStyle, room vg.Length) string {
	if s.Width(text) <= room {
		return text
	}
	letters := []rune(text)
	tooMany := sort.Search(len(letters), func(n int) bool { return s.Width(string(letters[:n])+ellipsis) > room })
	return strings.TrimRight(string(letters[:max(0, tooMany-1)]), " ") + ellipsis
}
