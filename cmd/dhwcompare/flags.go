package main

import (
	"errors"
	"fmt"
	"strconv"
	"strings"

	"github.com/spf13/cobra"
)

// value is a flag that takes a value, at most once.
type value struct {
	name, placeholder string
	example           string // a good value, for hints
	fallback          string // shown in the help
	check             func(text string) error

	text  string
	given bool
}

// String gives the value shown as default in the help.
func (v *value) String() string { return v.fallback }

// Type gives what stands for the value in the help.
func (v *value) Type() string { return v.placeholder }

// Set takes the value from the command line.
func (v *value) Set(text string) error {
	switch {
	case v.given:
		return v.wrong(text, "is given a second time", "give --%s once", v.name)
	case text == "":
		return v.wrong(text, "is empty", "give it a value, such as --%s %s", v.name, v.example)
	case strings.HasPrefix(text, "--"):
		return v.wrong(text, "looks like the next flag: the value is missing", "give it a value, such as --%s %s", v.name, v.example)
	}
	if v.check != nil {
		if err := v.check(text); err != nil {
			return err
		}
	}
	v.text, v.given = text, true
	return nil
}

// number gives the value of a flag whose check lets whole numbers through only.
func (v *value) number() uint64 {
	n, _ := strconv.ParseUint(v.text, 10, 64) // checked when it was set
	return n
}

// decimal gives the value of a flag whose check lets numbers through only.
func (v *value) decimal() float64 {
	x, _ := strconv.ParseFloat(v.text, 64) // checked when it was set
	return x
}

// wrong makes the error of a value.
func (v *value) wrong(text, what, hint string, args ...any) error {
	return &usageError{what: fmt.Sprintf("--%s %q %s", v.name, text, what), hint: fmt.Sprintf(hint, args...)}
}

// toggle is a flag that is on once it is given.
type toggle struct {
	name string
	on   bool
}

// String gives no default: a toggle is off.
func (t *toggle) String() string { return "" }

// Type keeps the help from showing a value.
func (t *toggle) Type() string { return "bool" }

// Set takes the value, which is true unless one is written behind an equals sign.
func (t *toggle) Set(text string) error {
	on, err := strconv.ParseBool(text)
	if err != nil {
		return &usageError{
			what: fmt.Sprintf("--%s takes no value, and %q is given", t.name, text),
			hint: fmt.Sprintf("write --%s alone", t.name),
		}
	}
	t.on = on
	return nil
}

// addToggle makes a toggle known to a command.
func addToggle(cmd *cobra.Command, t *toggle, help string) {
	cmd.Flags().VarPF(t, t.name, "", help).NoOptDefVal = "true"
}

// flagErrors explains what the flag parser refused of a command with the given
// flags.
func flagErrors(flags []string) func(*cobra.Command, error) error {
	return func(cmd *cobra.Command, err error) error {
		var own *usageError
		var named interface {
			GetSpecifiedName() string
			GetSpecifiedShortnames() string
		}
		e := &usageError{what: err.Error(), hint: "see " + cmd.CommandPath() + " --help"}
		switch {
		case errors.As(err, &own):
			return own
		case errors.As(err, &named):
			e.explain(cmd, named.GetSpecifiedName(), flags)
		}
		return e
	}
}

// explain fills in the error of a flag that is unknown or lacks its value.
func (e *usageError) explain(cmd *cobra.Command, name string, flags []string) {
	if flag := cmd.Flags().Lookup(name); flag != nil {
		if v, ok := flag.Value.(*value); ok {
			e.what = fmt.Sprintf("--%s needs a value", name)
			e.hint = fmt.Sprintf("such as --%s %s", name, v.example)
		}
		return
	}
	e.what = fmt.Sprintf("%s has no flag %q", cmd.CommandPath(), name)
	if near := nearest(name, flags); near != "" {
		e.hint = fmt.Sprintf("did you mean --%s?", near)
	}
}
