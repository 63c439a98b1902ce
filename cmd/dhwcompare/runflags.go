package main

import (
	"fmt"
	"path/filepath"

	"github.com/spf13/cobra"
)

// defaultOut is the folder of results unless another is named.
const defaultOut = "dhwcompare-out"

// runFlags are the flags of the command run.
type runFlags struct {
	caseFlags
	trace value
	full  toggle
}

func newRunFlags() *runFlags {
	return &runFlags{
		caseFlags: newCaseFlags(defaultOut),
		trace:     value{name: "trace", placeholder: "FILE.csv", example: "year1.csv", check: checkTrace},
		full:      toggle{name: "full"},
	}
}

// flagNames lists the flags, for hints.
func flagNames() []string { return append(newRunFlags().names(), "full", "trace") }

// addTo makes the flags known to the command.
func (o *runFlags) addTo(cmd *cobra.Command) {
	o.caseFlags.addTo(cmd, "the comparison")
	addToggle(cmd, &o.full, "print every figure, the reasons and what to beware of")
	cmd.Flags().Var(&o.trace, o.trace.name, "also write the first year of both options, step by step (about 130 MB)")
	cmd.SetFlagErrorFunc(flagErrors(append(flagNames(), "help")))
	// The flag exists, which is all that could go wrong.
	_ = cmd.MarkFlagFilename(o.trace.name, "csv")
}

func checkTrace(text string) error {
	if text == "-" {
		return &usageError{what: `--trace "-": the trace cannot go to standard output`, hint: "name a file, such as --trace year1.csv"}
	}
	return nil
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

// sparesFiles refuses a trace that would overwrite a file that the case refers to.
func (o *runFlags) sparesFiles(referred []string) error {
	for _, path := range referred {
		if o.trace.given && sameFile(path, o.trace.text) {
			return &usageError{
				what: fmt.Sprintf("--trace %q is a file that the case refers to, and would be overwritten", o.trace.text),
				hint: "name another file, such as --trace year1.csv",
			}
		}
	}
	return nil
}
