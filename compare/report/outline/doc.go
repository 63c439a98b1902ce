// Package outline says what a report says, before it takes a form: parts with
// headings, texts, tables and pictures. HTML and Markdown are both made from it, so
// that nothing is said twice. It computes nothing: every figure comes from the
// comparison. Every text in it is plain and holds no markup; a form must write it so
// that it cannot become any.
package outline
