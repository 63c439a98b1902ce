// Command mutants tries the tests: it changes one thing at a time in the code of a
// package, such as a comparison, a sign or a statement, and runs the tests of the
// package. A change that no test notices is printed as it would stand in the code.
//
//	go run ./.ci/mutants                        every package below, a sample of each
//	go run ./.ci/mutants -sample 5 ./tariffs    five changes of one package
//
// The working tree is not touched: the go command is shown the changed file in place
// of the real one. The same code and seed give the same sample. It exits with 1 if
// too many changes go unnoticed.
package main

import (
	"context"
	"flag"
	"fmt"
	"os"
	"os/signal"
)

// suite is a package to be changed and the packages whose short tests have to notice,
// its own first.
type suite struct{ changed, tests string }

func suites() []suite {
	return []suite{
		{"./tariffs", "./tariffs"},
		{"./compare/heatpump", "./compare/heatpump"},
		{"./compare/vessel", "./compare/vessel"},
		{"./compare/plant", "./compare/plant"},
	}
}

func main() {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	defer stop()
	if err := run(ctx, os.Args[1:]); err != nil {
		fmt.Fprintln(os.Stderr, "mutants:", err)
		os.Exit(1)
	}
}

func run(ctx context.Context, args []string) error {
	flags := flag.NewFlagSet("mutants", flag.ContinueOnError)
	sample := flags.Int("sample", 25, "changes to try in each package; 0 for all")
	seed := flags.Uint64("seed", 1, "seed of the sample")
	least := flags.Float64("least", 0.85, "share of the changes that have to be noticed")
	if err := flags.Parse(args); err != nil {
		return err
	}
	work, err := os.MkdirTemp("", "mutants")
	if err != nil {
		return err
	}
	defer os.RemoveAll(work)
	all := tally{}
	for _, s := range chosen(flags.Args()) {
		t, err := try(ctx, s, trial{work: work, sample: *sample, seed: *seed})
		if err != nil {
			return err
		}
		fmt.Printf("%s: %v\n\n", s.changed, t)
		all.add(t)
	}
	fmt.Printf("all: %v\n", all)
	if all.share() < *least {
		return fmt.Errorf("%.0f %% noticed, at least %.0f %% asked: add tests for the changes above", 100*all.share(), 100**least)
	}
	return nil
}

// chosen gives the suites of the packages named, or all.
func chosen(names []string) (list []suite) {
	known := map[string]suite{}
	for _, s := range suites() {
		known[s.changed] = s
	}
	if len(names) == 0 {
		return suites()
	}
	for _, name := range names {
		s, is := known[name]
		if !is {
			s = suite{name, name}
		}
		list = append(list, s)
	}
	return list
}
