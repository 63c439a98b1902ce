package main

import (
	"fmt"

	"github.com/spf13/cobra"
)

// oneFile asks for exactly one argument.
func oneFile(command, example, what string) cobra.PositionalArgs {
	return func(_ *cobra.Command, args []string) error {
		hint := fmt.Sprintf("such as dhwcompare %s %s", command, example)
		switch {
		case len(args) == 0:
			return &usageError{what: fmt.Sprintf("%s needs %s", command, what), hint: hint}
		case len(args) > 1:
			return &usageError{what: fmt.Sprintf("%s takes one file, and %d are given: %q", command, len(args), args), hint: hint}
		case args[0] == "":
			return &usageError{what: fmt.Sprintf("%s needs %s, and the name given is empty", command, what), hint: hint}
		}
		return nil
	}
}

// newFile asks for the name of a file that can be written.
func newFile(cmd *cobra.Command, args []string) error {
	if err := oneFile("new", "home.yaml", "the name of the file to write")(cmd, args); err != nil {
		return err
	}
	if args[0] == "-" {
		return &usageError{what: `new "-": the case is written to a file, not to standard output`, hint: "such as dhwcompare new home.yaml"}
	}
	return nil
}

// atMostOneCase allows for no argument, too.
func atMostOneCase(command string) cobra.PositionalArgs {
	return func(cmd *cobra.Command, args []string) error {
		if len(args) == 0 {
			return nil
		}
		return oneFile(command, "home.yaml", "a case file")(cmd, args)
	}
}

// noFile allows for no argument at all.
func noFile(command string) cobra.PositionalArgs {
	return func(_ *cobra.Command, args []string) error {
		if len(args) == 0 {
			return nil
		}
		return &usageError{what: fmt.Sprintf("%s takes no file, and %q is given", command, args[0]), hint: "it is just dhwcompare " + command}
	}
}

// completeCase lets the shell offer case files, for the first argument only.
func completeCase(_ *cobra.Command, args []string, _ string) ([]string, cobra.ShellCompDirective) {
	if len(args) > 0 {
		return nil, cobra.ShellCompDirectiveNoFileComp
	}
	return []string{"yaml", "yml"}, cobra.ShellCompDirectiveFilterFileExt
}
