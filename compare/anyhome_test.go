package compare_test

import (
	"errors"
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"dhwcompare/compare"
	"dhwcompare/compare/calendar"
	"dhwcompare/compare/casefile"
)

// tape is a string of bytes with which a home is put together. Beyond its end there
// are zeros.
type tape struct{ left []byte }

func (t *tape) next() byte {
	if len(t.left) == 0 {
		return 0
	}
	b := t.left[0]
	t.left = t.left[1:]
	return b
}

// upTo gives a number from 0 to n-1, for n up to 65,536.
func (t *tape) upTo(n int) int { return (int(t.next())<<8 + int(t.next())) % n }

// within gives a number of a range, both of its ends among them.
func (t *tape) within(low, high float64) float64 {
	return low + (high-low)*float64(t.next())/math.MaxUint8
}

// physical are the sections of a case that a simulation depends on.
func physical() []string {
	return []string{"household.", "mains.", "climate.", "dwelling.", "heat_pump.", "pipes.", "compact_store.", "cylinder."}
}

// homeKeys lists the keys that tape.value can give a value to, but for the sizes of
// boxes.
func homeKeys() []casefile.Key {
	return slices.DeleteFunc(casefile.Keys(), func(k casefile.Key) bool {
		ours := slices.ContainsFunc(physical(), func(section string) bool { return strings.HasPrefix(k.Path, section) })
		return !ours || strings.HasSuffix(k.Path, "_mm") || (&tape{}).value(&k) == ""
	})
}

// value gives a legal value of a key as it would stand in a file; nothing for a key
// of another kind.
func (t *tape) value(k *casefile.Key) string {
	_, name, _ := strings.Cut(k.Path[strings.LastIndexByte(k.Path, '.'):], ".")
	switch {
	case len(k.Choices) > 0:
		return k.Choices[t.upTo(len(k.Choices))]
	case k.Form == "true or false":
		return fmt.Sprint(t.next()%2 == 1)
	case k.Form == "a whole number":
		return fmt.Sprint(math.Round(t.within(k.Min, k.Max)))
	case k.Form == "a number" && k.Zero != "" && t.next() < math.MaxUint8/4:
		return "0"
	case k.Form == "a number":
		return fmt.Sprint(t.within(k.Min, k.Max))
	case k.Max > k.Min:
		return t.months(k.Min, k.Max)
	case name == "start":
		return t.clock()
	case name == "windows":
		return fmt.Sprintf("[%q]", t.hours())
	case name == "raised":
		return fmt.Sprintf("[{hours: %q, setpoint_c: %g}]", t.hours(), t.within(35, 75))
	default:
		return ""
	}
}

// months gives twelve numbers that swing once a year.
func (t *tape) months(low, high float64) string {
	mean := t.within(low, high)
	swing := t.within(-1, 1) * min(mean-low, high-mean)
	var list []string
	for m := range calendar.MonthsInAYear {
		list = append(list, fmt.Sprint(mean+swing*math.Cos(2*math.Pi*float64(m)/calendar.MonthsInAYear)))
	}
	return "[" + strings.Join(list, ",") + "]"
}

func (t *tape) clock() string { return fmt.Sprintf("%02d:%02d", t.upTo(24), t.upTo(60)) }

// hours gives a stretch of the day.
func (t *tape) hours() string {
	const minutesADay, shortest, longest = 24 * 60, 30, 23 * 60
	from := t.upTo(minutesADay)
	to := (from + shortest + t.upTo(longest-shortest)) % minutesADay
	if to == 0 {
		to = 24 * 60 // midnight at the end
	}
	return fmt.Sprintf("%02d:%02d-%02d:%02d", from/60, from%60, to/60, to%60)
}

// home gives a home with up to some forty of its values changed, each anywhere in
// its legal range, and what they are; no home if they contradict each other.
func (t *tape) home(base *compare.Case, keys []casefile.Key) (*compare.Case, map[string]string) {
	const most = 40
	stated := map[string]string{}
	for i := 0; i < most && len(t.left) > 0; i++ {
		k := &keys[t.upTo(len(keys))]
		stated[k.Path] = t.value(k)
	}
	for {
		c, err := homeWith(base, keys, stated)
		var problems casefile.Problems
		if !errors.As(err, &problems) {
			return c, stated
		}
		if !withdraw(stated, problems) {
			return nil, nil
		}
	}
}

// homeWith changes a home and lets the case file judge it.
func homeWith(base *compare.Case, keys []casefile.Key, stated map[string]string) (*compare.Case, error) {
	c := *base
	for _, k := range keys {
		text, is := stated[k.Path]
		if !is {
			continue
		}
		if err := casefile.Set(&c, k.Path, text); err != nil {
			panic(fmt.Sprintf("%s is refused of %s's own range: %v", text, k.Path, err))
		}
	}
	return &c, casefile.Check(&c)
}

// withdraw takes back the values that problems speak of, and reports whether there
// were any.
func withdraw(stated map[string]string, problems casefile.Problems) bool {
	before, text := len(stated), problems.Error()
	for path := range stated {
		if strings.Contains(text, path) {
			delete(stated, path)
		}
	}
	return len(stated) < before
}

// fullHome is where every home of these tests starts from: it has all that a home can
// have, so that hardly a key plays no part.
func fullHome(t testing.TB) *compare.Case {
	t.Helper()
	const text = `
household: {people: 3, turn_down_share: 0.8, patience_min: 5}
climate: {outdoor_c: [2, 3, 5, 8, 12, 15, 17, 17, 14, 11, 7, 4], mains_c: [8, 8, 9, 12, 15, 17, 18, 18, 17, 14, 11, 9]}
heat_pump: {valve_travel_s: 15, pump_overrun_s: 120, priority_min: 120}
compact_store: {immersion: {power_kw: 3, height_share: 0.4, boost_below_c: 40}, hygiene: {every_days: 1}}
cylinder: {immersion: {power_kw: 3, height_share: 0.4, boost_below_c: 40}, hygiene: {every_days: 1}}
`
	c, _, err := casefile.Load("full.yaml", []byte(text), nil)
	if err != nil {
		t.Fatal(err)
	}
	return c
}
