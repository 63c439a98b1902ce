package main

import (
	"bufio"
	"bytes"
	"encoding/json"
	"errors"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/rogpeppe/go-internal/testscript"
)

// TestScripts runs the program from outside, as its users do.
func TestScripts(t *testing.T) {
	testscript.Run(t, testscript.Params{
		Dir:                 filepath.Join("..", "..", "testdata", "script"),
		RequireExplicitExec: true,
		RequireUniqueNames:  true,
		Cmds: map[string]func(*testscript.TestScript, bool, []string){
			"exits":    scriptExits,
			"refuses":  scriptRefuses,
			"lists":    scriptLists,
			"sametree": scriptSameTree,
			"columns":  scriptColumns,
			"json":     scriptJSON,
			"deaf":     scriptDeaf,
			"change":   scriptChange,
			"begins":   scriptBegins,
			"agrees":   scriptAgrees,
			"make":     scriptMake,
		},
	})
}

// scriptExits runs a command and expects an exit code: exits 2 dhwcompare ...
func scriptExits(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) < 2 {
		ts.Fatalf("usage: exits code command [argument ...]")
	}
	want, err := strconv.Atoi(args[0])
	ts.Check(err)
	if got := codeOf(ts, ts.Exec(args[1], args[2:]...)); got != want {
		ts.Fatalf("exit code %d, want %d", got, want)
	}
}

// codeOf gives the exit code that a command's error stands for.
func codeOf(ts *testscript.TestScript, err error) int {
	var exit *exec.ExitError
	switch {
	case err == nil:
		return 0
	case errors.As(err, &exit):
		return exit.ExitCode()
	default:
		ts.Fatalf("the command did not run: %v", err)
		return -1
	}
}

// scriptRefuses runs the program and expects it to refuse bad input as it should:
// refuses pattern argument ... The exit code is 2, standard output stays empty,
// the message matches the pattern and is no stack trace, no file appears.
func scriptRefuses(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) < 2 {
		ts.Fatalf("usage: refuses pattern argument ...")
	}
	dir := ts.MkAbs(".")
	before := namesIn(ts, dir)
	code := codeOf(ts, ts.Exec("dhwcompare", args[1:]...))
	message := ts.ReadFile("stderr")
	matched, err := regexp.MatchString("(?m)"+args[0], message)
	ts.Check(err)
	switch {
	case code != exitUsage:
		ts.Fatalf("exit code %d, want %d", code, exitUsage)
	case ts.ReadFile("stdout") != "":
		ts.Fatalf("something was printed")
	case !matched:
		ts.Fatalf("no match for %q", args[0])
	case strings.Contains(message, "goroutine ") || strings.Contains(message, "compare."):
		ts.Fatalf("the message speaks of the program's inside")
	case !slices.Equal(before, namesIn(ts, dir)):
		ts.Fatalf("something was written: %q became %q", before, namesIn(ts, dir))
	}
}

// namesIn lists what is in a folder, hidden names included. The scripts' own
// folder for temporary files does not count.
func namesIn(ts *testscript.TestScript, dir string) []string {
	items, err := os.ReadDir(dir)
	ts.Check(err)
	var names []string
	for _, item := range items {
		if item.Name() != ".tmp" {
			names = append(names, item.Name())
		}
	}
	return names
}

// scriptLists expects a folder to hold just these names, in order: lists folder
// name ...
func scriptLists(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) < 1 {
		ts.Fatalf("usage: lists folder name ...")
	}
	if got := namesIn(ts, ts.MkAbs(args[0])); !slices.Equal(got, args[1:]) {
		ts.Fatalf("%s holds %q", args[0], got)
	}
}

// scriptSameTree expects two folders to hold the same files with the same bytes,
// and more than none.
func scriptSameTree(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 2 {
		ts.Fatalf("usage: sametree folder folder")
	}
	a, b := tree(ts, ts.MkAbs(args[0])), tree(ts, ts.MkAbs(args[1]))
	if len(a) == 0 {
		ts.Fatalf("%s is empty", args[0])
	}
	for name, data := range a {
		if other, ok := b[name]; !ok || !bytes.Equal(data, other) {
			ts.Fatalf("%s is not the same in both", name)
		}
	}
	for name := range b {
		if _, ok := a[name]; !ok {
			ts.Fatalf("%s is in %s only", name, args[1])
		}
	}
}

// tree reads all files of a folder.
func tree(ts *testscript.TestScript, dir string) map[string][]byte {
	files := map[string][]byte{}
	ts.Check(filepath.WalkDir(dir, func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		name, err := filepath.Rel(dir, path)
		if err != nil {
			return err
		}
		files[name], err = os.ReadFile(path)
		return err
	}))
	return files
}

// scriptColumns expects every line of a file to fit: columns file number
func scriptColumns(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 2 {
		ts.Fatalf("usage: columns file number")
	}
	most, err := strconv.Atoi(args[1])
	ts.Check(err)
	for line := range strings.SplitSeq(ts.ReadFile(args[0]), "\n") {
		if n := utf8.RuneCountInString(line); n > most {
			ts.Fatalf("%d columns: %q", n, line)
		}
	}
}

// scriptJSON expects a file to be one JSON object that has these keys; a key may
// lead inwards with points: json file key ...
func scriptJSON(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) < 1 {
		ts.Fatalf("usage: json file key ...")
	}
	var whole map[string]any
	ts.Check(json.Unmarshal([]byte(ts.ReadFile(args[0])), &whole))
	for _, path := range args[1:] {
		var at any = whole
		for key := range strings.SplitSeq(path, ".") {
			object, _ := at.(map[string]any)
			value, there := object[key]
			if !there {
				ts.Fatalf("%s has no %s", args[0], path)
			}
			at = value
		}
	}
}

// scriptDeaf runs the program with a standard output that nobody reads, as under
// a pipe whose other end is gone, and expects it to end quietly.
func scriptDeaf(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) < 1 {
		ts.Fatalf("usage: deaf argument ...")
	}
	read, write, err := os.Pipe()
	ts.Check(err)
	ts.Check(read.Close())
	path, err := exec.LookPath("dhwcompare")
	ts.Check(err)
	var stderr bytes.Buffer
	cmd := exec.Command(path, args...)
	cmd.Dir, cmd.Stdout, cmd.Stderr = ts.MkAbs("."), write, &stderr
	err = errors.Join(cmd.Run(), write.Close())
	if err != nil || stderr.Len() > 0 {
		ts.Fatalf("%v, and on standard error: %q", err, stderr.String())
	}
}

// scriptChange writes a file anew with a piece of text replaced: change file old
// new. The piece must be there.
func scriptChange(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 3 {
		ts.Fatalf("usage: change file old new")
	}
	text := ts.ReadFile(args[0])
	if !strings.Contains(text, args[1]) {
		ts.Fatalf("%s does not hold %q", args[0], args[1])
	}
	ts.Check(os.WriteFile(ts.MkAbs(args[0]), []byte(strings.ReplaceAll(text, args[1], args[2])), 0o666))
}

// scriptBegins expects a file, which may be large, to begin with some lines:
// begins file pattern ...
func scriptBegins(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) < 2 {
		ts.Fatalf("usage: begins file pattern ...")
	}
	f, err := os.Open(ts.MkAbs(args[0]))
	ts.Check(err)
	defer f.Close()
	lines := bufio.NewScanner(f)
	for _, pattern := range args[1:] {
		if !lines.Scan() {
			ts.Fatalf("%s ends before %q: %v", args[0], pattern, lines.Err())
		}
		matched, err := regexp.Match("^(?:"+pattern+")$", lines.Bytes())
		ts.Check(err)
		if !matched {
			ts.Fatalf("%q does not match %q", lines.Text(), pattern)
		}
	}
}
