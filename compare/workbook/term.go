package workbook

import (
	"strings"
)

// term is a piece of a formula together with its value.
type term struct {
	text  string
	value any  // float64, string or bool
	loose bool // a sum or difference, which needs brackets within a product
}

// num is the value as a number; text and truth count as nothing.
func (t term) num() float64 {
	v, _ := t.value.(float64)
	return v
}

func (t term) tight() string {
	if t.loose {
		return "(" + t.text + ")"
	}
	return t.text
}

// span is a range of numeric cells.
type span struct {
	text   string
	values []float64
}

func plus(first term, more ...term) term {
	text, v := first.text, first.num()
	for _, t := range more {
		text += "+" + t.text
		v += t.num()
	}
	return term{text: text, value: v, loose: len(more) > 0 || first.loose}
}

func minus(a, b term) term {
	return term{text: a.text + "-" + b.tight(), value: a.num() - b.num(), loose: true}
}

func times(first term, more ...term) term {
	text, v := first.tight(), first.num()
	for _, t := range more {
		text += "*" + t.tight()
		v *= t.num()
	}
	return term{text: text, value: v}
}

// quotient is a/b where b cannot be zero.
func quotient(a, b term) term {
	return term{text: a.tight() + "/" + b.tight(), value: a.num() / b.num()}
}

// ratio is a/b, and 0 where b is 0: nothing ran, so nothing can be said.
func ratio(a, b term) term {
	v := 0.0
	if b.num() != 0 {
		v = a.num() / b.num()
	}
	return term{text: "IF(" + b.text + "=0,0," + a.tight() + "/" + b.tight() + ")", value: v}
}

func sum(s span) term {
	v := 0.0
	for _, x := range s.values {
		v += x
	}
	return call("SUM", v, s.text)
}

// call is a function of the spreadsheet with its value.
func call(function string, value any, args ...string) term {
	return term{text: function + "(" + strings.Join(args, ",") + ")", value: value}
}

// choose is IF: one of two terms.
func choose(condition term, yes, no term) term {
	out := no
	if is, _ := condition.value.(bool); is {
		out = yes
	}
	return call("IF", out.value, condition.text, yes.text, no.text)
}

// words is a text within a formula. The text is the program's own.
func words(s string) term {
	return term{text: `"` + strings.ReplaceAll(s, `"`, `""`) + `"`, value: s}
}

// compared is a comparison of two terms whose outcome is known.
func compared(a term, operator string, b term, outcome bool) term {
	return term{text: a.text + operator + b.text, value: outcome, loose: true}
}

// one and zero are the only numbers within formulas.
func one() term  { return term{text: "1", value: 1.0} }
func zero() term { return term{text: "0", value: 0.0} }

// yesOrNo puts a condition in words.
func yesOrNo(condition term) term { return choose(condition, words(yesWord), words(noWord)) }

// Answers within formulas.
const (
	yesWord = "yes"
	noWord  = "no"
)
