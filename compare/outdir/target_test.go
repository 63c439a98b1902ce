package outdir

import (
	"errors"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// ours writes genuine results and then lets a test spoil them.
func ours(spoil func(t *testing.T, dir string)) func(*testing.T, string) {
	return func(t *testing.T, dir string) {
		must(t, Write(t.Context(), dir, results("v1")))
		spoil(t, dir)
	}
}

func TestRefusedTargets(t *testing.T) {
	tests := map[string]struct {
		prepare func(t *testing.T, dir string)
		names   []string
		reason  string
	}{
		"a file": {func(t *testing.T, dir string) { put(t, dir, "x") }, nil, "is a file"},
		"a link to nowhere": {func(t *testing.T, dir string) {
			must(t, os.Symlink(dir+"-gone", dir))
		}, nil, "leads nowhere"},
		"below a file": {func(t *testing.T, dir string) {
			must(t, os.Remove(filepath.Dir(dir)))
			put(t, filepath.Dir(dir), "x")
		}, nil, "through a file"},
		"no manifest": {func(t *testing.T, dir string) {
			put(t, dir+"/b.txt", "b")
			put(t, dir+"/a/c.txt", "c")
		}, []string{"a/", "b.txt"}, "does not list"},
		"a hidden file": {func(t *testing.T, dir string) { put(t, dir+"/.git", "x") }, []string{".git"}, ""},
		"an empty folder": {func(t *testing.T, dir string) { must(t, os.MkdirAll(dir+"/plans", 0o755)) },
			[]string{"plans/"}, ""},
		"a stranger beside our files": {ours(func(t *testing.T, dir string) { put(t, dir+"/notes.txt", "x") }),
			[]string{"notes.txt"}, ""},
		"a stranger in a folder of ours": {ours(func(t *testing.T, dir string) { put(t, dir+"/charts/mine.svg", "x") }),
			[]string{"charts/mine.svg"}, ""},
		"a listed file that became a link": {ours(func(t *testing.T, dir string) {
			must(t, os.Remove(dir+"/comparison.json"))
			must(t, os.Symlink("v1.txt", dir+"/comparison.json"))
		}), []string{"comparison.json"}, ""},
		"a listed file that became a folder": {ours(func(t *testing.T, dir string) {
			must(t, os.Remove(dir+"/comparison.json"))
			must(t, os.Mkdir(dir+"/comparison.json", 0o755))
		}), []string{"comparison.json/"}, ""},
		"a manifest cut short": {ours(func(t *testing.T, dir string) { must(t, os.Truncate(dir+"/manifest.json", 40)) }),
			[]string{"charts/", "comparison.json", "manifest.json", "v1.txt"}, ""},
		"a manifest of another program": {func(t *testing.T, dir string) {
			put(t, dir+"/manifest.json", `{"schema":"web-app/1","files":[{"name":"a.txt"}]}`)
			put(t, dir+"/a.txt", "x")
		}, []string{"a.txt", "manifest.json"}, ""},
		"a manifest that points outside": {func(t *testing.T, dir string) {
			put(t, dir+"/manifest.json", `{"schema":"dhwcompare-manifest/1","files":[{"name":"../a.txt"}]}`)
		}, []string{"manifest.json"}, ""},
		"a manifest that is a folder": {func(t *testing.T, dir string) { put(t, dir+"/manifest.json/x", "x") },
			[]string{"manifest.json/"}, ""},
		"a stranger under the workspace's name": {func(t *testing.T, dir string) {
			put(t, siblingName(dir)+"/letters.txt", "x")
		}, nil, "not this program's"},
		"a file under the workspace's name": {func(t *testing.T, dir string) { put(t, siblingName(dir), "x") },
			nil, "not this program's"},
	}
	for name, test := range tests {
		t.Run(name, func(t *testing.T) {
			base := t.TempDir()
			dir := filepath.Join(base, "parent", "results")
			must(t, os.Mkdir(filepath.Dir(dir), 0o755))
			test.prepare(t, dir)
			before := treeWithLinks(t, base)
			err := Write(t.Context(), dir, func(*Folder) error {
				t.Error("fill was called")
				return nil
			})
			var problem *TargetError
			if !errors.As(err, &problem) {
				t.Fatalf("error is %v", err)
			}
			if !slices.Equal(problem.Names, test.names) || problem.Remedy == "" || !strings.Contains(problem.Reason, test.reason) {
				t.Errorf("refused with %#v", problem)
			}
			if after := treeWithLinks(t, base); !maps.Equal(before, after) {
				t.Errorf("something was touched: %q became %q", before, after)
			}
		})
	}
}

// treeWithLinks is tree for folders that may hold links, which it notes unread.
func treeWithLinks(t *testing.T, dir string) map[string]string {
	t.Helper()
	got := map[string]string{}
	items, err := os.ReadDir(dir)
	must(t, err)
	for _, item := range items {
		path := filepath.Join(dir, item.Name())
		if item.IsDir() {
			got[path] = "dir"
			maps.Copy(got, treeWithLinks(t, path))
			continue
		}
		if to, err := os.Readlink(path); err == nil {
			got[path] = "-> " + to
			continue
		}
		data, err := os.ReadFile(path)
		must(t, err)
		got[path] = string(data)
	}
	return got
}

func TestWorkingDirectoryIsRefused(t *testing.T) {
	base := t.TempDir()
	inner := filepath.Join(base, "results", "charts")
	must(t, os.MkdirAll(inner, 0o755))
	t.Chdir(inner)
	for _, target := range []string{".", "..", filepath.Join(base, "results"), "/"} {
		err := Write(t.Context(), target, results("v1"))
		if problem := (*TargetError)(nil); !errors.As(err, &problem) || !strings.Contains(problem.Reason, "working in") {
			t.Errorf("%s: error is %v", target, err)
		}
	}
}

func TestEmptyTargetIsRefused(t *testing.T) {
	err := Write(t.Context(), "", results("v1"))
	if problem := (*TargetError)(nil); !errors.As(err, &problem) {
		t.Errorf("error is %v", err)
	}
}

func TestTargetErrorMessage(t *testing.T) {
	tests := map[string]struct {
		err  TargetError
		want string
	}{
		"plain": {TargetError{Target: "out", Reason: "is a file", Remedy: "move it away"},
			`"out" is a file; move it away (nothing was changed)`},
		"names": {TargetError{Target: "out", Reason: "holds", Names: []string{"a", "b\x1b[31m"}, Remedy: "move these away"},
			`"out" holds: "a", "b\x1b[31m"; move these away (nothing was changed)`},
		"many names": {TargetError{Target: "out", Reason: "holds", Names: strings.Split("a b c d e f g", " "), Remedy: "r"},
			`"out" holds: "a", "b", "c", "d", "e" and 2 more; r (nothing was changed)`},
	}
	for name, test := range tests {
		t.Run(name, func(t *testing.T) {
			if got := test.err.Error(); got != test.want {
				t.Errorf("got  %s\nwant %s", got, test.want)
			}
		})
	}
}

// TestUnwritableParentIsRefused means something only to users whom permissions
// bind; the read-only disk covers the superuser.
func TestUnwritableParentIsRefused(t *testing.T) {
	parent := filepath.Join(t.TempDir(), "parent")
	must(t, os.Mkdir(parent, 0o555))
	if os.Mkdir(filepath.Join(parent, "probe"), 0o755) == nil {
		t.Skip("permissions do not bind this user")
	}
	for _, name := range []string{"results", "deep/results"} {
		wantTargetError(t, Write(t.Context(), filepath.Join(parent, name), results("v1")), "may not be read or written")
	}
	wantTargetError(t, WriteFileNew(filepath.Join(parent, "case.yaml"), nil), "may not be read or written")
	wantTargetError(t, WriteFileAtomic(filepath.Join(parent, "trace.csv"), text("x")), "may not be read or written")
}
