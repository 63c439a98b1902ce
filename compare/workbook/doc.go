// Package workbook writes a comparison as an XLSX workbook that a consultant can
// hand over: every total, difference, share and cost is a live formula over the
// assumptions and the simulated energies, with its value stored beside it.
//
// A sheet is filled through three kinds of cell: text, simulated or stated
// numbers, and terms. A term carries a formula and its value together, made by
// the same operators, so that a stored value is never worked out apart from its
// formula. Sheets are filled in the order in which they depend on each other and
// stand in the order in which they are read.
package workbook
