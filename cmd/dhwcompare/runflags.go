package main

import (
	"fmt"
	"path/filepath"
	"strconv"
	"strings"

	"github.com/spf13/cobra"

	"dhwcompare/compare"
	"dhwcompare/compare/casefile"
)

// defaultOut is the folder of results unless another is named.
const defaultOut = "dhwcompare-out"

// runFlags are the flags of the command run.
type runFlags struct {
	out, seed, years, trace value
	quiet, json             toggle
}

func newRunFlags() *runFlags {
	return &runFlags{
		out:   value{name: "out", placeholder: "DIR", example: "results", fallback: "./" + defaultOut, text: defaultOut, check: checkOut},
		seed:  value{name: "seed", placeholder: "N", example: "1", check: wholeNumber("seed")},
		years: value{name: "years", placeholder: "N", example: "20", check: wholeNumber("years")},
		trace: value{name: "trace", placeholder: "FILE.csv", example: "year1.csv", check: checkTrace},
		quiet: toggle{name: "quiet"},
		json:  toggle{name: "json"},
	}
}

// flagNames lists the flags, for hints.
func flagNames() []string { return []string{"out", "seed", "years", "quiet", "json", "trace"} }

// addTo makes the flags known to the command.
func (o *runFlags) addTo(cmd *cobra.Command) {
	flags := cmd.Flags()
	flags.SortFlags = false
	flags.Var(&o.out, o.out.name, "write the results into this folder")
	flags.Var(&o.seed, o.seed.name, "start the random numbers here, in place of the case's seed")
	flags.Var(&o.years, o.years.name, "simulate this many years, in place of the case's number")
	addToggle(cmd, &o.quiet, "print neither the comparison nor progress")
	addToggle(cmd, &o.json, "print the comparison as JSON in place of the table")
	flags.Var(&o.trace, o.trace.name, "also write the first year of both options, step by step (about 130 MB)")
	cmd.SetFlagErrorFunc(flagErrors(append(flagNames(), "help")))
	// The flags exist, which is all that could go wrong.
	_ = cmd.MarkFlagDirname(o.out.name)
	_ = cmd.MarkFlagFilename(o.trace.name, "csv")
}

// checkOut refuses what people write who want the results printed.
func checkOut(text string) error {
	if text == "-" {
		return &usageError{what: `--out "-": a folder of results cannot go to standard output`, hint: "--json prints the comparison"}
	}
	return nil
}

func checkTrace(text string) error {
	if text == "-" {
		return &usageError{what: `--trace "-": the trace cannot go to standard output`, hint: "name a file, such as --trace year1.csv"}
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

// rangeOf gives the range of a key of the case.
func rangeOf(name string) (low, high uint64) {
	for _, k := range casefile.Keys() {
		if k.Path == name {
			return uint64(k.Min), uint64(k.Max)
		}
	}
	return 0, 0
}

// override puts the flags in place of the case's keys.
func (o *runFlags) override(doc *compare.Document) {
	if o.seed.given {
		doc.Case.Seed = o.seed.number()
	}
	if o.years.given {
		doc.Case.Years = int(o.years.number())
	}
	doc.Inputs = casefile.Inputs(doc.Case)
}

// checkPaths refuses files that get in each other's way.
func (o *runFlags) checkPaths(args []string) error {
	if !o.trace.given {
		return nil
	}
	trace, err := filepath.Abs(o.trace.text)
	if err != nil {
		return err
	}
	out, err := filepath.Abs(o.out.text)
	if err != nil {
		return err
	}
	if len(args) > 0 && sameFile(args[0], trace) {
		return &usageError{
			what: fmt.Sprintf("--trace %q is the case file, and would overwrite it", o.trace.text),
			hint: "name another file, such as --trace year1.csv",
		}
	}
	if rel, err := filepath.Rel(out, trace); err == nil && filepath.IsLocal(rel) {
		return &usageError{
			what: fmt.Sprintf("--trace %q lies in the folder of results %q, which is replaced as a whole", o.trace.text, o.out.text),
			hint: "name a file outside it, such as --trace year1.csv",
		}
	}
	return nil
}
