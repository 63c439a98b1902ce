package outdir

import (
	"bufio"
	"flag"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"
)

// kills is how many times TestKill kills a writer; slow checks ask for more.
var kills = flag.Int("kills", 5, "number of kills in TestKill, each way of exchanging")

// die does to a workspace what the kernel does when its owner is killed: the
// lock goes, everything else stays.
func die(t *testing.T, w *workspace) {
	t.Helper()
	must(t, w.lock.Close())
}

// stages are the states on disk that a killed run can leave, in order, with
// what the target name must lead to at once and after the next run failed.
// An empty name stands for a missing target.
var stages = []struct {
	name       string
	crash      func(t *testing.T, w *workspace)
	atOnce     string
	afterwards string
}{
	{"locked", func(*testing.T, *workspace) {}, "old", "old"},
	{"half built", func(t *testing.T, w *workspace) {
		put(t, w.path(newName+"/half.json"), "ha")
	}, "old", "old"},
	{"built", built, "old", "old"},
	{"set aside", func(t *testing.T, w *workspace) {
		built(t, w)
		must(t, w.setAside())
	}, "", "old"},
	{"moved in", func(t *testing.T, w *workspace) {
		built(t, w)
		must(t, w.setAside())
		must(t, w.moveIn())
	}, "new", "new"},
	{"exchanged", func(t *testing.T, w *workspace) {
		built(t, w)
		must(t, w.replace(0o755, exchange))
	}, "new", "new"},
	{"half deleted", func(t *testing.T, w *workspace) {
		built(t, w)
		must(t, w.setAside())
		must(t, w.moveIn())
		must(t, os.Rename(w.path(oldName), w.path(trashName)))
		must(t, os.Remove(w.path(trashName+"/comparison.json")))
	}, "new", "new"},
	{"unlocked", func(t *testing.T, w *workspace) {
		must(t, os.Remove(w.path(lockName)))
	}, "old", "old"},
}

// built fills the new folder of a workspace.
func built(t *testing.T, w *workspace) {
	must(t, w.build(t.Context(), results("new")))
}

func TestCrashAtEachStage(t *testing.T) {
	for _, stage := range stages {
		t.Run(stage.name, func(t *testing.T) {
			crashed := func() string {
				target := filepath.Join(t.TempDir(), "results")
				must(t, Write(t.Context(), target, results("old")))
				w, err := openWorkspace(target)
				must(t, err)
				stage.crash(t, w)
				die(t, w)
				return target
			}
			target := crashed()
			if got := versionAt(t, target); got != stage.atOnce {
				t.Errorf("after the crash the target holds %q, want %q", got, stage.atOnce)
			}
			if Write(t.Context(), target, func(*Folder) error { return os.ErrInvalid }) == nil {
				t.Error("a failing run reported success")
			}
			wantVersion(t, target, stage.afterwards)

			target = crashed()
			must(t, Write(t.Context(), target, results("next")))
			wantVersion(t, target, "next")
		})
	}
}

// TestCrashBeforeFirstResults covers what a first run can leave: no target.
func TestCrashBeforeFirstResults(t *testing.T) {
	target := filepath.Join(t.TempDir(), "results")
	w, err := openWorkspace(target)
	must(t, err)
	built(t, w)
	die(t, w)
	must(t, Write(t.Context(), target, results("next")))
	wantVersion(t, target, "next")
}

// TestFailedSecondRenameIsUndone lets something appear under the target's name
// between the two renames, which makes the second one fail.
func TestFailedSecondRenameIsUndone(t *testing.T) {
	target := filepath.Join(t.TempDir(), "results")
	must(t, Write(t.Context(), target, results("old")))
	w, err := openWorkspace(target)
	must(t, err)
	must(t, w.setAside())
	if w.moveIn() == nil {
		t.Fatal("nothing was built, yet it moved in")
	}
	must(t, w.close())
	wantVersion(t, target, "old")
}

// versionAt tells which version a target holds, "" if it is absent, and fails
// the test if what it holds is not whole.
func versionAt(t *testing.T, target string) string {
	t.Helper()
	if there, err := exists(target); err != nil || !there {
		return ""
	}
	got := tree(t, target)
	version, _, _ := strings.Cut(got["comparison.json"], " ")
	for _, name := range []string{"comparison.json", "charts/month.svg", "charts/month.png", version + ".txt"} {
		if got[name] != version+" "+name {
			t.Errorf("%s of %q holds %q", name, version, got[name])
		}
	}
	if _, ok := got[ManifestName]; !ok || len(got) != 6 {
		t.Errorf("the folder is a mixture: %q", got)
	}
	return version
}

// TestKill kills a process that rewrites one folder without pause, at moments
// spread over its work, and looks at what remains each time.
func TestKill(t *testing.T) {
	for way, mayBeAbsent := range map[string]bool{"exchange": false, "two renames": true} {
		t.Run(way, func(t *testing.T) {
			target := filepath.Join(t.TempDir(), "results")
			must(t, Write(t.Context(), target, results("first")))
			for i := range *kills {
				killWriter(t, way, target, time.Duration(i*3970%20000)*time.Microsecond)
				if got := versionAt(t, target); got == "" && !mayBeAbsent {
					t.Fatal("the target is gone")
				}
				// A run that fails must leave whole results, put back if need be.
				if Write(t.Context(), target, func(*Folder) error { return os.ErrInvalid }) == nil {
					t.Error("a failing run reported success")
				}
				wantVersion(t, target, versionAt(t, target))
			}
		})
	}
}

// killWriter starts a writer, waits until it has put one version in place and
// for a further delay, and kills it.
func killWriter(t *testing.T, way, target string, delay time.Duration) {
	t.Helper()
	cmd := exec.CommandContext(t.Context(), os.Args[0], "-test.run=^TestWriterProcess$")
	cmd.Env = append(os.Environ(), "OUTDIR_TEST_TARGET="+target, "OUTDIR_TEST_WAY="+way)
	out, err := cmd.StdoutPipe()
	must(t, err)
	must(t, cmd.Start())
	if _, err := bufio.NewReader(out).ReadString('\n'); err != nil {
		t.Errorf("the writer did not begin: %v", err)
	}
	time.Sleep(delay)
	must(t, cmd.Process.Kill())
	if err := cmd.Wait(); err == nil {
		t.Error("the writer ended by itself")
	}
}

// TestWriterProcess is the process that TestKill kills; alone it does nothing.
func TestWriterProcess(t *testing.T) {
	target := os.Getenv("OUTDIR_TEST_TARGET")
	if target == "" {
		t.Skip("a part of TestKill")
	}
	swap := exchange
	if os.Getenv("OUTDIR_TEST_WAY") == "two renames" {
		swap = noExchange
	}
	for i := 0; ; i++ {
		must(t, write(t.Context(), target, results(fmt.Sprint("v", i)), swap))
		if i == 0 {
			fmt.Println("begun")
		}
	}
}
