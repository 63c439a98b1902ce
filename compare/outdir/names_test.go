package outdir

import (
	"path/filepath"
	"strings"
	"testing"
	"unicode"
)

func TestRefusedNames(t *testing.T) {
	for _, name := range []string{
		"", ".", "..", "../x", "a/../../x", "a/..", "/etc/passwd", "//x", "a//b", "a/", "./a", `a\b`, `..\x`,
		"c:x", "a\nb", "a\x00b", "a\x1b[31m", "a\tb", "a\u202eb", "a\u200bb", "\xff", "a*", "a?", "a<b", `a"b`, "a|b",
		"a.", "a ", "a./b", "manifest.json", "Manifest.JSON",
	} {
		err := Write(t.Context(), filepath.Join(t.TempDir(), "out"), func(d *Folder) error {
			if d.WriteFile(name, []byte("x")) == nil {
				t.Errorf("%q was accepted", name)
			}
			return nil
		})
		if err == nil {
			t.Errorf("%q: the folder was written although a file is missing", name)
		}
	}
}

func TestClashingNames(t *testing.T) {
	for _, pair := range [][2]string{
		{"a.txt", "a.txt"}, {"a.txt", "A.TXT"}, {"a", "a/b"}, {"a/b", "a"}, {"Charts/a", "charts/b"}, {"x/y/z", "x/Y"},
	} {
		err := Write(t.Context(), filepath.Join(t.TempDir(), "out"), func(d *Folder) error {
			must(t, d.WriteFile(pair[0], nil))
			return d.WriteFile(pair[1], nil)
		})
		if err == nil || !strings.Contains(err.Error(), "clashes") {
			t.Errorf("%q: error is %v", pair, err)
		}
	}
}

func TestOrdinaryNames(t *testing.T) {
	names := []string{"comparison.json", "charts/winter day.svg", "größe/λ.csv", ".hidden", "a..b", "deep/er/manifest.json"}
	target := filepath.Join(t.TempDir(), "out")
	must(t, Write(t.Context(), target, func(d *Folder) error {
		for _, name := range names {
			must(t, d.WriteFile(name, []byte(name)))
		}
		return nil
	}))
	got := tree(t, target)
	for _, name := range names {
		if got[name] != name {
			t.Errorf("%q holds %q", name, got[name])
		}
	}
}

// FuzzCheckName holds that an accepted name stays below the folder and can be
// shown on a terminal.
func FuzzCheckName(f *testing.F) {
	for _, name := range []string{"a/b", "../a", "/a", "a\\b", "a\x1bb", "..", "a/./b"} {
		f.Add(name)
	}
	f.Fuzz(func(t *testing.T, name string) {
		if checkName(name) != nil {
			return
		}
		root := filepath.FromSlash("/folder")
		if path := filepath.Join(root, filepath.FromSlash(name)); !strings.HasPrefix(path, root+string(filepath.Separator)) {
			t.Errorf("%q leads to %q", name, path)
		}
		if strings.ContainsFunc(name, unicode.IsControl) {
			t.Errorf("%q holds a control character", name)
		}
	})
}
