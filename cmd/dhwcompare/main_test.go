package main

import (
	"testing"

	"github.com/rogpeppe/go-internal/testscript"
)

// TestMain makes the program itself available to the tests as a command.
func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){"dhwcompare": main})
}
