// Package water gives the properties of liquid water at atmospheric pressure
// and the mixing of hot and cold water at an outlet.
//
// Temperatures are in degrees Celsius throughout. The properties hold from 0
// to 100 C; an argument outside that range is moved to its nearer end, so a
// property is always finite and positive (the expansion coefficient excepted,
// which is negative below 4 C because water is densest there).
package water
