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
)

// study is a command that looks into one question of a case. Beside its answer
// stands the comparison of the case as stated, over its years and no more: what
// else the command run looks into would take longer than the question itself.
type study struct {
	name, short, long string
	prints            string // what it prints
	file              string // that its part of the document goes into
	extra             *value // a flag of its own, or nil
	extraHelp         string
	look              func(context.Context, *work) error
	part              func(*compare.Document) any
	more              func(*work) []output // further files, or nil
	show              func(io.Writer, *compare.Document, string) error
}

// work is a study in progress.
type work struct {
	doc     *compare.Document
	solved  *compare.Case // with windows in place that follow a tariff
	workers int
	advance compare.Progress
}

func (p *program) studyCommand(s *study) *cobra.Command {
	o := newCaseFlags("dhwcompare-" + s.name)
	cmd := &cobra.Command{
		Use: s.name + " [CASE.yaml]", Short: s.short, Long: s.long,
		Example:           "  dhwcompare " + s.name + "\n  dhwcompare " + s.name + " home.yaml --out " + s.name + "-results",
		Args:              atMostOneCase(s.name),
		ValidArgsFunction: completeCase,
		RunE: func(cmd *cobra.Command, args []string) error {
			return p.study(cmd.Context(), args, s, &o)
		},
	}
	o.addTo(cmd, s.prints)
	names := o.names()
	if s.extra != nil {
		cmd.Flags().Var(s.extra, s.extra.name, s.extraHelp)
		names = append(names, s.extra.name)
	}
	cmd.SetFlagErrorFunc(flagErrors(append(names, "help")))
	return cmd
}

// study does the work of such a command.
func (p *program) study(ctx context.Context, args []string, s *study, o *caseFlags) error {
	doc, err := p.document(args)
	if err != nil {
		return err
	}
	o.override(doc)
	doc.CaseYAML = casefile.Write(doc.Case)
	w := &work{doc: doc, workers: runtime.GOMAXPROCS(0)}
	err = outdir.Write(ctx, o.out.text, func(f *outdir.Folder) error { return p.fillStudy(ctx, f, s, o, w) })
	if err != nil {
		return err
	}
	return p.showStudy(s, o, doc)
}

// fillStudy simulates and fills the result folder.
func (p *program) fillStudy(ctx context.Context, f *outdir.Folder, s *study, o *caseFlags, w *work) (err error) {
	shown := progressOn(p.stderr, o.quiet.on)
	defer shown.finish()
	w.advance = shown.advance
	if w.doc.Comparison, w.solved, err = compare.Decide(ctx, w.doc.Case, w.workers, nil); err != nil {
		return err
	}
	if err := w.doc.Comparison.ShowDays(ctx, w.solved); err != nil {
		return err
	}
	if err := s.look(ctx, w); err != nil {
		return err
	}
	list, err := outputs(w.doc)
	if err != nil {
		return err
	}
	list = append(list, output{s.file, func() ([]byte, error) { return report.PartJSON(s.part(w.doc)) }})
	if s.more != nil {
		list = append(list, s.more(w)...)
	}
	return writeAll(ctx, f, list, w.workers)
}

// showStudy prints what was found.
func (p *program) showStudy(s *study, o *caseFlags, doc *compare.Document) error {
	switch {
	case o.json.on:
		return p.print(report.PartJSON(s.part(doc)))
	case o.quiet.on:
		return nil
	default:
		return s.show(p.stdout, doc, o.out.text)
	}
}
