package main

import (
	"fmt"
	"strconv"
	"strings"

	"github.com/spf13/cobra"

	"dhwcompare/compare"
	"dhwcompare/compare/casefile"
)

// caseFlags are the flags of every command that simulates a case.
type caseFlags struct {
	out, seed, years value
	quiet, json      toggle
}

// newCaseFlags makes them, with the folder of results unless another is named.
func newCaseFlags(folder string) caseFlags {
	return caseFlags{
		out:   value{name: "out", placeholder: "DIR", example: "results", fallback: "./" + folder, text: folder, check: checkOut},
		seed:  value{name: "seed", placeholder: "N", example: "1", check: wholeNumber("seed")},
		years: value{name: "years", placeholder: "N", example: "20", check: wholeNumber("years")},
		quiet: toggle{name: "quiet"},
		json:  toggle{name: "json"},
	}
}

// addTo makes the flags known to a command, which prints what.
func (o *caseFlags) addTo(cmd *cobra.Command, what string) {
	flags := cmd.Flags()
	flags.SortFlags = false
	flags.Var(&o.out, o.out.name, "write the results into this folder")
	flags.Var(&o.seed, o.seed.name, "start the random numbers here, in place of the case's seed")
	flags.Var(&o.years, o.years.name, "simulate this many years, in place of the case's number")
	addToggle(cmd, &o.quiet, fmt.Sprintf("print neither %s nor progress", what))
	addToggle(cmd, &o.json, fmt.Sprintf("print %s as JSON in place of the table", what))
	// The flag exists, which is all that could go wrong.
	_ = cmd.MarkFlagDirname(o.out.name)
}

// names lists the flags, for hints.
func (o *caseFlags) names() []string {
	return []string{o.out.name, o.seed.name, o.years.name, o.quiet.name, o.json.name}
}

// override puts the flags in place of the case's keys.
func (o *caseFlags) override(doc *compare.Document) {
	if o.seed.given {
		doc.Case.Seed = o.seed.number()
	}
	if o.years.given {
		doc.Case.Years = int(o.years.number())
	}
	doc.Inputs = casefile.Inputs(doc.Case)
}

// checkOut refuses what people write who want the results printed.
func checkOut(text string) error {
	if text == "-" {
		return &usageError{what: `--out "-": a folder of results cannot go to standard output`, hint: "--json prints the comparison"}
	}
	return nil
}

// wholeNumber checks a flag by the range of the case's key of the same name.
func wholeNumber(name string) func(string) error {
	return func(text string) error {
		low, high := rangeOf(name)
		n, err := strconv.ParseUint(text, 10, 64)
		if err == nil && n >= low && n <= high {
			return nil
		}
		return &usageError{
			what: fmt.Sprintf("--%s %q is not a whole number from %d to %d", name, text, low, high),
			hint: hintOn(text, name),
		}
	}
}

// hintOn guesses what was meant by something that is no proper number.
func hintOn(text, name string) string {
	switch {
	case strings.HasPrefix(text, "-"):
		return "negative numbers have no meaning here"
	case strings.ContainsAny(text, ".,eE_"):
		return "write digits only, without point, comma or power"
	default:
		return fmt.Sprintf("leave --%s out to use that of the case", name)
	}
}

// numberOf checks a flag by the range of a key of the case.
func numberOf(name, key string) func(string) error {
	return func(text string) error {
		low, high := 0.0, 0.0
		for _, k := range casefile.Keys() {
			if k.Path == key {
				low, high = k.Min, k.Max
			}
		}
		v, err := strconv.ParseFloat(text, 64)
		if err == nil && v >= low && v <= high {
			return nil
		}
		return &usageError{
			what: fmt.Sprintf("--%s %q is not a number from %g to %g", name, text, low, high),
			hint: fmt.Sprintf("leave --%s out to use that of the case", name),
		}
	}
}

// rangeOf gives the range of a key of the case.
func rangeOf(name string) (low, high uint64) {
	for _, k := range casefile.Keys() {
		if k.Path == name {
			return uint64(k.Min), uint64(k.Max)
		}
	}
	return 0, 0
}
