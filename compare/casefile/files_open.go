package casefile

import (
	"errors"
	"fmt"
	"io/fs"
	"strings"

	"dhwcompare/compare/datafile"
)

// open brings the bytes of a file and checks their digest.
func (r *reader) open(a attachment, open Opener) bool {
	if a.file.Read() {
		return true
	}
	data, fault := bytesOf(a.file.Name, open)
	if fault != "" {
		r.add(r.where(a.key), a.key, fmt.Sprintf("names %s, %s", shown(a.file.Name), fault))
		return false
	}
	digest := datafile.Digest(data)
	if stated := a.file.SHA256; stated != "" && stated != digest {
		r.add(r.where(a.digestKey, a.key), a.digestKey, fmt.Sprintf(
			"is %s..., but %s has %s...: it is not the file that the case was made with; restore it, or leave %s out to take it as it is",
			stated[:shownDigits], shown(a.file.Name), digest[:shownDigits], a.digestKey))
		return false
	}
	a.file.Data, a.file.SHA256 = data, digest
	return true
}

// shownDigits of a digest are enough to tell two apart.
const shownDigits = 12

// bytesOf opens a file, or says why it cannot.
func bytesOf(name string, open Opener) (data []byte, fault string) {
	if open == nil {
		return nil, "which has not been read: a case from here cannot refer to files"
	}
	data, err := open(name)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return nil, "and there is no such file: names count from the folder of the case"
	case err != nil:
		return nil, fmt.Sprintf("which cannot be read (%v): check the file and its permissions", cause(err))
	case len(data) > LargestFile:
		return nil, fmt.Sprintf("which has more than %d bytes: check that this is the right file", LargestFile)
	case data == nil:
		data = []byte{}
	}
	return data, ""
}

// cause strips what the system adds to an error: the operation and the path.
func cause(err error) error {
	var path *fs.PathError
	if errors.As(err, &path) {
		return path.Err
	}
	return err
}

// badFile notes what is wrong with a file: a line of the error for each problem,
// which begins with the file and, as a rule, the line in it.
func (r *reader) badFile(a attachment, err error) {
	at := r.where(a.key)
	for line := range strings.SplitSeq(err.Error(), "\n") {
		where, text := a.file.Name, strings.TrimPrefix(line, a.file.Name+":")
		if number, rest, ok := strings.Cut(text, ":"); ok && isDigits(number) {
			where, text = where+":"+number, rest
		}
		r.add(at, a.key, fmt.Sprintf("(%s): %s", where, visible(strings.TrimSpace(text))))
	}
	r.bad[a.gives] = true
}

// visible replaces what must not reach a terminal.
func visible(text string) string {
	return strings.Map(func(c rune) rune {
		if isHidden(c) {
			return '?'
		}
		return c
	}, strings.ToValidUTF8(text, "?"))
}
