package casefile

import (
	"strings"

	"dhwcompare/compare"
)

// Template gives a case to start from: what has no default filled with an
// invented example, the most useful other keys behind a # with their defaults, and
// how a visit to the home finds out what most hangs on.
func Template() []byte {
	c := example()
	w := writer{currency: c.Currency}
	w.line("# A case to start from. Put your home's figures in place of the invented ones.")
	w.line("# Keys that stand behind a # have the value shown; to state another one, delete the #")
	w.line("# and the space after it.")
	w.line("# 'How to find out' is for a visit to the home; it ends with the result that hangs most on")
	w.line("# the figure, as measured on the invented demo home.")
	w.line("# 'dhwcompare check FILE' prints the case with every key there is.")
	fields := table()
	for i := range fields {
		f := &fields[i]
		s, surveyed := surveyOf(f.Path)
		if !f.Common && !surveyed {
			continue
		}
		w.enter(f.section())
		if surveyed {
			w.survey(&s, strings.Repeat("  ", strings.Count(f.Path, ".")))
		}
		w.key(&f.Key, f.bind(&c), !isExample(&f.Key), exampleRemark(f, &c))
	}
	return []byte(w.text.String())
}

func exampleRemark(f *field[compare.Case], c *compare.Case) string {
	switch {
	case isExample(&f.Key):
		return "invented"
	case f.bind(c).derived():
		return "follows from " + nearNames(&f.Key)
	default:
		return ""
	}
}

// isExample reports a key that a new case states.
func isExample(k *Key) bool { return k.Required || k.Path == "title" }

// example is a home that nobody would take for a real one.
func example() compare.Case {
	c := compare.Default()
	c.Title = "Invented example: replace it with your home"
	c.Household.People = 3
	c.Climate.OutdoorC = monthly{5, 5, 7, 9, 12, 15, 17, 17, 14, 11, 7, 5}
	return c
}
