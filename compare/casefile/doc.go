// Package casefile reads and writes case files: YAML in, a compare.Case out, and
// back again without loss.
//
// One table of keys is behind everything: what may stand in a file and in which
// range, the messages about what may not, the filled-in case, the case to start
// from, and the list of inputs. A key names its unit. Whatever is wrong with a
// file is reported at once, each problem with its line, its key, what was seen,
// what is allowed and what to do.
//
// YAML's conveniences are refused where they can hide a slip: references,
// merges, tags, empty values, quoted numbers, numbers that are not plainly
// decimal, and words other than true and false for switches.
package casefile
