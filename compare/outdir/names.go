package outdir

import (
	"fmt"
	"io/fs"
	"path/filepath"
	"strings"
	"unicode"
)

// checkName accepts the names that mean the same file below the folder on every
// system: relative, slash-separated, without ".." or empty parts, printable.
func checkName(name string) error {
	switch {
	case name == "." || !fs.ValidPath(name):
		return fmt.Errorf("file name %q is not a plain relative path with / between its parts", name)
	case strings.ContainsFunc(name, func(r rune) bool { return !unicode.IsPrint(r) }):
		return fmt.Errorf("file name %q holds a character that cannot be printed", name)
	case strings.ContainsAny(name, `\<>:"|?*`):
		return fmt.Errorf(`file name %q holds one of \ < > : " | ? *, which some systems do not allow`, name)
	case !filepath.IsLocal(filepath.FromSlash(name)):
		return fmt.Errorf("file name %q is reserved on this system", name)
	}
	for part := range strings.SplitSeq(name, "/") {
		if strings.HasSuffix(part, ".") || strings.HasSuffix(part, " ") {
			return fmt.Errorf("file name %q has a part that ends in a dot or a space, which some systems drop", name)
		}
	}
	return nil
}

// parents gives every folder that a name lies in, outermost first: "a/b/c.txt"
// lies in "a" and "a/b".
func parents(name string) []string {
	var out []string
	for i, r := range name {
		if r == '/' {
			out = append(out, name[:i])
		}
	}
	return out
}

// nameSet maps lower-case names to the names as given; folders end in "/".
type nameSet map[string]string

// claim adds a name with the folders that it lies in. Two names that differ only
// in case are one file on some systems, and are refused on all.
func (s nameSet) claim(name string) error {
	if err := checkName(name); err != nil {
		return err
	}
	for _, dir := range parents(name) {
		if held, ok := s[strings.ToLower(dir)]; ok && held != dir+"/" {
			return fmt.Errorf("file name %q clashes with %q", name, held)
		}
	}
	if held, ok := s[strings.ToLower(name)]; ok {
		return fmt.Errorf("file name %q clashes with %q", name, held)
	}
	for _, dir := range parents(name) {
		s[strings.ToLower(dir)] = dir + "/"
	}
	s[strings.ToLower(name)] = name
	return nil
}
