package main

import (
	"bytes"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"dhwcompare/compare/casefile"
)

// repository is the way from this folder to the top of the project.
const repository = "../.."

// blocks gives the README's blocks of a language, in order.
func blocks(t *testing.T, language string) []string {
	t.Helper()
	text, err := os.ReadFile(filepath.Join(repository, "README.md"))
	if err != nil {
		t.Fatal(err)
	}
	var found []string
	for _, m := range regexp.MustCompile("(?ms)^```"+language+"\n(.*?)^```$").FindAllStringSubmatch(string(text), -1) {
		found = append(found, m[1])
	}
	if len(found) == 0 {
		t.Fatalf("the README has no block of %s", language)
	}
	return found
}

// TestReadmeCommands runs every command block of the README in a copy of the
// project, one after the other, as a reader would.
//
// One of them runs all tests and would call this one again, without end. GOFLAGS
// keeps it to the examples: it still builds every test, all of which are running
// anyway.
func TestReadmeCommands(t *testing.T) {
	shell, err := exec.LookPath("sh")
	if err != nil {
		t.Skip("the commands are written for a Unix shell, and there is none")
	}
	dir := copyOfProject(t)
	for _, script := range scripts(t) {
		cmd := exec.CommandContext(t.Context(), shell, "-eu", "-c", script.text)
		cmd.Dir = dir
		cmd.Env = append(os.Environ(), "GOFLAGS="+strings.TrimSpace(os.Getenv("GOFLAGS")+" -vet=off -run=^Example"))
		cmd.Env = append(cmd.Env, script.env...)
		if output, err := cmd.CombinedOutput(); err != nil {
			t.Fatalf("%s%v\n%s", script.text, err, output)
		}
	}
	for _, name := range []string{"dhwcompare-out/comparison.json", "home-results/comparison.xlsx", "home-filled.yaml", "dhwcompare.bash", "home-sizes/best.yaml", "home-moves/sensitivity.json", "portfolio-merged/results.xlsx"} {
		if info, err := os.Stat(filepath.Join(dir, name)); err != nil || info.Size() == 0 {
			t.Errorf("%s is missing or empty (%v)", name, err)
		}
	}
	for _, name := range []string{"batch.json", "case.yaml", "results.csv", "results.xlsx", "rows.jsonl"} {
		whole, errWhole := os.ReadFile(filepath.Join(dir, "portfolio", name))
		merged, errMerged := os.ReadFile(filepath.Join(dir, "portfolio-merged", name))
		if errWhole != nil || errMerged != nil || !bytes.Equal(whole, merged) {
			t.Errorf("%s of the whole and of the merged batch differ (%v, %v)", name, errWhole, errMerged)
		}
	}
}

// TestReadmeBeginsWithTwoCommands keeps the promise that nothing else sets the
// project up.
func TestReadmeBeginsWithTwoCommands(t *testing.T) {
	got := blocks(t, "sh")[:2]
	if want := []string{"go run ./cmd/dhwcompare run\n", "go test ./...\n"}; !slices.Equal(got, want) {
		t.Errorf("the first two blocks are %q", got)
	}
}

func TestReadmeCases(t *testing.T) {
	for _, block := range blocks(t, "yaml") {
		if _, _, err := casefile.Load("README.md", []byte(block), nil); err != nil {
			t.Error(err)
		}
	}
}

// TestReadmeNamesEveryFlag keeps the table of flags complete.
func TestReadmeNamesEveryFlag(t *testing.T) {
	text, err := os.ReadFile(filepath.Join(repository, "README.md"))
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range flagNames() {
		if !strings.Contains(string(text), "| `--"+name) {
			t.Errorf("the README does not tell of --%s", name)
		}
	}
}

// copyOfProject copies what a fresh clone would hold, so that nothing is left in
// the project itself. Hidden names and results are left out.
func copyOfProject(t *testing.T) string {
	t.Helper()
	dir := t.TempDir()
	err := filepath.WalkDir(repository, func(path string, d fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		rel, err := filepath.Rel(repository, path)
		if err != nil || rel == "." {
			return err
		}
		switch {
		case strings.HasPrefix(d.Name(), ".") || strings.HasPrefix(d.Name(), "dhwcompare-out"):
			if d.IsDir() {
				return fs.SkipDir
			}
			return nil
		case d.IsDir():
			return os.Mkdir(filepath.Join(dir, rel), 0o777)
		case rel == "dhwcompare" || !d.Type().IsRegular():
			return nil // the built program
		}
		data, err := os.ReadFile(path)
		if err != nil {
			return err
		}
		return os.WriteFile(filepath.Join(dir, rel), data, 0o666)
	})
	if err != nil {
		t.Fatal(err)
	}
	return dir
}
