package outdir

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
)

// resolve gives the absolute path that a target stands for. A link is followed:
// the folder it leads to is replaced, the link stays.
func resolve(target string) (string, error) {
	if target == "" {
		return "", &TargetError{Reason: "is no name for a folder or file", Remedy: "give a name"}
	}
	abs, err := filepath.Abs(target)
	if err != nil {
		return "", targetFailure(target, err)
	}
	info, err := os.Lstat(abs)
	if err != nil || info.Mode()&fs.ModeSymlink == 0 {
		return abs, nil // whatever the error is, the first real use reports it
	}
	led, err := filepath.EvalSymlinks(abs)
	if err != nil {
		return "", &TargetError{Target: target, Reason: "is a link that leads nowhere",
			Remedy: "remove the link or choose another path", Err: err}
	}
	return led, nil
}

// checkTarget refuses a target that Write may not replace.
func checkTarget(target string) error {
	info, err := os.Lstat(target)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return nil
	case err != nil:
		return targetFailure(target, err)
	case !info.IsDir():
		return &TargetError{Target: target, Reason: "is a file where a folder should be written",
			Remedy: "move it away or name another folder"}
	case holdsWorkingDirectory(info):
		return &TargetError{Target: target, Reason: "is or holds the folder you are working in, which cannot be exchanged under your feet",
			Remedy: "name a folder inside it"}
	}
	names, err := strangers(target)
	if err != nil {
		return targetFailure(target, err)
	}
	if len(names) > 0 {
		return &TargetError{Target: target, Reason: "holds what its " + ManifestName + " does not list", Names: names,
			Remedy: "move these away or name another folder"}
	}
	return nil
}

// holdsWorkingDirectory tells whether dir is the current directory or one above
// it. Exchanging it would leave the user's shell in a deleted folder.
func holdsWorkingDirectory(dir fs.FileInfo) bool {
	at, err := os.Getwd()
	for err == nil {
		info, statErr := os.Stat(at)
		if statErr == nil && os.SameFile(info, dir) {
			return true
		}
		up := filepath.Dir(at)
		if up == at {
			return false
		}
		at = up
	}
	return false
}

// strangers lists what stands in dir without being accounted for by its
// manifest: files, links and devices by name, folders with a slash behind.
func strangers(dir string) ([]string, error) {
	listed, err := readListed(dir)
	if err != nil {
		return nil, err
	}
	var names []string
	err = filepath.WalkDir(dir, func(path string, d fs.DirEntry, err error) error {
		if err != nil || path == dir {
			return err
		}
		rel, err := filepath.Rel(dir, path)
		if err != nil {
			return err
		}
		name := filepath.ToSlash(rel)
		if kind, ok := listed[name]; ok && kind == d.Type() {
			return nil
		}
		if d.IsDir() {
			names = append(names, name+"/")
			return fs.SkipDir
		}
		names = append(names, name)
		return nil
	})
	return names, err
}
