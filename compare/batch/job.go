package batch

import (
	"context"
	"iter"
	"strings"

	"dhwcompare/compare"
	"dhwcompare/compare/casefile"
	"dhwcompare/compare/datafile"
)

// Job is a share of a table on a base case.
type Job struct {
	Base    *compare.Case
	Table   *Table
	Part    Part
	Open    casefile.Opener // reads what a row refers to
	Version string          // of the program, shown with the results
	Program string          // identifies its build: finished rows of another are not taken over
	Workers int
	// Progress is told of finished homes; it may be nil.
	Progress compare.Progress

	base  string
	files map[string]string // digests of what rows refer to, by name
}

// prepare works out what rows are identified by.
func (j *Job) prepare() (err error) {
	j.base, err = j.Base.Digest()
	j.files = map[string]string{}
	return err
}

// key identifies a row. Whoever replaces a file that the row refers to gets it
// anew.
func (j *Job) key(r *Row) string {
	var more []string
	for i, key := range j.Table.Keys {
		if strings.HasSuffix(key, fileSuffix) && r.Values[i] != "" {
			more = append(more, j.digestOf(r.Values[i]))
		}
	}
	return j.Table.rowKey(r, j.Program, j.base, more)
}

// fileSuffix ends the keys that refer to files.
const fileSuffix = "file"

func (j *Job) digestOf(name string) string {
	digest, known := j.files[name]
	if !known && j.Open != nil {
		if data, err := j.Open(name); err == nil {
			digest = datafile.Digest(data)
		}
		j.files[name] = digest
	}
	return digest
}

// rows lists the rows of the share.
func (j *Job) rows() []*Row {
	var list []*Row
	for i := range j.Table.Rows {
		if r := &j.Table.Rows[i]; j.Part.Has(r.ID) {
			list = append(list, r)
		}
	}
	return list
}

// Run compares every home of the share that the journal lacks. It stops at the end
// of the context, with what is finished in the journal; a home that fails does not
// stop it.
func (j *Job) Run(ctx context.Context, log *Journal) error {
	if err := j.prepare(); err != nil {
		return err
	}
	all := j.rows()
	var missing []keyedRow
	for _, r := range all {
		if key := j.key(r); !log.has(key) {
			missing = append(missing, keyedRow{r, key})
		}
	}
	q := &shift{job: j, log: log, rows: missing, done: len(all) - len(missing), of: len(all)}
	q.tell()
	return q.work(ctx)
}

// Results gives the results of the share in the order of the table, after Run.
func (j *Job) Results(log *Journal) iter.Seq2[Result, error] {
	return func(yield func(Result, error) bool) {
		for _, r := range j.rows() {
			o, err := log.get(j.key(r))
			if !yield(Result{Number: r.Number, ID: r.ID, Inputs: r.Values, outcome: o}, err) || err != nil {
				return
			}
		}
	}
}

// Head describes the results of the share.
func (j *Job) Head() (Summary, error) {
	base, err := j.Base.Digest()
	s := Summary{
		Schema: Schema, Version: j.Version, BaseDigest: base, TableDigest: j.Table.Digest(), Seed: j.Base.Seed, Years: j.Base.Years,
		Homes: len(j.Table.Rows), Keys: j.Table.Keys, Columns: columnNames(),
	}
	if s.Keys == nil {
		s.Keys = []string{}
	}
	if j.Part != Whole() {
		s.Part = &j.Part
	}
	return s, err
}
