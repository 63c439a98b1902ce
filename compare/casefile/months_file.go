package casefile

// fileMonths lets a key with a number for each month follow from a file once that
// was read; why says where from.
func (f field[T]) fileMonths(from, why string, read func(*T) bool) field[T] {
	f.From, f.FromSource = []string{from}, why
	bind := f.bind
	f.bind = func(t *T) value {
		return fileMonthsValue{bind(t).(monthsValue), read(t)}
	}
	return f
}

type fileMonthsValue struct {
	monthsValue
	fromFile bool
}

func (v fileMonthsValue) derived() bool { return v.fromFile }

func (v fileMonthsValue) yaml(indent string) string {
	if v.fromFile {
		return flowMonths(*v.at, rounded)
	}
	return v.monthsValue.yaml(indent)
}

// read refuses to set what a file gives: it would change nothing.
func (v fileMonthsValue) read(r *reader, p place) {
	if v.fromFile {
		r.say(p, "follows from a file and cannot be set: name another file, or make a case without one")
		return
	}
	v.monthsValue.read(r, p)
}
