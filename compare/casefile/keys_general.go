package casefile

import (
	"fmt"
	"strings"

	"dhwcompare/compare"
)

// Where a default comes from if no publication gives it.
const (
	practice = "common practice, no source"
	memory   = "from memory"
	ourRule  = "a rule of this program"
)

const longestTitle = 120

func generalKeys() []field[compare.Case] {
	return []field[compare.Case]{
		line("title", longestTitle, func(c *compare.Case) *string { return &c.Title }, "no title", "what the results are headed with").common(),
		currency(),
		seed(),
		count("years", 1, 1000, func(c *compare.Case) *int { return &c.Years }, ourRule,
			"simulated years, each with its own weather and draw-offs; more years narrow the intervals").common(),
	}
}

func seed() field[compare.Case] {
	return field[compare.Case]{
		Key: Key{Path: "seed", Form: "a whole number", Max: largestSeed, Source: ourRule,
			Help: "number from which all chance is drawn; the same seed gives the same results"},
		bind: func(c *compare.Case) value { return seedValue{at: &c.Seed} },
	}
}

func currency() field[compare.Case] {
	return field[compare.Case]{
		Key: Key{Path: "currency", Form: "three capital letters, such as GBP or EUR", Source: ourRule,
			Help: "currency of every rate and cost", Remedy: "give the code of ISO 4217"},
		bind: func(c *compare.Case) value { return currencyValue{at: &c.Currency} },
	}
}

type currencyValue struct {
	stated
	at *string
}

func (v currencyValue) read(r *reader, p place) {
	if !r.scalar(p) {
		return
	}
	code := p.node.Value
	if !isCurrency(code) {
		advice := ""
		if upper := strings.ToUpper(code); isCurrency(upper) {
			advice = fmt.Sprintf("write %s", upper)
		}
		r.refuse(p, advice)
		return
	}
	*v.at = code
}

func (v currencyValue) yaml(string) string { return *v.at }

func isCurrency(code string) bool {
	const letters = 3
	return len(code) == letters && strings.Trim(code, "ABCDEFGHIJKLMNOPQRSTUVWXYZ") == ""
}
