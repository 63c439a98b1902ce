package main

import (
	"github.com/spf13/cobra"

	"dhwcompare/compare/casefile"
)

func (p *program) checkCommand() *cobra.Command {
	return &cobra.Command{
		Use:   "check CASE.yaml",
		Short: "Check a case file and print it with every key filled in",
		Long: `check reads a case file, reports everything that is wrong with it, and prints the
case with every key filled in. The case - stands for standard input.`,
		Example:           "  dhwcompare check home.yaml",
		Args:              oneFile("check", "home.yaml", "the case file to check"),
		ValidArgsFunction: completeCase,
		RunE: func(_ *cobra.Command, args []string) error {
			c, err := p.load(args)
			if err != nil {
				return err
			}
			_, err = p.stdout.Write(casefile.Write(c))
			return err
		},
	}
}
