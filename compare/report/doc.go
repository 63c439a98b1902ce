// Package report puts a comparison into words: for the terminal, as JSON, as a page
// and as Markdown. It computes nothing: every figure comes from the comparison.
package report
