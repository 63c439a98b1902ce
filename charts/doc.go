// Package charts draws a comparison: one picture for each thing worth seeing,
// as PNG and as SVG, with a title that says what is seen and a text for those
// who cannot see it. It returns bytes and writes no files.
//
// Both options keep their colour and their place in every picture. The colours
// differ in lightness as well as in hue, so that they stay apart in a grey print
// and for eyes that do not tell red from green; what fails is marked by a shape.
package charts
