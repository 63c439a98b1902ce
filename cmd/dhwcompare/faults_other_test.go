//go:build unix && !linux

package main

import "testing"

// faultsOfSystem lists the faults that this system can be made to have.
func faultsOfSystem() map[string]func(*testing.T, *victim) { return nil }
