package casefile

import _ "embed" // for the demo case

//go:embed demo.yaml
var demo string

// Demo gives the case of an invented home, as a file that refers to no other.
func Demo() []byte { return []byte(demo) }
