package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"dhwcompare/compare"
	"dhwcompare/compare/casefile"
	"dhwcompare/compare/report"
)

func (p *program) checkCommand() *cobra.Command {
	return &cobra.Command{
		Use:   "check CASE.yaml",
		Short: "Check a case file and print it with every key filled in",
		Long: `check reads a case file, reports everything that is wrong with it, and prints the
case with every key filled in. Values that are allowed and rare are named on standard
error. The case - stands for standard input.`,
		Example:           "  dhwcompare check home.yaml",
		Args:              oneFile("check", "home.yaml", "the case file to check"),
		ValidArgsFunction: completeCase,
		RunE: func(_ *cobra.Command, args []string) error {
			c, err := p.load(args)
			if err != nil {
				return err
			}
			for _, w := range compare.Unusual(c) {
				fmt.Fprintf(p.stderr, "%s: %s\n", report.Plain(shownName(args[0])), w.Text)
			}
			_, err = p.stdout.Write(casefile.Write(c))
			return err
		},
	}
}
