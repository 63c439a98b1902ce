package casefile

import (
	"strings"
	"unicode/utf8"
)

// unknown says what is wrong with a key that the table does not have, and which
// one may be meant.
func unknown[T any](name, section string, fields []field[T]) string {
	if strings.Contains(name, "circulation") {
		return "is not known: secondary circulation is not modelled, so a home that has it cannot be judged here"
	}
	if strings.ContainsFunc(name, func(c rune) bool { return c >= utf8.RuneSelf }) {
		return "is not known: it holds letters or marks of another alphabet, some of which look like those of keys: type it anew, or leave it out"
	}
	if first := firstIn(section+name, fields); first != "" {
		return "is a group of keys: name one of them, such as " + first
	}
	if near := nearest(name, siblings(section, fields)); near != "" {
		return "is not known: did you mean " + near + "?"
	}
	if elsewhere := sameName(name, fields); len(elsewhere) > 0 {
		return "is not known here: did you mean " + strings.Join(elsewhere, " or ") + "?"
	}
	if near := nearest(name, lastNames(fields)); near != "" {
		return "is not known: did you mean " + strings.Join(sameName(near, fields), " or ") + "?"
	}
	const most = 12
	here := siblings(section, fields)
	if len(here) > most {
		return "is not known: leave it out; 'dhwcompare check' prints a sound case with every key there is"
	}
	return "is not known: leave it out; known here are " + strings.Join(here, ", ")
}

// firstIn gives the first key below a path; empty if there is none.
func firstIn[T any](path string, fields []field[T]) string {
	for i := range fields {
		if strings.HasPrefix(fields[i].Path, path+".") {
			return fields[i].Path
		}
	}
	return ""
}

// siblings lists the names that may stand in a section, sections among them.
func siblings[T any](section string, fields []field[T]) []string {
	var list []string
	for i := range fields {
		rest, inside := strings.CutPrefix(fields[i].Path, section)
		if !inside {
			continue
		}
		name, _, _ := strings.Cut(rest, ".")
		if len(list) == 0 || list[len(list)-1] != name {
			list = append(list, name)
		}
	}
	return list
}

func lastNames[T any](fields []field[T]) []string {
	list := make([]string, len(fields))
	for i := range fields {
		list[i] = fields[i].name()
	}
	return list
}

func sameName[T any](name string, fields []field[T]) []string {
	var paths []string
	for i := range fields {
		if fields[i].name() == name {
			paths = append(paths, fields[i].Path)
		}
	}
	return paths
}

// nearest finds the name that a slip of the pen may have turned into this one:
// few letters differ, or one is the other without its unit.
func nearest(name string, known []string) string {
	const longest = 60
	if len(name) > longest {
		return ""
	}
	name = strings.ToLower(strings.ReplaceAll(name, "-", "_"))
	best, least := "", max(1, len(name)/4)+1
	for _, k := range known {
		d := distance(name, k)
		if stem(name) == stem(k) || strings.HasPrefix(k, name+"_") {
			d = min(d, 1)
		}
		if d < least {
			best, least = k, d
		}
	}
	return best
}

// stem is a name without what may be its unit.
func stem(name string) string {
	first, rest, cut := strings.Cut(name, "_")
	second, _, _ := strings.Cut(rest, "_")
	if !cut {
		return name
	}
	if len(second) <= 2 {
		return first
	}
	return first + "_" + second
}

// distance counts the letters to add, drop, change or swap with a neighbour to
// make one name of the other.
func distance(a, b string) int {
	rows := [3][]int{make([]int, len(b)+1), make([]int, len(b)+1), make([]int, len(b)+1)}
	for j := range rows[1] {
		rows[1][j] = j
	}
	for i := 1; i <= len(a); i++ {
		before, last, now := rows[0], rows[1], rows[2]
		now[0] = i
		for j := 1; j <= len(b); j++ {
			change := 1
			if a[i-1] == b[j-1] {
				change = 0
			}
			now[j] = min(last[j]+1, now[j-1]+1, last[j-1]+change)
			if i > 1 && j > 1 && a[i-1] == b[j-2] && a[i-2] == b[j-1] {
				now[j] = min(now[j], before[j-2]+1)
			}
		}
		rows = [3][]int{last, now, before}
	}
	return rows[1][len(b)]
}
