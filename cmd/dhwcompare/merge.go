package main

import (
	"context"
	"encoding/json"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"slices"

	"github.com/spf13/cobra"

	"dhwcompare/compare/batch"
	"dhwcompare/compare/outdir"
)

func (p *program) mergeCommand() *cobra.Command {
	o := newCaseFlags("dhwcompare-batch")
	cmd := &cobra.Command{
		Use:   "merge --out DIR PART...",
		Short: "Join the parts of a batch",
		Long: `merge joins the folders of all parts of a batch to one, with the same bytes as if the
batch had been run as a whole. It refuses parts of different programs, tables or base
cases, and homes that are missing or come twice.`,
		Example: "  dhwcompare batch merge --out portfolio part-1 part-2 part-3 part-4",
		Args: func(_ *cobra.Command, args []string) error {
			if len(args) == 0 {
				return &usageError{what: "merge needs the folders of the parts", hint: "such as dhwcompare batch merge --out portfolio part-1 part-2"}
			}
			return nil
		},
		RunE: func(cmd *cobra.Command, args []string) error { return p.merge(cmd.Context(), args, &o) },
	}
	flags := cmd.Flags()
	flags.SortFlags = false
	flags.Var(&o.out, o.out.name, "write the results into this folder")
	addToggle(cmd, &o.quiet, "print no summary")
	addToggle(cmd, &o.json, "print the summary as JSON in place of the table")
	cmd.SetFlagErrorFunc(flagErrors([]string{"out", "quiet", "json", "help"}))
	// The flag exists, which is all that could go wrong.
	_ = cmd.MarkFlagDirname(o.out.name)
	return cmd
}

// merge does the work of the command batch merge.
func (p *program) merge(ctx context.Context, folders []string, o *caseFlags) error {
	var sources []batch.Source
	for _, folder := range folders {
		if sameFile(folder, o.out.text) {
			return &usageError{what: fmt.Sprintf("--out %q is one of the parts, and would replace it", o.out.text), hint: "name another folder"}
		}
		source, done, err := openPart(folder)
		if err != nil {
			return err
		}
		defer done()
		sources = append(sources, source)
	}
	head, results, err := batch.Merge(sources)
	if err != nil {
		return &usageError{what: err.Error(), hint: "merge all parts of one batch: the same table, base case and flags"}
	}
	var sum batch.Summary
	err = outdir.Write(ctx, o.out.text, func(f *outdir.Folder) (err error) {
		if sum, err = batch.Write(f.Create, head, results); err != nil {
			return err
		}
		return copyOthers(f, folders[0])
	})
	if err != nil {
		return err
	}
	return p.showBatch(&sum, fmt.Sprintf("%d parts", len(folders)), o.out.text, o)
}

// openPart opens the folder of a part.
func openPart(folder string) (source batch.Source, done func(), err error) {
	wrong := func(err error) error {
		return &usageError{what: fmt.Sprintf("%s is no folder of a batch's results: %v", folder, cause(err)), hint: "name the folders that dhwcompare batch --part wrote"}
	}
	data, err := os.ReadFile(filepath.Join(folder, batch.SummaryName))
	if err != nil {
		return source, nil, wrong(err)
	}
	source.Name = folder
	if source.Summary, err = batch.ReadSummary(folder, data); err != nil {
		return source, nil, &usageError{what: err.Error(), hint: "name the folders that dhwcompare batch --part wrote"}
	}
	rows, err := os.Open(filepath.Join(folder, batch.RowsName))
	if err != nil {
		return source, nil, wrong(err)
	}
	source.Rows = rows
	return source, func() { _ = rows.Close() }, nil // it is only read
}

// copyOthers copies what a part holds besides its own results: the base case and
// the files that it refers to.
func copyOthers(f *outdir.Folder, folder string) error {
	data, err := os.ReadFile(filepath.Join(folder, outdir.ManifestName))
	if err != nil {
		return err
	}
	var listed struct{ Files []struct{ Name string } }
	if err := json.Unmarshal(data, &listed); err != nil {
		return fmt.Errorf("%s: its %s cannot be read: %w", folder, outdir.ManifestName, err)
	}
	root, err := os.OpenRoot(folder)
	if err != nil {
		return err
	}
	defer root.Close() // it is only read
	own := []string{batch.CSVName, batch.XLSXName, batch.RowsName, batch.SummaryName}
	for _, file := range listed.Files {
		if slices.Contains(own, file.Name) {
			continue
		}
		if err := copyFile(f, root, file.Name); err != nil {
			return err
		}
	}
	return nil
}

func copyFile(f *outdir.Folder, from *os.Root, name string) error {
	in, err := from.Open(filepath.FromSlash(name))
	if err != nil {
		return err
	}
	defer in.Close() // it is only read
	data, err := io.ReadAll(in)
	if err != nil {
		return err
	}
	return f.WriteFile(name, data)
}
