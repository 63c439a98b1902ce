package outdir

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
)

// ManifestName is the file that lists all others of a folder. Its presence
// marks the folder as one that this package wrote and may replace.
const ManifestName = "manifest.json"

// manifestSchema names the layout. A later layout must still read this one, or
// folders written before it could no longer be replaced.
const manifestSchema = "dhwcompare-manifest/1"

// maxManifestBytes keeps a stranger's huge file of the same name out of memory;
// it leaves room for some fifty thousand entries.
const maxManifestBytes = 8 << 20

// manifest lists the files of a folder, itself excepted. It carries no times,
// so that equal results have equal bytes.
type manifest struct {
	Schema string  `json:"schema"`
	Files  []entry `json:"files"`
}

// entry is one file: its slash-separated name below the folder, size and digest.
type entry struct {
	Name      string `json:"name"`
	SizeBytes int64  `json:"size_bytes"`
	SHA256    string `json:"sha256"`
}

// encode gives the manifest as indented JSON, sorted by name.
func (m manifest) encode() ([]byte, error) {
	slices.SortFunc(m.Files, func(a, b entry) int { return strings.Compare(a.Name, b.Name) })
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	err := e.Encode(m)
	return b.Bytes(), err
}

// decodeManifest accepts only what encode can have written: any doubt must end
// in a refusal, because what a manifest lists may be deleted.
func decodeManifest(data []byte) (manifest, error) {
	var m manifest
	if err := json.Unmarshal(data, &m); err != nil {
		return manifest{}, err
	}
	if m.Schema != manifestSchema {
		return manifest{}, fmt.Errorf("schema is %q, not %q", m.Schema, manifestSchema)
	}
	for _, f := range m.Files {
		if err := checkName(f.Name); err != nil {
			return manifest{}, err
		}
	}
	return m, nil
}

// readListed gives the names that the manifest of dir accounts for, folders and
// itself included. A missing or foreign manifest accounts for nothing.
func readListed(dir string) (map[string]fs.FileMode, error) {
	path := filepath.Join(dir, ManifestName)
	info, err := os.Lstat(path)
	if errors.Is(err, fs.ErrNotExist) || err == nil && (!info.Mode().IsRegular() || info.Size() > maxManifestBytes) {
		return nil, nil
	}
	if err != nil {
		return nil, err
	}
	data, err := os.ReadFile(path)
	if err != nil {
		return nil, err
	}
	m, err := decodeManifest(data)
	if err != nil {
		return nil, nil // somebody else's manifest.json: a file like any other
	}
	listed := map[string]fs.FileMode{ManifestName: 0}
	for _, f := range m.Files {
		listed[f.Name] = 0
		for _, dir := range parents(f.Name) {
			listed[dir] = fs.ModeDir
		}
	}
	return listed, nil
}
