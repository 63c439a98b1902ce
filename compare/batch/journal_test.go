package batch

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// TestJournalHeals cuts what a process that died has torn, at every byte, and goes
// on behind it.
func TestJournalHeals(t *testing.T) {
	path := filepath.Join(t.TempDir(), "journal")
	open := func() *Journal {
		log, err := OpenJournal(path)
		if err != nil {
			t.Fatal(err)
		}
		return log
	}
	put := func(log *Journal, key, text string) {
		values := make([]any, len(columns()))
		values[0] = text
		if err := log.put(key, outcome{Values: values}); err != nil {
			t.Fatal(err)
		}
	}
	log := open()
	put(log, "a", "first")
	kept := log.end
	put(log, "b", "second")
	if err := log.Close(); err != nil {
		t.Fatal(err)
	}
	full, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	for n := kept; n < int64(len(full)); n++ {
		if err := os.WriteFile(path, full[:n], 0o666); err != nil {
			t.Fatal(err)
		}
		log := open()
		if !log.has("a") || log.has("b") || log.end != kept {
			t.Fatalf("torn at %d: holds a %t, b %t, ends at %d", n, log.has("a"), log.has("b"), log.end)
		}
		put(log, "c", "third")
		if err := log.Close(); err != nil {
			t.Fatal(err)
		}
		log = open()
		a, errA := log.get("a")
		c, errC := log.get("c")
		if errA != nil || errC != nil || a.Values[0] != "first" || c.Values[0] != "third" {
			t.Fatalf("torn at %d: read back %v %v, %v %v", n, a, errA, c, errC)
		}
		if err := log.Close(); err != nil {
			t.Fatal(err)
		}
	}
}

// TestJournalIgnoresWhatItDidNotWrite keeps lines out that cannot be results.
func TestJournalIgnoresWhatItDidNotWrite(t *testing.T) {
	path := filepath.Join(t.TempDir(), "journal")
	values := strings.TrimSuffix(strings.Repeat("1,", len(columns())), ",")
	text := `not JSON
{"key":"few","values":[1,2],"error":""}
{"key":"both","values":[` + values + `],"error":"x"}
{"key":"failed","values":null,"error":"x"}
{"key":"","values":[` + values + `],"error":""}
{"key":"list","values":[[]` + values[1:] + `],"error":""}
{"key":"good","values":[` + values + `],"error":""}
`
	if err := os.WriteFile(path, []byte(text), 0o666); err != nil {
		t.Fatal(err)
	}
	log, err := OpenJournal(path)
	if err != nil {
		t.Fatal(err)
	}
	defer log.Close() // it was only read
	if len(log.at) != 1 || !log.has("good") {
		t.Errorf("holds %v", log.at)
	}
}

func TestJournalSaysWhyItCannotBeOpened(t *testing.T) {
	if _, err := OpenJournal(t.TempDir()); err == nil {
		t.Error("a folder was opened as a journal")
	}
}
