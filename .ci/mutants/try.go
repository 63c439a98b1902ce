package main

import (
	"bytes"
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"hash/fnv"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"time"
)

// trial says how changes are tried.
type trial struct {
	work   string // folder for changed files
	sample int
	seed   uint64
	limit  time.Duration // for the tests of a change, see measure
}

// outcome is what came of a change.
type outcome int

const (
	noticed  outcome = iota
	endless          // the tests did not end in time, which counts as noticed
	survived         // every test passed
	refused          // it does not compile: no change at all
)

// tally counts outcomes.
type tally struct{ noticed, survived, argued, refused int }

func (t *tally) add(o tally) {
	t.noticed += o.noticed
	t.survived += o.survived
	t.argued += o.argued
	t.refused += o.refused
}

// share is that of the changes noticed among all that compile.
func (t tally) share() float64 {
	return float64(t.noticed) / float64(max(t.noticed+t.survived+t.argued, 1))
}

// String gives the counts on one line.
func (t tally) String() string {
	return fmt.Sprintf("%d changes, %d noticed (%.0f %%), %d survived, %d survived with a reason; %d others did not compile",
		t.noticed+t.survived+t.argued, t.noticed, 100*t.share(), t.survived, t.argued, t.refused)
}

// try makes a sample of changes in a package.
func try(ctx context.Context, s suite, with trial) (tally, error) {
	list, err := mutantsOf(filepath.Clean(s.changed))
	if err != nil {
		return tally{}, err
	}
	if len(list) == 0 {
		return tally{}, fmt.Errorf("%s holds nothing to change", s.changed)
	}
	if err := with.measure(ctx, list[0], s.tests); err != nil {
		return tally{}, err
	}
	t := tally{}
	h := fnv.New64a()
	h.Write([]byte(s.changed))
	for _, i := range rand.New(rand.NewPCG(with.seed, h.Sum64())).Perm(len(list)) {
		if with.sample > 0 && t.noticed+t.survived+t.argued == with.sample {
			break
		}
		o, err := with.one(ctx, list[i], s.tests)
		if err != nil {
			return t, err
		}
		t.count(o, list[i])
	}
	return t, nil
}

// measure runs the tests with a file as it is. They have to pass, and a change may
// take five times as long: beyond that its tests count as endless.
func (with *trial) measure(ctx context.Context, m *mutant, tests string) error {
	const most, patience, least = time.Hour, 5, 30 * time.Second
	same := *m
	same.by = string(m.source[m.from:m.to])
	with.limit = most
	began := time.Now()
	switch o, err := with.one(ctx, &same, tests); {
	case err != nil:
		return err
	case o != survived:
		return fmt.Errorf("the tests of %s fail without any change: run them first", tests)
	}
	with.limit = patience*time.Since(began) + least
	return nil
}

// count prints what came of a change, and counts it.
func (t *tally) count(o outcome, m *mutant) {
	switch {
	case o == refused:
		t.refused++
	case o == noticed:
		t.noticed++
		fmt.Printf("noticed   %v\n", m)
	case o == endless:
		t.noticed++
		fmt.Printf("endless   %v\n", m)
	default:
		if why := argument(m); why != "" {
			t.argued++
			fmt.Printf("survived  %v\n          %s\n", m, why)
			return
		}
		t.survived++
		fmt.Printf("SURVIVED  %v\n", m)
	}
}

// one makes one change and runs the tests.
func (with trial) one(ctx context.Context, m *mutant, tests string) (outcome, error) {
	overlay, err := with.overlay(m)
	if err != nil {
		return 0, err
	}
	args := []string{"test", "-short", "-failfast", "-vet=off", "-count=1", "-overlay", overlay, "-timeout", with.limit.String(), tests}
	if more, err := rapidFlags(tests); err != nil {
		return 0, err
	} else {
		args = append(args, more...)
	}
	const grace = time.Minute // to compile
	limited, cancel := context.WithTimeout(ctx, with.limit+grace)
	defer cancel()
	output, err := exec.CommandContext(limited, "go", args...).CombinedOutput()
	var failed *exec.ExitError
	switch {
	case ctx.Err() != nil:
		return 0, ctx.Err()
	case err == nil:
		return survived, nil
	case limited.Err() != nil || bytes.Contains(output, []byte("panic: test timed out")):
		return endless, nil
	case !errors.As(err, &failed):
		return 0, err
	case bytes.Contains(output, []byte("[build failed]")) || bytes.Contains(output, []byte("[setup failed]")):
		return refused, nil
	default:
		return noticed, nil
	}
}

// overlay writes the changed file and the list that shows it to the go command.
func (with trial) overlay(m *mutant) (string, error) {
	changed := filepath.Join(with.work, "changed.go")
	if err := os.WriteFile(changed, m.changed(), 0o600); err != nil {
		return "", err
	}
	original, err := filepath.Abs(m.file)
	if err != nil {
		return "", err
	}
	list, err := json.Marshal(map[string]map[string]string{"Replace": {original: changed}})
	if err != nil {
		return "", err
	}
	path := filepath.Join(with.work, "overlay.json")
	return path, os.WriteFile(path, list, 0o600)
}

// rapidFlags gives the flags for a package with property tests: always the same
// values, no time spent on making a failing case small, and no file of it left
// behind.
func rapidFlags(tests string) ([]string, error) {
	const format = `{{join .TestImports " "}} {{join .XTestImports " "}}`
	imports, err := exec.Command("go", "list", "-f", format, tests).Output()
	if err != nil || !strings.Contains(string(imports), "pgregory.net/rapid") {
		return nil, err
	}
	return []string{"-rapid.seed=1", "-rapid.shrinktime=0s", "-rapid.nofailfile"}, nil
}
