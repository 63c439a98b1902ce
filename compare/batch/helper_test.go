package batch

import (
	"bytes"
	"fmt"
	"io"
	"iter"
	"path/filepath"
	"strings"
	"testing"

	"dhwcompare/compare"
	"dhwcompare/compare/casefile"
)

// smallBase is a case that takes little time: one year of a published profile, no
// heating.
func smallBase(t *testing.T) *compare.Case {
	t.Helper()
	const text = `
household: {people: 2, load_profile: S}
climate: {outdoor_c: [4, 5, 7, 9, 12, 15, 17, 17, 14, 11, 7, 5], mains_c: [8, 8, 9, 12, 15, 17, 18, 18, 17, 14, 11, 9]}
dwelling: {heat_loss_w_per_k: 0}
years: 1
`
	c, _, err := casefile.Load("base.yaml", []byte(text), nil)
	if err != nil {
		t.Fatal(err)
	}
	return c
}

const smallHomes = `id,compact_store.control.setpoint_c,cylinder.volume_l,title
one,58,210,=1+1
two,,180,
three,600,210,too hot
four,55,150,-5
five,60,250,a
`

func tableOf(t *testing.T, text string) *Table {
	t.Helper()
	table, err := Read("homes.csv", []byte(text))
	if err != nil {
		t.Fatal(err)
	}
	return table
}

func smallJob(t *testing.T, homes string) *Job {
	t.Helper()
	return &Job{Base: smallBase(t), Table: tableOf(t, homes), Part: Whole(), Version: "1", Program: "p", Workers: 2}
}

func newJournal(t *testing.T) *Journal {
	t.Helper()
	log, err := OpenJournal(filepath.Join(t.TempDir(), "journal"))
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() {
		if err := log.Close(); err != nil {
			t.Error(err)
		}
	})
	return log
}

// folder is a result folder in memory.
type folder map[string]*bytes.Buffer

type nopCloser struct{ io.Writer }

func (nopCloser) Close() error { return nil }

func (f folder) create(name string) (io.WriteCloser, error) {
	f[name] = &bytes.Buffer{}
	return nopCloser{f[name]}, nil
}

// written writes results into a folder.
func written(t *testing.T, head Summary, results iter.Seq2[Result, error]) (folder, Summary) {
	t.Helper()
	f := folder{}
	s, err := Write(f.create, head, results)
	if err != nil {
		t.Fatal(err)
	}
	return f, s
}

// done runs a job and writes its results.
func done(t *testing.T, j *Job, log *Journal) (folder, Summary) {
	t.Helper()
	if err := j.Run(t.Context(), log); err != nil {
		t.Fatal(err)
	}
	head, err := j.Head()
	if err != nil {
		t.Fatal(err)
	}
	return written(t, head, j.Results(log))
}

// same expects two folders to hold the same bytes.
func same(t *testing.T, what string, got, want folder) {
	t.Helper()
	if len(got) != len(want) {
		t.Errorf("%s: %d files, want %d", what, len(got), len(want))
	}
	for name := range want {
		if !bytes.Equal(got[name].Bytes(), want[name].Bytes()) {
			t.Errorf("%s: %s differs", what, name)
		}
	}
}

// source makes a part to be merged of a folder.
func (f folder) source(t *testing.T, name string) Source {
	t.Helper()
	s, err := ReadSummary(name, f[SummaryName].Bytes())
	if err != nil {
		t.Fatal(err)
	}
	return Source{Name: name, Summary: s, Rows: strings.NewReader(f[RowsName].String())}
}

// madeUp gives results of homes that nobody has simulated.
func madeUp(numbers ...int) iter.Seq2[Result, error] {
	return func(yield func(Result, error) bool) {
		for _, n := range numbers {
			values := make([]any, len(columns()))
			for i := range values {
				values[i] = float64(n)
			}
			values[0] = string(compare.RecommendEither)
			if !yield(Result{Number: n, ID: fmt.Sprint("home-", n), Inputs: []string{}, outcome: outcome{Values: values}}, nil) {
				return
			}
		}
	}
}
