package outdir

import (
	"io"
	"os"
	"path/filepath"
	"sync"
	"testing"
)

// wantManifest was put together by hand; the digests are those of the empty
// message and of "abc" in FIPS 180-2, appendix B.1, and its companion examples.
const wantManifest = `{
  "schema": "dhwcompare-manifest/1",
  "files": [
    {
      "name": "a&b/empty",
      "size_bytes": 0,
      "sha256": "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"
    },
    {
      "name": "z",
      "size_bytes": 3,
      "sha256": "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"
    }
  ]
}
`

func TestManifestContent(t *testing.T) {
	target := filepath.Join(t.TempDir(), "out")
	must(t, Write(t.Context(), target, func(d *Folder) error {
		w, err := d.Create("z")
		must(t, err)
		for _, part := range []string{"a", "bc"} {
			_, err := io.WriteString(w, part)
			must(t, err)
		}
		must(t, w.Close())
		return d.WriteFile("a&b/empty", nil)
	}))
	got, err := os.ReadFile(filepath.Join(target, ManifestName))
	must(t, err)
	if string(got) != wantManifest {
		t.Errorf("got %s", got)
	}
}

func TestManifestOfNoFiles(t *testing.T) {
	target := filepath.Join(t.TempDir(), "out")
	must(t, Write(t.Context(), target, func(*Folder) error { return nil }))
	got, err := os.ReadFile(filepath.Join(target, ManifestName))
	must(t, err)
	if want := "{\n  \"schema\": \"dhwcompare-manifest/1\",\n  \"files\": []\n}\n"; string(got) != want {
		t.Errorf("got %s", got)
	}
	must(t, Write(t.Context(), target, results("v1")))
	wantVersion(t, target, "v1")
}

// TestManifestDoesNotDependOnOrder writes the same files in both orders and at
// once; the bytes of the manifest must not tell.
func TestManifestDoesNotDependOnOrder(t *testing.T) {
	names := []string{"b/2", "a", "b/1", "c"}
	orders := map[string]func(*Folder) error{
		"forwards": func(d *Folder) error {
			for _, name := range names {
				must(t, d.WriteFile(name, []byte(name)))
			}
			return nil
		},
		"backwards": func(d *Folder) error {
			for i := range names {
				name := names[len(names)-1-i]
				must(t, d.WriteFile(name, []byte(name)))
			}
			return nil
		},
		"at once": func(d *Folder) error {
			var wg sync.WaitGroup
			for _, name := range names {
				wg.Go(func() {
					if err := d.WriteFile(name, []byte(name)); err != nil {
						t.Error(err)
					}
				})
			}
			wg.Wait()
			return nil
		},
	}
	var first []byte
	for order, fill := range orders {
		target := filepath.Join(t.TempDir(), "out")
		must(t, Write(t.Context(), target, fill))
		got, err := os.ReadFile(filepath.Join(target, ManifestName))
		must(t, err)
		if first == nil {
			first = got
		}
		if string(got) != string(first) {
			t.Errorf("%s: got %s, want %s", order, got, first)
		}
	}
}

func TestFolderIsOfNoUseAfterwards(t *testing.T) {
	var kept *Folder
	target := filepath.Join(t.TempDir(), "out")
	must(t, Write(t.Context(), target, func(d *Folder) error {
		kept = d
		return results("v1")(d)
	}))
	if kept.WriteFile("late.txt", nil) == nil {
		t.Error("a finished folder took a file")
	}
	wantVersion(t, target, "v1")
}

// FuzzDecodeManifest holds that a manifest which is accepted lists only names
// that the folder would have accepted, since listed files may be deleted.
func FuzzDecodeManifest(f *testing.F) {
	f.Add([]byte(wantManifest))
	f.Add([]byte(`{"schema":"dhwcompare-manifest/1","files":[{"name":"../x"}]}`))
	f.Add([]byte(`{"schema":"dhwcompare-manifest/1","files":null}`))
	f.Fuzz(func(t *testing.T, data []byte) {
		m, err := decodeManifest(data)
		if err != nil {
			return
		}
		for _, e := range m.Files {
			if err := checkName(e.Name); err != nil {
				t.Error(err)
			}
		}
	})
}
