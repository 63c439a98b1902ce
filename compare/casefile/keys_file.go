package casefile

import (
	"fmt"
	"io/fs"
	"path"
	"strings"
	"unicode/utf8"

	"dhwcompare/compare/datafile"
)

// Forms of the keys of files, as messages call them.
const (
	fileForm   = "the name of a file in or below the folder of the case"
	digestForm = "64 hexadecimal digits"
)

const longestFileName = 200

// fileKeys are the key that names a file and the one with its digest. Changed
// clears what was read from another file before.
func fileKeys[T any](name, digest string, at func(*T) *datafile.File, changed func(*T), help string) []field[T] {
	none := func(t *T) string {
		if at(t).Stated() {
			return ""
		}
		return "no file is named"
	}
	return []field[T]{
		{
			Key: Key{Path: name, Form: fileForm, Source: "no file is used unless one is named", Help: help,
				Remedy: "give its name, such as data/file.csv, or leave the key out"},
			bind: func(t *T) value { return fileValue{at: at(t), changed: func() { changed(t) }} },
			idle: none,
		},
		{
			Key: Key{Path: digest, Form: digestForm, Source: "digest of the file that was read",
				Help: "SHA-256 of that file, checked if it is stated", Remedy: "leave it out, and no digest is checked"},
			bind: func(t *T) value { return digestValue{at: at(t)} },
			idle: none,
		},
	}
}

type fileValue struct {
	stated
	at      *datafile.File
	changed func()
}

func (v fileValue) read(r *reader, p place) {
	if !r.scalar(p) {
		return
	}
	name := path.Clean(p.node.Value)
	if fault := nameFault(p.node.Value); fault != "" {
		r.refuse(p, fault)
		return
	}
	v.changed()
	v.at.Refer(name)
}

// nameFault says why a text cannot name a file beside the case. Files elsewhere are
// refused because results carry copies: a case from a stranger must not gather
// files from all over the machine.
func nameFault(text string) string {
	switch {
	case strings.TrimSpace(text) == "":
		return "give its name, or leave the key out"
	case strings.ContainsFunc(text, isHidden):
		return "leave out line breaks, control characters and marks that turn the direction of writing"
	case utf8.RuneCountInString(text) > longestFileName:
		return fmt.Sprintf("use at most %d characters", longestFileName)
	case strings.Contains(text, "://"):
		return "nothing is fetched from a network: save the file beside the case and give its name"
	case strings.Contains(text, `\`):
		return "write / between folders"
	case !fs.ValidPath(path.Clean(text)) || path.Clean(text) == ".":
		return "copy the file into the folder of the case and give its name from there"
	default:
		return ""
	}
}

// yaml is empty where no file is named; such a key is never written as stated.
func (v fileValue) yaml(string) string {
	if !v.at.Stated() {
		return ""
	}
	return quote(v.at.Name)
}

type digestValue struct {
	stated
	at *datafile.File
}

func (v digestValue) read(r *reader, p place) {
	if !r.scalar(p) {
		return
	}
	digest := strings.ToLower(p.node.Value)
	if !isDigest(digest) {
		r.refuse(p, "")
		return
	}
	v.at.SHA256 = digest
}

func isDigest(text string) bool {
	return len(text) == len(datafile.Digest(nil)) && strings.Trim(text, "0123456789abcdef") == ""
}

func (v digestValue) yaml(string) string {
	if v.at.SHA256 == "" {
		return ""
	}
	return quote(v.at.SHA256)
}
