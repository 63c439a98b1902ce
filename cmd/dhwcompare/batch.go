package main

import (
	"context"
	"fmt"
	"path/filepath"
	"runtime"

	"github.com/spf13/cobra"

	"dhwcompare/compare"
	"dhwcompare/compare/batch"
	"dhwcompare/compare/casefile"
	"dhwcompare/compare/outdir"
)

func (p *program) batchCommand() *cobra.Command {
	o := newBatchFlags()
	cmd := &cobra.Command{
		Use:   "batch HOMES.csv --base CASE.yaml",
		Short: "Compare the two options for many homes",
		Long: `batch compares the two options for each home of a table: a column id, and columns
named by keys of a case, such as household.people, whose values take the place of the
base case's. An empty value is that of the base case.

A home that makes no sound case does not stop the others; the reason stands beside it.
Finished homes go into a journal beside the folder of results. If the command is
stopped, the same command goes on where it was.`,
		Example: `  dhwcompare batch homes.csv --base base.yaml --out portfolio
  dhwcompare batch homes.csv --base base.yaml --part 2/4 --out part-2
  dhwcompare batch merge --out portfolio part-1 part-2 part-3 part-4`,
		Args:              oneFile("batch", "homes.csv --base base.yaml", "a table of homes"),
		ValidArgsFunction: completeTable,
		RunE: func(cmd *cobra.Command, args []string) error {
			return p.batch(cmd.Context(), args[0], o)
		},
	}
	o.addTo(cmd, "the summary")
	cmd.Flags().Var(&o.base, o.base.name, "take what the table does not state from this case")
	cmd.Flags().Var(&o.part, o.part.name, "compare this share of the homes only, such as the second of four")
	cmd.SetFlagErrorFunc(flagErrors(append(o.names(), "base", "part", "help")))
	// The flag exists, which is all that could go wrong.
	_ = cmd.MarkFlagFilename(o.base.name, "yaml", "yml")
	cmd.AddCommand(p.mergeCommand())
	return cmd
}

// completeTable lets the shell offer tables.
func completeTable(_ *cobra.Command, args []string, _ string) ([]string, cobra.ShellCompDirective) {
	if len(args) > 0 {
		return nil, cobra.ShellCompDirectiveNoFileComp
	}
	return []string{"csv"}, cobra.ShellCompDirectiveFilterFileExt
}

// batch does the work of the command batch.
func (p *program) batch(ctx context.Context, name string, o *batchFlags) error {
	if !o.base.given {
		return &usageError{what: "batch needs a base case", hint: "name it by --base base.yaml; dhwcompare new base.yaml writes one to start from"}
	}
	table, err := p.table(name)
	if err != nil {
		return err
	}
	doc, err := p.document([]string{o.base.text})
	if err != nil {
		return err
	}
	doc.Case.Years = batchYears
	o.override(doc)
	doc.CaseYAML = casefile.Write(doc.Case)
	job := &batch.Job{
		Base: doc.Case, Table: table, Part: o.share(), Open: besideBase(o.base.text),
		Version: version, Program: buildDigest(), Workers: runtime.GOMAXPROCS(0),
	}
	var sum batch.Summary
	err = outdir.Write(ctx, o.folder(), func(f *outdir.Folder) (err error) {
		sum, err = p.fillBatch(ctx, f, job, doc, o)
		return err
	})
	if err != nil {
		return err
	}
	return p.showBatch(&sum, name, o.folder(), &o.caseFlags)
}

// fillBatch compares the homes and fills the result folder.
func (p *program) fillBatch(ctx context.Context, f *outdir.Folder, job *batch.Job, doc *compare.Document, o *batchFlags) (sum batch.Summary, err error) {
	path, err := journalOf(o.folder())
	if err != nil {
		return sum, err
	}
	log, err := batch.OpenJournal(path)
	if err != nil {
		return sum, err
	}
	defer func() {
		if closeErr := log.Close(); err == nil {
			err = closeErr
		}
	}()
	shown := progressOf(p.stderr, o.quiet.on, "homes")
	defer shown.finish()
	job.Progress = shown.advance
	if err := job.Run(ctx, log); err != nil {
		if ctx.Err() != nil && !log.Empty() {
			return sum, &pausedError{path}
		}
		return sum, err
	}
	head, err := job.Head()
	if err != nil {
		return sum, err
	}
	if sum, err = batch.Write(f.Create, head, job.Results(log)); err != nil {
		return sum, err
	}
	return sum, writeAll(ctx, f, baseFiles(doc), job.Workers)
}

// baseFiles are those of the base case.
func baseFiles(doc *compare.Document) []output {
	return append([]output{{"case.yaml", func() ([]byte, error) { return doc.CaseYAML, nil }}}, copies(doc.Files)...)
}

// journalOf gives the journal's place, beside the folder of results. Its name is
// hidden, so that a shell's parts/* means the folders alone.
func journalOf(folder string) (string, error) {
	path, err := filepath.Abs(folder)
	return filepath.Join(filepath.Dir(path), "."+filepath.Base(path)+".journal.jsonl"), err
}

// pausedError says that a batch was stopped.
type pausedError struct{ journal string }

// Error says how to go on.
func (e *pausedError) Error() string {
	return fmt.Sprintf("interrupted; finished homes are kept in %s\nhint: the same command goes on from there", e.journal)
}
