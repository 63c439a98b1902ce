package main

import (
	"encoding/csv"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// TestHostileTableStaysText gives a batch ids and titles that could be taken for
// formulas, markup or codes, and walks what comes out. Half of the homes fail, so
// that the reasons are walked, too.
func TestHostileTableStaysText(t *testing.T) {
	dir := t.TempDir()
	t.Chdir(dir)
	writeFile(t, dir, "base.yaml", quickCase)
	var ids, titles []string
	var table strings.Builder
	rows := csv.NewWriter(&table)
	write := func(fields ...string) {
		if err := rows.Write(fields); err != nil {
			t.Fatal(err)
		}
	}
	write("id", "title", "household.people")
	for i := range hostile() {
		people := "1"
		if i%2 == 1 {
			people = mark("p", i) // no number: the home fails, and the reason quotes it
		}
		ids, titles = append(ids, mark("i", i)), append(titles, mark("t", i+5))
		write(ids[i], titles[i], people)
	}
	rows.Flush()
	writeFile(t, dir, "=1+1 &P.csv", table.String())
	var out, message strings.Builder
	if code := run([]string{"batch", "=1+1 &P.csv", "--base", "base.yaml", "--years", "1", "--out", "out"}, strings.NewReader(""), &out, &message); code != exitDone || message.Len() > 0 {
		t.Fatalf("exit code %d: %s", code, message.String())
	}
	plainOnly(t, "the terminal", out.String())
	files := filesIn(t, filepath.Join(dir, "out"))
	shown := slices.Concat(ids, titles)
	soundWorkbook(t, files["results.xlsx"], shown)
	soundJSON(t, files["batch.json"], nil)
	soundJSON(t, "["+strings.ReplaceAll(strings.TrimSpace(files["rows.jsonl"]), "\n", ",")+"]", shown)
	soundTable(t, files["results.csv"], shown)
}

// soundTable expects a table in which no cell begins as a formula does, and which
// shows the texts, with an apostrophe before those that would.
func soundTable(t *testing.T, text string, shown []string) {
	t.Helper()
	plainOnly(t, "the table", text)
	table, err := csv.NewReader(strings.NewReader(text)).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	var cells []string
	for _, fields := range table {
		for _, cell := range fields {
			cells = append(cells, strings.TrimPrefix(cell, "'"))
			if _, err := strconv.ParseFloat(cell, 64); err != nil && cell != "" && strings.ContainsRune("=+-@＝＋－＠\t\r\n", []rune(cell)[0]) {
				t.Errorf("a cell begins as a formula does: %q", cell)
			}
		}
	}
	// One of the texts begins with an apostrophe of its own.
	for i, s := range shown {
		shown[i] = strings.TrimPrefix(s, "'")
	}
	allIn(t, cells, shown)
}
