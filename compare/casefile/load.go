package casefile

import (
	"slices"

	"dhwcompare/compare"
)

// Load reads a case file, and through open the files that it refers to; name is
// how messages call it. Whatever is wrong with the case and its files comes back
// at once, as Problems. The inputs are those of Inputs.
func Load(name string, data []byte, open Opener) (*compare.Case, []compare.Input, error) {
	r := newReader(name)
	c := compare.Default()
	if root := r.parse(data); root != nil {
		fields := table()
		readMapping(r, mapping[compare.Case]{node: root}, &c, fields)
		r.missing("", position{1, 1}, requiredKeys(fields))
		r.attach(&c, open)
		r.check(&c, fields)
	}
	if err := r.err(); err != nil {
		return nil, nil, err
	}
	return &c, Inputs(&c), nil
}

// Check judges what the values of a case mean together, such as a setpoint that
// the heat pump cannot reach; the error is Problems without a place in a file.
// Load has done so already; it is for a case that was changed since.
func Check(c *compare.Case) error {
	r := newReader("")
	fields := table()
	standard := compare.Default()
	for i := range fields {
		f := &fields[i]
		if v := f.bind(c); !v.derived() && v.yaml("") != f.bind(&standard).yaml("") {
			r.stands[f.Path] = position{}
		}
	}
	r.check(c, fields)
	return r.err()
}

// check looks for contradictions.
func (r *reader) check(c *compare.Case, fields []field[compare.Case]) {
	checkIdle(r, "", c, fields)
	r.unread(c)
	for _, check := range []func(*reader, *compare.Case){
		checkHousehold, checkDays, checkClimate, checkDwelling, checkHeatPump, checkStore, checkCylinder, checkTariffs, checkParts,
	} {
		check(r, c)
	}
}

// checkIdle refuses stated keys that play no part: whoever states one expects that
// it matters.
func checkIdle[T any](r *reader, base string, t *T, fields []field[T]) {
	for i := range fields {
		f := &fields[i]
		path := base + f.Path
		if reason := f.why(t); reason != "" {
			if at, is := r.stands[path]; is && !r.bad[path] {
				r.add(at, path, "is stated but plays no part, as "+reason+": leave one of the two out")
			}
		}
	}
}

// clash notes that the values of some keys contradict each other, at the first of
// them that is stated. A key with a problem of its own is left out of account.
func (r *reader) clash(text string, keys ...string) {
	if slices.ContainsFunc(keys, func(k string) bool { return r.bad[k] }) {
		return
	}
	r.add(r.where(keys...), keys[0], text)
}

// where gives the place of the first of some keys that is stated, else of the
// section of the first, else the beginning of the file.
func (r *reader) where(keys ...string) position {
	for _, k := range keys {
		if at, is := r.stands[k]; is {
			return at
		}
	}
	for path := (&Key{Path: keys[0]}).section(); path != ""; path = (&Key{Path: path}).section() {
		if at, is := r.stands[path]; is {
			return at
		}
	}
	if r.file == "" {
		return position{}
	}
	return position{1, 1}
}
