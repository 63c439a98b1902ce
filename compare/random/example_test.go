package random_test

import (
	"fmt"

	"dhwcompare/compare/random"
)

// The same key gives the same numbers wherever and whenever it is opened.
func ExampleStream() {
	monday := random.Stream(7, 0, 4, "draws")
	again := random.Stream(7, 0, 4, "draws")
	tuesday := random.Stream(7, 0, 5, "draws")

	first := monday.Float64()
	fmt.Println(first == again.Float64(), first == tuesday.Float64())
	// Output: true false
}
