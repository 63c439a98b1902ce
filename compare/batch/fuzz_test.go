package batch

import (
	"bytes"
	"encoding/csv"
	"errors"
	"slices"
	"strings"
	"testing"
	"unicode"

	"dhwcompare/compare/casefile"
)

// Whatever the bytes, Read gives problems that each have a place and are safe to
// show, or a table that is the same after it has been written and read again.
func FuzzRead(f *testing.F) {
	f.Add([]byte(smallHomes))
	f.Add([]byte("\ufeffhousehold.people,id\r\n2,a\r\n\"3\",\"b\"\"c\"\r\n"))
	f.Add([]byte("id,tariffs[2].rate_per_kwh,tariffs[1].bands[1].hours\na,0.2,\"00:00-05:00\"\n"))
	f.Add([]byte("id;title\na;b\n"))
	f.Add([]byte("ID,years,title,title,household.peple,\n1,2,3,4,5,6,7\n"))
	f.Add([]byte("id\na\na\n\x1b[2J\n\u202eb\n"))
	f.Add([]byte("id,title\na,\"x\nb,y\"z\n"))
	f.Add([]byte("\xff\xfei\x00d\x00"))
	f.Fuzz(func(t *testing.T, data []byte) {
		table, err := Read("t.csv", data)
		if err == nil {
			soundTable(t, table)
			sameTable(t, table)
			return
		}
		var problems Problems
		if !errors.As(err, &problems) || len(problems) == 0 || table != nil {
			t.Fatalf("table %v, error without problems: %v", table, err)
		}
		for _, p := range problems {
			if p.File != "t.csv" || p.Line < 1 || p.Line > 1+bytes.Count(data, []byte("\n")) || p.Column < 0 || p.Text == "" {
				t.Fatalf("problem without a place: %+v", p)
			}
			if strings.ContainsFunc(p.Error(), hidden) {
				t.Fatalf("problem that is not safe to show: %q", p.Error())
			}
		}
	})
}

// hidden reports a character that would move a terminal's cursor, or turn the
// direction of its text.
func hidden(c rune) bool { return unicode.IsControl(c) || unicode.In(c, unicode.Bidi_Control) }

// soundTable asks of a table what its users rely on.
func soundTable(t *testing.T, table *Table) {
	if len(table.Rows) == 0 || len(table.Keys) != len(table.Columns) {
		t.Fatalf("%d homes, %d keys in %d columns", len(table.Rows), len(table.Keys), len(table.Columns))
	}
	for _, key := range table.Keys {
		if err := casefile.Known(key); err != nil {
			t.Fatalf("a column that no case knows: %v", err)
		}
	}
	seen := map[string]bool{}
	for i, r := range table.Rows {
		if r.ID == "" || seen[r.ID] || r.Number != i+1 || len(r.Values) != len(table.Keys) || r.Line <= 1 {
			t.Fatalf("home %d is %+v", i+1, r)
		}
		seen[r.ID] = true
	}
}

// sameTable writes a table and reads it again.
func sameTable(t *testing.T, table *Table) {
	var text bytes.Buffer
	w := csv.NewWriter(&text)
	records := [][]string{append([]string{idColumn}, table.Keys...)}
	for _, r := range table.Rows {
		records = append(records, append([]string{r.ID}, r.Values...))
	}
	if err := w.WriteAll(records); err != nil {
		t.Fatal(err)
	}
	again, err := Read("again.csv", text.Bytes())
	if err != nil {
		t.Fatalf("a table that was read is refused: %v\n%s", err, text.String())
	}
	if again.Digest() != table.Digest() || !slices.Equal(again.Keys, table.Keys) {
		t.Fatalf("a table changes by writing:\n%s", text.String())
	}
}
