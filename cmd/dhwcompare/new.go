package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"dhwcompare/compare/casefile"
	"dhwcompare/compare/outdir"
	"dhwcompare/compare/report"
)

func (p *program) newCommand() *cobra.Command {
	return &cobra.Command{
		Use:   "new FILE",
		Short: "Write a commented case file to start from",
		Long: `new writes a case file in which every key is explained and stands at its default.
It never overwrites a file.`,
		Example:           "  dhwcompare new home.yaml",
		Args:              newFile,
		ValidArgsFunction: completeCase,
		RunE: func(_ *cobra.Command, args []string) error {
			if err := outdir.WriteFileNew(args[0], casefile.Template()); err != nil {
				return err
			}
			_, err := fmt.Fprintf(p.stdout, "%[1]s is written. Fill it in, then: dhwcompare run %[1]s\n", report.Plain(args[0]))
			return err
		},
	}
}
