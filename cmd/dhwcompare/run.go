package main

import (
	"context"
	"io"
	"runtime"

	"github.com/spf13/cobra"

	"dhwcompare/compare"
	"dhwcompare/compare/casefile"
	"dhwcompare/compare/outdir"
	"dhwcompare/compare/report"
	"dhwcompare/compare/tracefile"
)

func (p *program) runCommand() *cobra.Command {
	o := newRunFlags()
	cmd := &cobra.Command{
		Use:   "run [CASE.yaml]",
		Short: "Compare the two options for a case and write the results",
		Long: `run simulates years of both options for a case, prints the comparison in short and
writes a folder of results: report.html and report.md, comparison.xlsx, comparison.json,
charts, and the case with every key filled in. Without a case it takes an invented
home as an example; the case - stands for standard input.

The folder appears whole or not at all. One that exists is replaced only if it
holds nothing but earlier results.`,
		Example: `  dhwcompare run
  dhwcompare run home.yaml --out home-results
  dhwcompare run home.yaml --years 50 --json > comparison.json`,
		Args:              atMostOneCase("run"),
		ValidArgsFunction: completeCase,
		RunE: func(cmd *cobra.Command, args []string) error {
			return p.compare(cmd.Context(), args, o)
		},
	}
	o.addTo(cmd)
	return cmd
}

// compare does the work of the command run.
func (p *program) compare(ctx context.Context, args []string, o *runFlags) error {
	if err := o.checkPaths(args); err != nil {
		return err
	}
	doc, err := p.document(args)
	if err != nil {
		return err
	}
	if err := o.sparesFiles(p.referred); err != nil {
		return err
	}
	o.override(doc)
	doc.CaseYAML = casefile.Write(doc.Case)
	if err := p.save(ctx, doc, o); err != nil {
		return err
	}
	return p.show(doc, o)
}

// save simulates and writes all files. What was there before stays until both
// the folder and the trace are complete.
func (p *program) save(ctx context.Context, doc *compare.Document, o *runFlags) error {
	if !o.trace.given {
		return outdir.Write(ctx, o.out.text, func(f *outdir.Folder) error { return p.fill(ctx, f, doc, o) })
	}
	return outdir.WriteFileAtomic(o.trace.text, func(w io.Writer) error {
		return outdir.Write(ctx, o.out.text, func(f *outdir.Folder) error {
			if err := p.fill(ctx, f, doc, o); err != nil {
				return err
			}
			return tracefile.Write(ctx, doc.Case, w)
		})
	})
}

// fill simulates and fills the result folder.
func (p *program) fill(ctx context.Context, f *outdir.Folder, doc *compare.Document, o *runFlags) error {
	workers := runtime.GOMAXPROCS(0)
	shown := progressOn(p.stderr, o.quiet.on)
	defer shown.finish()
	if err := doc.Simulate(ctx, workers, shown.advance); err != nil {
		return err
	}
	return writeResults(ctx, f, doc, workers)
}

// show prints the comparison.
func (p *program) show(doc *compare.Document, o *runFlags) error {
	switch {
	case o.json.on:
		return p.print(report.JSON(doc))
	case o.quiet.on:
		return nil
	case o.full.on:
		return report.Full(p.stdout, doc, o.out.text)
	default:
		return report.Terminal(p.stdout, doc, o.out.text)
	}
}
