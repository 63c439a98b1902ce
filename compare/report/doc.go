// Package report puts a comparison into words for the terminal, and writes it
// down as JSON. It computes nothing: every figure comes from the comparison.
package report
