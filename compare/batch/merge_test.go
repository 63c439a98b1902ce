package batch

import (
	"strings"
	"testing"
)

// parts are two made-up folders of a table of four homes.
func parts(t *testing.T) [2]Source {
	t.Helper()
	var list [2]Source
	for i, numbers := range [][]int{{1, 3}, {2, 4}} {
		head := Summary{Schema: Schema, Version: "1", BaseDigest: "b", TableDigest: "t", Homes: 4, Keys: []string{}, Columns: columnNames(), Part: &Part{i + 1, 2}}
		f, _ := written(t, head, madeUp(numbers...))
		list[i] = f.source(t, string(rune('a'+i)))
	}
	return list
}

func TestMergeJoins(t *testing.T) {
	p := parts(t)
	head, results, err := Merge(p[:])
	if err != nil {
		t.Fatal(err)
	}
	got, sum := written(t, head, results)
	want, _ := written(t, head, madeUp(1, 2, 3, 4))
	same(t, "merged", got, want)
	if sum.Part != nil || sum.Tally.Homes != 4 || sum.Tally.Either != 4 {
		t.Errorf("summary %+v", sum)
	}
}

// TestMergeRefuses names what keeps parts apart before anything is written.
func TestMergeRefuses(t *testing.T) {
	for name, test := range map[string]struct {
		change func(p *[2]Source)
		want   string
	}{
		"another version":  {func(p *[2]Source) { p[1].Summary.Version = "2" }, "a and b differ in the program's version"},
		"another base":     {func(p *[2]Source) { p[1].Summary.BaseDigest = "c" }, "a and b differ in the base case"},
		"another table":    {func(p *[2]Source) { p[1].Summary.TableDigest = "u" }, "a and b differ in the table"},
		"other years":      {func(p *[2]Source) { p[1].Summary.Years = 9 }, "a and b differ in the years"},
		"another seed":     {func(p *[2]Source) { p[1].Summary.Seed = 9 }, "a and b differ in the seed"},
		"another division": {func(p *[2]Source) { p[1].Summary.Part = &Part{2, 3} }, "a and b differ in the number of parts"},
		"the same twice":   {func(p *[2]Source) { p[1].Summary.Part = &Part{1, 2} }, "part 1/2 is given twice, as a and b: leave one out\npart 2/2 is missing"},
	} {
		t.Run(name, func(t *testing.T) {
			p := parts(t)
			test.change(&p)
			if _, _, err := Merge(p[:]); err == nil || !strings.Contains(err.Error(), test.want) {
				t.Errorf("error is %v, want %q", err, test.want)
			}
		})
	}
	if _, _, err := Merge(nil); err == nil {
		t.Error("no parts were merged")
	}
	p := parts(t)
	if _, _, err := Merge(p[:1]); err == nil || !strings.Contains(err.Error(), "part 2/2 is missing") {
		t.Errorf("one of two parts: %v", err)
	}
}

// TestMergeFindsGaps looks at the homes themselves, whatever the parts call
// themselves.
func TestMergeFindsGaps(t *testing.T) {
	rows := func(numbers ...int) string {
		f, _ := written(t, Summary{Schema: Schema, Keys: []string{}, Columns: columnNames()}, madeUp(numbers...))
		return f[RowsName].String()
	}
	for name, test := range map[string]struct{ second, want string }{
		"missing":  {rows(2), "home 4 of the table is in no part"},
		"overlap":  {rows(2, 3, 4), `home 3, "home-3", is in both a and b`},
		"too many": {rows(2, 4, 5), `b holds home 5, "home-5"`},
		"torn":     {rows(2, 4)[:len(rows(2, 4))-9], "b: rows.jsonl holds a line that is no result"},
		"twice":    {rows(2, 4, 4), `b holds home 4, "home-4"`},
	} {
		t.Run(name, func(t *testing.T) {
			p := parts(t)
			p[1].Rows = strings.NewReader(test.second)
			head, results, err := Merge(p[:])
			if err != nil {
				t.Fatal(err)
			}
			if _, err := Write(folder{}.create, head, results); err == nil || !strings.Contains(err.Error(), test.want) {
				t.Errorf("error is %v, want %q", err, test.want)
			}
		})
	}
}

func TestReadSummaryRefuses(t *testing.T) {
	for _, data := range []string{"", "{}", `{"schema":"other"}`} {
		if _, err := ReadSummary("x", []byte(data)); err == nil {
			t.Errorf("%q was read", data)
		}
	}
}
