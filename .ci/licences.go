// Command licences writes cmd/dhwcompare/licences.txt anew: which modules and fonts
// are part of the program, and under which terms, word for word from the module
// cache. It is run after a dependency has changed:
//
//	go run .ci/licences.go
//
// With the argument -check it writes nothing and exits with 1 if the file would
// change.
package main

import (
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
)

const target = "cmd/dhwcompare/licences.txt"

const head = `Licences of what dhwcompare is made of

The program contains the modules below and the standard library of Go. The fonts
of its charts, Liberation Sans, are in codeberg.org/go-fonts/liberation and have a
licence of their own. Their terms follow, each text once.

`

const testsOnly = `
Used to build and test for the systems it runs on, and not part of the program here:

`

// systems are those whose programs are made.
var systems = []string{"linux", "windows", "darwin"}

// module is a dependency, as go list prints it.
type module struct{ path, version, dir string }

// notice is a text and those that it is the licence of.
type notice struct {
	text string
	of   []string
}

func main() {
	text, err := compose()
	if err == nil {
		err = put(text, slices.Contains(os.Args[1:], "-check"))
	}
	if err != nil {
		fmt.Fprintln(os.Stderr, err)
		os.Exit(1)
	}
}

func put(text []byte, checkOnly bool) error {
	if !checkOnly {
		return os.WriteFile(target, text, 0o644)
	}
	if old, err := os.ReadFile(target); err != nil || !bytes.Equal(old, text) {
		return fmt.Errorf("%s is not up to date: go run .ci/licences.go (%v)", target, err)
	}
	return nil
}

// compose lists all modules of go.mod, then the texts of those in the program.
func compose() ([]byte, error) {
	linked, err := linkedModules()
	if err != nil {
		return nil, err
	}
	all, err := modules("go", "list", "-m", "-f", "{{if not .Main}}{{.Path}} {{.Version}} {{.Dir}}{{end}}", "all")
	if err != nil {
		return nil, err
	}
	root, err := exec.Command("go", "env", "GOROOT").Output()
	if err != nil {
		return nil, err
	}
	var b bytes.Buffer
	b.WriteString(head)
	var notices []*notice
	for _, m := range append(linked, module{"the standard library of Go", "", strings.TrimSpace(string(root))}) {
		if notices, err = m.add(notices); err != nil {
			return nil, err
		}
		b.WriteString(m.line(notices))
	}
	b.WriteString(testsOnly)
	for _, m := range all {
		if m.dir == "" || slices.Contains(linked, m) || !required(m.path) {
			continue
		}
		own, err := m.add(nil)
		if err != nil {
			return nil, err
		}
		b.WriteString(m.line(own))
	}
	for _, n := range notices {
		fmt.Fprintf(&b, "\n%s\n%s\n\n%s\n", strings.Repeat("=", 80), strings.Join(n.of, "\n"), n.text)
	}
	return b.Bytes(), nil
}

// linkedModules lists the modules whose packages are in the program on any system.
func linkedModules() ([]module, error) {
	var list []module
	for _, system := range systems {
		more, err := modules("env", "GOOS="+system, "CGO_ENABLED=0", "go", "list", "-deps", "-f", "{{with .Module}}{{if not .Main}}{{.Path}} {{.Version}} {{.Dir}}{{end}}{{end}}", "./cmd/dhwcompare")
		if err != nil {
			return nil, err
		}
		list = append(list, more...)
	}
	slices.SortFunc(list, func(a, b module) int { return strings.Compare(a.path, b.path) })
	return slices.Compact(list), nil
}

func modules(command string, args ...string) ([]module, error) {
	cmd := exec.Command(command, args...)
	cmd.Stderr = os.Stderr
	out, err := cmd.Output()
	if err != nil {
		return nil, err
	}
	var list []module
	for line := range strings.Lines(string(out)) {
		if fields := strings.Fields(line); len(fields) > 0 {
			list = append(list, module{fields[0], fields[1], strings.Join(fields[2:], " ")})
		}
	}
	return list, nil
}

// required reports whether go.mod names a module.
func required(path string) bool {
	mod, err := os.ReadFile("go.mod")
	return err == nil && bytes.Contains(mod, []byte("\t"+path+" "))
}

// line is the module's place in the list.
func (m module) line(notices []*notice) string {
	var kinds []string
	for _, n := range notices {
		if k := kind(n.text); k != "" && n.isOf(m) && !slices.Contains(kinds, k) {
			kinds = append(kinds, k)
		}
	}
	return fmt.Sprintf("  %s: %s\n", strings.TrimSpace(m.path+" "+m.version), strings.Join(kinds, ", "))
}

func (n *notice) isOf(m module) bool {
	return slices.ContainsFunc(n.of, func(of string) bool { return strings.HasPrefix(of, m.path+" (") })
}

// kind names a licence by words that no other has; empty for a grant or a notice.
func kind(text string) string {
	for _, k := range [][2]string{
		{"SIL OPEN FONT LICENSE Version", "SIL Open Font License 1.1"},
		{"Creative Commons Attribution 4.0 International Public", "Creative Commons Attribution 4.0"},
		{"Mozilla Public License Version 2.0", "Mozilla Public License 2.0"},
		{"The FreeType Project LICENSE", "FreeType License"},
		{"covered by two different licenses: MIT and Apache", "MIT and Apache 2.0"},
		{"Apache License", "Apache 2.0"},
		{"Permission is hereby granted, free of charge", "MIT"},
		{"Redistribution and use in source and binary forms", "BSD"},
	} {
		if strings.Contains(text, k[0]) {
			return k[1]
		}
	}
	return ""
}

// add adds the texts of a module, each of which may be that of others, too.
func (m module) add(notices []*notice) ([]*notice, error) {
	files, err := m.files()
	if err != nil {
		return nil, err
	}
	for _, file := range files {
		data, err := os.ReadFile(file)
		if err != nil {
			return nil, err
		}
		name, err := filepath.Rel(m.dir, file)
		if err != nil {
			return nil, err
		}
		text, of := tidy(data), fmt.Sprintf("%s (%s)", m.path, filepath.ToSlash(name))
		i := slices.IndexFunc(notices, func(n *notice) bool { return n.text == text })
		if i < 0 {
			notices = append(notices, &notice{text: text})
			i = len(notices) - 1
		}
		notices[i].of = append(notices[i].of, of)
	}
	return notices, nil
}

// files finds the texts of a module: licences, notices, and grants of patents. Of
// two licences to choose from, the FreeType License is chosen.
func (m module) files() ([]string, error) {
	var found []string
	for _, pattern := range []string{"LICEN[CS]E*", "NOTICE*", "PATENTS*", "THIRD_PARTY_LICENSES/*", "licenses/ftl.txt"} {
		files, err := filepath.Glob(filepath.Join(m.dir, pattern))
		if err != nil {
			return nil, err
		}
		found = append(found, files...)
	}
	if len(found) == 0 {
		return nil, fmt.Errorf("%s has no licence", m.path)
	}
	return found, nil
}

// tidy makes line ends and the ends of lines alike, so that equal texts compare
// equal.
func tidy(data []byte) string {
	lines := strings.Split(strings.ReplaceAll(string(data), "\r\n", "\n"), "\n")
	for i, line := range lines {
		lines[i] = strings.TrimRight(line, " \t\f")
	}
	return strings.Trim(strings.Join(lines, "\n"), "\n")
}
