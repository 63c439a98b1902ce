package main

import (
	"context"
	"errors"
	"fmt"
	"syscall"

	"dhwcompare/compare/batch"
	"dhwcompare/compare/casefile"
	"dhwcompare/compare/report"
)

// Exit codes.
const (
	exitDone        = 0
	exitFailure     = 1 // the machine, or a folder that may not be written
	exitUsage       = 2 // what the user asked for makes no sense
	exitInterrupted = 130
)

// usageError is a mistake on the command line.
type usageError struct{ what, hint string }

// Error gives the mistake and the hint, a line each.
func (e *usageError) Error() string { return e.what + "\nhint: " + e.hint }

// exit tells the user about an error, if there is one, and gives the exit code.
// No other place decides on either.
func (p *program) exit(ctx context.Context, err error) int {
	code := exitCode(ctx, err)
	switch code {
	case exitDone:
		return code
	case exitInterrupted:
		var paused *pausedError
		if !errors.As(err, &paused) {
			err = errors.New("interrupted; nothing was changed")
		}
	}
	fmt.Fprintln(p.stderr, report.PlainLines(message(err)))
	return code
}

// message puts an error for people. Problems of a case file or a table begin with
// their place, so that editors find it.
func message(err error) string {
	var bad casefile.Problems
	if errors.As(err, &bad) {
		return bad.Error()
	}
	var table batch.Problems
	if errors.As(err, &table) {
		return table.Error()
	}
	return "dhwcompare: " + err.Error()
}

func exitCode(ctx context.Context, err error) int {
	var usage *usageError
	var bad casefile.Problems
	var table batch.Problems
	switch {
	case err == nil:
		return exitDone
	case errors.Is(err, syscall.EPIPE):
		return exitDone // whoever reads our output has seen enough
	case ctx.Err() != nil:
		return exitInterrupted
	case errors.As(err, &usage), errors.As(err, &bad), errors.As(err, &table):
		return exitUsage
	default:
		return exitFailure
	}
}
