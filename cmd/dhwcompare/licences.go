package main

import (
	_ "embed" // for licences.txt

	"github.com/spf13/cobra"
)

// licencesText is written by .ci/licences.go.
//
//go:embed licences.txt
var licencesText string

func (p *program) licencesCommand() *cobra.Command {
	return &cobra.Command{
		Use:   "licences",
		Short: "Print the licences of the modules and fonts in the program",
		Long: `licences lists the modules and fonts that the program contains, and prints the
terms of each word for word.`,
		Args:              noFile("licences"),
		ValidArgsFunction: cobra.NoFileCompletions,
		RunE: func(*cobra.Command, []string) error {
			_, err := p.stdout.Write([]byte(licencesText))
			return err
		},
	}
}
