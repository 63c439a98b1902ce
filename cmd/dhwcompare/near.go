package main

import "strings"

// nearest gives the name that somebody who wrote word most likely meant, or "".
// Of equals the first wins.
func nearest(word string, names []string) string {
	const farthest = 2 // slips of the finger
	best, bestSlips := "", farthest+1
	for _, name := range names {
		n := slips(word, name)
		if strings.HasPrefix(word, name) || strings.HasPrefix(name, word) {
			n = min(n, 1)
		}
		if n < bestSlips {
			best, bestSlips = name, n
		}
	}
	return best
}

// slips counts the letters to be changed, added or left out to turn one word into
// another.
func slips(a, b string) int {
	row := make([]int, len(b)+1)
	for j := range row {
		row[j] = j
	}
	for i := range len(a) {
		diagonal := row[0]
		row[0] = i + 1
		for j := range len(b) {
			cost := diagonal
			if a[i] != b[j] {
				cost++
			}
			diagonal = row[j+1]
			row[j+1] = min(cost, row[j]+1, diagonal+1)
		}
	}
	return row[len(b)]
}
