package batch

import (
	"context"
	"encoding/csv"
	"errors"
	"path/filepath"
	"slices"
	"strings"
	"sync/atomic"
	"testing"

	"dhwcompare/compare"
	"dhwcompare/compare/casefile"
)

// TestWholeAndParts compares one run with one of another number of workers, with
// four parts that are merged, and with one that was stopped and taken up again.
func TestWholeAndParts(t *testing.T) {
	job := smallJob(t, smallHomes)
	job.Workers = 1
	whole, sum := done(t, job, newJournal(t))
	if sum.Tally.Homes != 5 || sum.Tally.Failed != 1 {
		t.Errorf("tally %+v", sum.Tally)
	}
	t.Run("three workers", func(t *testing.T) {
		job := smallJob(t, smallHomes)
		job.Workers = 3
		got, _ := done(t, job, newJournal(t))
		same(t, "three workers", got, whole)
	})
	t.Run("four parts", func(t *testing.T) {
		var sources []Source
		for i := range 4 {
			job := smallJob(t, smallHomes)
			job.Part = Part{i + 1, 4}
			f, _ := done(t, job, newJournal(t))
			sources = append(sources, f.source(t, job.Part.String()))
		}
		slices.Reverse(sources)
		head, results, err := Merge(sources)
		if err != nil {
			t.Fatal(err)
		}
		got, _ := written(t, head, results)
		same(t, "merged", got, whole)
	})
	t.Run("stopped", func(t *testing.T) { stopAndGoOn(t, whole) })
	t.Run("one home alone", func(t *testing.T) { sameAsDecided(t, whole) })
}

// stopAndGoOn stops a job after two homes and lets another one finish it.
func stopAndGoOn(t *testing.T, whole folder) {
	log := newJournal(t)
	ctx, cancel := context.WithCancel(t.Context())
	job := smallJob(t, smallHomes)
	job.Workers = 1
	job.Progress = func(done, _ int) {
		if done == 2 {
			cancel()
		}
	}
	if err := job.Run(ctx, log); !errors.Is(err, context.Canceled) {
		t.Fatalf("stopped with %v", err)
	}
	var steps atomic.Int32
	job = smallJob(t, smallHomes)
	job.Progress = func(done, of int) {
		if steps.Add(1) == 1 && (done != 2 || of != 5) {
			t.Errorf("begins at %d of %d, want 2 of 5", done, of)
		}
	}
	got, _ := done(t, job, log)
	same(t, "taken up again", got, whole)
	if n := steps.Load(); n != 4 {
		t.Errorf("%d steps, want 4: the beginning and three homes", n)
	}
}

// TestFailedHomesAreTriedAgain reopens the journal of a job with the table in
// another order: the reasons name the lines of now.
func TestFailedHomesAreTriedAgain(t *testing.T) {
	path := filepath.Join(t.TempDir(), "journal")
	for _, homes := range []string{"id,household.people\nbad,40\n", "id,household.people\nworse,0\nbad,40\n"} {
		log, err := OpenJournal(path)
		if err != nil {
			t.Fatal(err)
		}
		f, _ := done(t, smallJob(t, homes), log)
		if err := log.Close(); err != nil {
			t.Fatal(err)
		}
		again, _ := done(t, smallJob(t, homes), newJournal(t))
		same(t, "tried again", f, again)
	}
}

// sameAsDecided holds a row against the comparison of the same case.
func sameAsDecided(t *testing.T, whole folder) {
	c := smallBase(t)
	if err := casefile.Set(c, "cylinder.volume_l", "180"); err != nil {
		t.Fatal(err)
	}
	cmp, _, err := compare.Decide(t.Context(), c, 1, nil)
	if err != nil {
		t.Fatal(err)
	}
	records, err := csv.NewReader(strings.NewReader(whole[CSVName].String())).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	var want []string
	for _, v := range valuesOf(cmp) {
		want = append(want, csvText(v))
	}
	if got := records[2][4 : len(records[2])-1]; !slices.Equal(got, want) {
		t.Errorf("row of home two:\n%q\nits comparison:\n%q", got, want)
	}
}

// TestFailuresStandBesideTheRow names every way in which one home can fail.
func TestFailuresStandBesideTheRow(t *testing.T) {
	job := smallJob(t, `id,household.people,cylinder.control.setpoint_c,tariffs[9].rate_per_kwh
many,40,,
word,2,warm,
both,x,y,
clash,2,66,
list,2,,0.2
fine,2,,
`)
	_, sum := done(t, job, newJournal(t))
	if sum.Tally.Homes != 6 || sum.Tally.Failed != 5 {
		t.Errorf("tally %+v", sum.Tally)
	}
	log := newJournal(t)
	if err := job.Run(t.Context(), log); err != nil {
		t.Fatal(err)
	}
	want := map[string][]string{
		"many":  {"homes.csv:2: column 2: household.people is 40, allowed 1 to 12"},
		"word":  {"homes.csv:3: column 3: cylinder.control.setpoint_c"},
		"both":  {"homes.csv:4: column 2: household.people", "; homes.csv:4: column 3: cylinder.control.setpoint_c"},
		"clash": {"homes.csv:5: column 3: cylinder.control.setpoint_c is 66 °C"},
		"list":  {"homes.csv:6: column 4: tariffs has 2 items"},
		"fine":  nil,
	}
	for r, err := range job.Results(log) {
		if err != nil {
			t.Fatal(err)
		}
		if (r.Error == "") != (want[r.ID] == nil) || (r.Error == "") != (len(r.Values) == len(columns())) {
			t.Errorf("%s: error %q with %d values", r.ID, r.Error, len(r.Values))
		}
		for _, text := range want[r.ID] {
			if !strings.Contains(r.Error, text) {
				t.Errorf("%s: error %q lacks %q", r.ID, r.Error, text)
			}
		}
	}
}

// TestRowsOfAnotherMakingAreNotTakenOver changes one thing after the other that a
// result depends on.
func TestRowsOfAnotherMakingAreNotTakenOver(t *testing.T) {
	first := smallJob(t, "id,cylinder.volume_l\na,180\n")
	log := newJournal(t)
	if err := first.Run(t.Context(), log); err != nil {
		t.Fatal(err)
	}
	for name, change := range map[string]func(*Job){
		"another build": func(j *Job) { j.Program = "q" },
		"another base":  func(j *Job) { j.Base.Household.People = 3 },
		"another value": func(j *Job) { j.Table.Rows[0].Values[0] = "181" },
		"another key":   func(j *Job) { j.Table.Keys[0] = "compact_store.volume_l" },
		"another id":    func(j *Job) { j.Table.Rows[0].ID = "b" },
	} {
		t.Run(name, func(t *testing.T) {
			j := smallJob(t, "id,cylinder.volume_l\na,180\n")
			change(j)
			if err := j.prepare(); err != nil {
				t.Fatal(err)
			}
			if log.has(j.key(&j.Table.Rows[0])) {
				t.Error("taken over")
			}
		})
	}
	j := smallJob(t, "id,cylinder.volume_l\nnew,200\na,180\n")
	if err := j.prepare(); err != nil {
		t.Fatal(err)
	}
	if !log.has(j.key(&j.Table.Rows[1])) {
		t.Error("a row that moved in the table is not taken over")
	}
}

// TestFilesOfRowsCount gives a row that refers to a file another key when the file
// changes.
func TestFilesOfRowsCount(t *testing.T) {
	keyWith := func(data string) string {
		j := smallJob(t, "id,climate.weather_file\na,w.epw\n")
		j.Open = func(string) ([]byte, error) { return []byte(data), nil }
		if err := j.prepare(); err != nil {
			t.Fatal(err)
		}
		return j.key(&j.Table.Rows[0])
	}
	first := keyWith("one")
	if first == keyWith("two") || first != keyWith("one") {
		t.Error("the key does not follow the file")
	}
}
