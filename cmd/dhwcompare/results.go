package main

import (
	"context"

	"dhwcompare/charts"
	"dhwcompare/compare"
	"dhwcompare/compare/outdir"
	"dhwcompare/compare/report"
	"dhwcompare/compare/workbook"
)

// output is one file of the results and how its bytes are made.
type output struct {
	name string
	make func() ([]byte, error)
}

// outputs lists the files of a document, the slow ones first.
func outputs(doc *compare.Document) ([]output, error) {
	pictures, err := charts.Of(doc)
	if err != nil {
		return nil, err
	}
	of := func(make func(*compare.Document) ([]byte, error)) func() ([]byte, error) {
		return func() ([]byte, error) { return make(doc) }
	}
	list := []output{{"comparison.xlsx", of(workbook.Write)}, {"report.html", of(report.HTML)}, {"report.md", of(report.Markdown)}}
	for i := range pictures {
		c := &pictures[i]
		list = append(list, output{"charts/" + c.Name + ".png", c.PNG}, output{"charts/" + c.Name + ".svg", c.SVG})
	}
	list = append(list,
		output{"comparison.json", of(report.JSON)},
		output{"case.yaml", func() ([]byte, error) { return doc.CaseYAML, nil }},
	)
	return append(list, copies(doc.Files)...), nil
}

// writeResults makes and writes every file, several at a time. The bytes of each
// depend on the document alone.
func writeResults(ctx context.Context, f *outdir.Folder, doc *compare.Document, workers int) error {
	list, err := outputs(doc)
	if err != nil {
		return err
	}
	return writeAll(ctx, f, list, workers)
}

func writeAll(ctx context.Context, f *outdir.Folder, list []output, workers int) error {
	return each(ctx, workers, list, func(o output) error {
		data, err := o.make()
		if err != nil {
			return err
		}
		return f.WriteFile(o.name, data)
	})
}
