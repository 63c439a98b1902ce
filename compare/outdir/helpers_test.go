package outdir

import (
	"errors"
	"io/fs"
	"maps"
	"os"
	"path/filepath"
	"testing"
)

// noExchange makes every test that takes it go through the two renames.
func noExchange(_, _ string) error { return errors.ErrUnsupported }

// eachSwap runs a test with the one-step exchange and with two renames.
func eachSwap(t *testing.T, test func(*testing.T, swapper)) {
	t.Run("exchange", func(t *testing.T) { test(t, exchange) })
	t.Run("two renames", func(t *testing.T) { test(t, noExchange) })
}

// results returns a fill that writes a small tree marked with a version.
func results(version string) func(*Folder) error {
	return func(d *Folder) error {
		for _, name := range []string{"comparison.json", "charts/month.svg", "charts/month.png", version + ".txt"} {
			if err := d.WriteFile(name, []byte(version+" "+name)); err != nil {
				return err
			}
		}
		return nil
	}
}

// tree reads everything below dir: content of files, "dir" for folders.
func tree(t *testing.T, dir string) map[string]string {
	t.Helper()
	got := map[string]string{}
	err := filepath.WalkDir(dir, func(path string, d fs.DirEntry, err error) error {
		if err != nil || path == dir {
			return err
		}
		rel, err := filepath.Rel(dir, path)
		if err != nil {
			return err
		}
		if d.IsDir() {
			got[filepath.ToSlash(rel)] = "dir"
			return nil
		}
		data, err := os.ReadFile(path)
		got[filepath.ToSlash(rel)] = string(data)
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return got
}

// wantVersion requires that dir holds the results of one version and no others,
// that its manifest accounts for all, and that nothing is left beside it.
func wantVersion(t *testing.T, dir, version string) {
	t.Helper()
	got := tree(t, dir)
	delete(got, ManifestName)
	want := map[string]string{"charts": "dir"}
	for _, name := range []string{"comparison.json", "charts/month.svg", "charts/month.png", version + ".txt"} {
		want[name] = version + " " + name
	}
	if !maps.Equal(got, want) {
		t.Errorf("folder holds %q, want %q", got, want)
	}
	if names, err := strangers(dir); err != nil || len(names) > 0 {
		t.Errorf("manifest does not account for %q (%v)", names, err)
	}
	wantAlone(t, dir)
}

// wantAlone requires that dir is the only thing in its parent.
func wantAlone(t *testing.T, dir string) {
	t.Helper()
	items, err := os.ReadDir(filepath.Dir(dir))
	if err != nil {
		t.Fatal(err)
	}
	for _, item := range items {
		if item.Name() != filepath.Base(dir) {
			t.Errorf("%s was left beside the results", item.Name())
		}
	}
}

// put writes a file for a test, with the folders that it lies in.
func put(t *testing.T, path, content string) {
	t.Helper()
	if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(path, []byte(content), 0o644); err != nil {
		t.Fatal(err)
	}
}

// must stops a test at an unexpected error.
func must(t *testing.T, err error) {
	t.Helper()
	if err != nil {
		t.Fatal(err)
	}
}
