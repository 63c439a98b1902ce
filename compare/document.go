package compare

import "dhwcompare/compare/datafile"

// Document is what a command produced: the decision, the case that it is of, and
// how each input came about. Every output is a view of it.
type Document struct {
	Case       *Case
	Inputs     []Input
	CaseYAML   []byte          // the filled-in case, which gives the same results again
	Files      []datafile.File // that the filled-in case refers to
	Comparison *Comparison
	Draws      *Drawoff  // timed draw-off tests, or nil
	Settings   *Settings // what each setting of the compact store buys, or nil

	Sizing      *Sizing      // the best of each option, or nil
	Sensitivity *Sensitivity // which inputs move the decision, or nil
}

// Input is one key of the case as it was used.
type Input struct {
	Key     string  // dotted, such as household.people
	Text    string  // the value, as a person reads it
	Number  float64 // the value, if it is one number
	Numeric bool
	Unit    string // empty for a plain number or text
	Origin  Origin
	Source  string // where the default comes from, or what the value is derived from
	Help    string // what the key means
}

// Origin says where a value comes from.
type Origin string

// The origins.
const (
	Stated  Origin = "stated"  // in the case file, and unlike the default
	Assumed Origin = "default" // the documented default
	Derived Origin = "derived" // left out, worked out from other keys
)
