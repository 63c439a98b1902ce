package outdir_test

import (
	"context"
	"errors"
	"fmt"
	"os"
	"path/filepath"

	"dhwcompare/compare/outdir"
)

func ExampleWrite() {
	base, err := os.MkdirTemp("", "example")
	if err != nil {
		fmt.Println(err)
		return
	}
	defer func() { _ = os.RemoveAll(base) }()

	results := filepath.Join(base, "results")
	fill := func(d *outdir.Folder) error {
		return d.WriteFile("charts/month.svg", []byte("<svg/>"))
	}
	fmt.Println(outdir.Write(context.Background(), results, fill))

	// A file of the user's own keeps the folder from being replaced.
	err = os.WriteFile(filepath.Join(results, "notes.txt"), []byte("mine"), 0o644)
	if err != nil {
		fmt.Println(err)
		return
	}
	var problem *outdir.TargetError
	if errors.As(outdir.Write(context.Background(), results, fill), &problem) {
		fmt.Println(problem.Reason, problem.Names)
		fmt.Println(problem.Remedy)
	}
	// Output:
	// <nil>
	// holds what its manifest.json does not list [notes.txt]
	// move these away or name another folder
}
