package casefile

import (
	"math"
	"strconv"

	"dhwcompare/compare"
)

// number is a key that is a number in a range.
func number[T any](path, unit string, low, high float64, at func(*T) *float64, source, help string) field[T] {
	return field[T]{
		Key:  Key{Path: path, Unit: unit, Min: low, Max: high, Form: "a number", Source: source, Help: help},
		bind: func(t *T) value { return numberValue{at: at(t)} },
	}
}

type numberValue struct {
	stated
	at *float64
}

func (v numberValue) read(r *reader, p place) {
	if x, ok := r.number(p); ok {
		*v.at = x
	}
}

func (v numberValue) yaml(string) string { return plain(*v.at) }

// auto is a key that follows from others unless it is stated.
func auto[T any](path, unit string, low, high float64, at func(*T) *compare.Auto, follow func(*T) float64, from []string, source, help string) field[T] {
	f := number[T](path, unit, low, high, nil, source, help)
	f.From = from
	f.bind = func(t *T) value { return autoValue{at: at(t), follow: func() float64 { return follow(t) }} }
	return f
}

type autoValue struct {
	at     *compare.Auto
	follow func() float64
}

func (v autoValue) read(r *reader, p place) {
	if x, ok := r.number(p); ok {
		*v.at = &x
	}
}

func (v autoValue) yaml(string) string {
	if v.derived() {
		return rounded(v.number())
	}
	return plain(v.number())
}

func (v autoValue) number() float64 {
	if *v.at != nil {
		return **v.at
	}
	return v.follow()
}

func (v autoValue) derived() bool { return *v.at == nil }

// count is a key that is a whole number in a range.
func count[T any](path string, low, high float64, at func(*T) *int, source, help string) field[T] {
	f := number[T](path, "", low, high, nil, source, help)
	f.Form = "a whole number"
	f.bind = func(t *T) value { return countValue{at: at(t)} }
	return f
}

type countValue struct {
	stated
	at *int
}

func (v countValue) read(r *reader, p place) {
	if x, ok := r.whole(p); ok {
		*v.at = int(x)
	}
}

func (v countValue) yaml(string) string { return strconv.Itoa(*v.at) }

// seedValue is a whole number that every reader of JSON keeps exactly.
type seedValue struct {
	stated
	at *uint64
}

const largestSeed = 1<<53 - 1

func (v seedValue) read(r *reader, p place) {
	if x, ok := r.whole(p); ok {
		*v.at = uint64(x)
	}
}

func (v seedValue) yaml(string) string { return strconv.FormatUint(*v.at, 10) }

// plain writes the shortest number that reads back as the same.
func plain(x float64) string {
	const smallest, largest = 1e-6, 1e16 // outside, digits are no easier to read than a power
	if a := math.Abs(x); a != 0 && (a < smallest || a >= largest) {
		return strconv.FormatFloat(x, 'e', -1, 64)
	}
	return strconv.FormatFloat(x, 'f', -1, 64)
}

// rounded writes a derived number to four digits: it is there to be read only.
func rounded(x float64) string {
	const digits = 4
	short, err := strconv.ParseFloat(strconv.FormatFloat(x, 'e', digits-1, 64), 64)
	if err != nil {
		return plain(x)
	}
	return plain(short)
}
