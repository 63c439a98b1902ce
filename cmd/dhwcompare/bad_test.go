package main

import (
	"io/fs"
	"maps"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
)

// badInput is something that is given to the program and refused.
type badInput struct {
	name  string
	args  []string
	files map[string]string // what lies in the folder, by name
	want  string            // the whole message; its first lines if it ends in more
}

// more stands for further lines of the same kind.
const more = "\n..."

// leastBadInputs is how many different bad inputs there have to be at least.
const leastBadInputs = 120

// TestBadInputs gives every input of the catalogue to the program, in a folder with
// real files. Each is refused with the exit code 2 and a message of its own, which
// names the place and the remedy; nothing is printed, and no file appears, goes or
// changes.
func TestBadInputs(t *testing.T) {
	names, messages := map[string]bool{}, map[string]string{}
	for _, in := range catalogue() {
		if names[in.name] {
			t.Errorf("%s stands twice", in.name)
		}
		names[in.name] = true
		if other, again := messages[in.want]; again {
			t.Errorf("%s and %s have the same message", in.name, other)
		}
		messages[in.want] = in.name
		t.Run(in.name, in.refused)
	}
	t.Logf("%d bad inputs", len(messages))
	if len(messages) < leastBadInputs {
		t.Errorf("%d bad inputs, want at least %d", len(messages), leastBadInputs)
	}
}

// catalogue lists all bad inputs.
func catalogue() []badInput {
	return slices.Concat(badSyntax(), badReferences(), badText(), badValues(), badUnits(), badHabits(), badControls(), badVessels(), badRates(),
		badWeatherNames(), badWeather(), badWeatherRows(), badSeries(), badSchedules(), badTables(), badHomes(), badFlags(), badPlaces(), badWords())
}

// complaint is the form of a line about a file: place, what is wrong, remedy.
var complaint = regexp.MustCompile(`^[^:]+:\d+: .+: .+$`)

// furtherOnes is the last line of a list that would be too long.
var furtherOnes = regexp.MustCompile(`\d+ more`)

func (in *badInput) refused(t *testing.T) {
	dir := t.TempDir()
	t.Chdir(dir)
	for name, text := range in.files {
		if err := os.MkdirAll(filepath.Dir(name), 0o777); err != nil {
			t.Fatal(err)
		}
		writeFile(t, dir, name, text)
	}
	var out, message strings.Builder
	code := run(in.args, strings.NewReader(""), &out, &message)
	if code != exitUsage || out.Len() > 0 {
		t.Errorf("exit code %d, want %d; printed %q", code, exitUsage, out.String())
	}
	if !in.says(message.String()) {
		t.Errorf("the message is\n%swant\n%s", message.String(), in.want)
	}
	if left := filesIn(t, dir); !maps.Equal(left, in.files) {
		t.Errorf("there are other files than before: %q", slices.Sorted(maps.Keys(left)))
	}
}

// says reports whether a message is the one that is wanted, and is of the form that
// all messages have.
func (in *badInput) says(message string) bool {
	begin, cut := strings.CutSuffix(in.want, more)
	if cut {
		if message, cut = strings.CutPrefix(message, begin+"\n"); !cut {
			return false
		}
	} else if message != in.want+"\n" {
		return false
	}
	if what, hint, both := strings.Cut(message, "\nhint: "); both {
		return strings.HasPrefix(what, "dhwcompare: ") && hint != "\n"
	}
	for line := range strings.Lines(begin + "\n" + message) {
		if !complaint.MatchString(strings.TrimSuffix(line, "\n")) && !furtherOnes.MatchString(line) {
			return false
		}
	}
	return true
}

// filesIn reads all files below a folder; their names have the slashes of a URL.
func filesIn(t *testing.T, dir string) map[string]string {
	t.Helper()
	files := map[string]string{}
	err := filepath.WalkDir(dir, func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		name, err := filepath.Rel(dir, path)
		if err != nil {
			return err
		}
		data, err := os.ReadFile(path)
		files[filepath.ToSlash(name)] = string(data)
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return files
}

// soundCase is a case without a fault; its last line is line 4.
const soundCase = `household:
  people: 3
climate:
  outdoor_c: [4, 5, 6, 9, 12, 15, 17, 16, 14, 11, 7, 4]
`

// badCase is a case file that is refused.
func badCase(name, text, want string) badInput {
	return badInput{name: name, args: []string{"run", "case.yaml", "--years", "1", "--out", "out"}, files: map[string]string{"case.yaml": text}, want: want}
}

// also is a sound case with something after it, from line 5 on.
func also(name, keys, want string) badInput { return badCase(name, soundCase+keys, want) }

// habits is a sound case with more keys of the household, from line 3 on.
func habits(name, keys, want string) badInput {
	return badCase(name, strings.Replace(soundCase, "  people: 3\n", "  people: 3\n"+keys, 1), want)
}

// people is a sound case with something else in place of the number of people, in
// line 2.
func people(name, value, want string) badInput {
	return badCase(name, strings.Replace(soundCase, "people: 3", "people: "+value, 1), want)
}

// quickCase is a case that is simulated as fast as any.
const quickCase = `title: A pied-à-terre (invented)
household: {people: 1, load_profile: 3XS}
climate:
  outdoor_c: [4, 5, 7, 9, 12, 15, 17, 17, 14, 11, 7, 5]
  mains_c: [8, 8, 9, 12, 15, 17, 18, 18, 17, 14, 11, 9]
dwelling: {heat_loss_w_per_k: 0}
compact_store: {layers: 8}
cylinder: {layers: 8, hygiene: {every_days: 0}}
`

func writeFile(t *testing.T, dir, name, text string) {
	t.Helper()
	if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o666); err != nil {
		t.Fatal(err)
	}
}
