package main

import (
	"fmt"

	"dhwcompare/compare/batch"
)

// batchYears are simulated for each home unless more or fewer are asked for.
const batchYears = 5

// batchFlags are the flags of the command batch.
type batchFlags struct {
	caseFlags
	base, part value
}

func newBatchFlags() *batchFlags {
	o := &batchFlags{
		caseFlags: newCaseFlags("dhwcompare-batch"),
		base:      value{name: "base", placeholder: "CASE.yaml", example: "base.yaml"},
		part:      value{name: "part", placeholder: "I/N", example: "2/4", check: checkPart},
	}
	o.years.fallback = fmt.Sprint(batchYears)
	return o
}

func checkPart(text string) error {
	if _, err := batch.ParsePart(text); err != nil {
		return &usageError{what: "--part " + err.Error(), hint: "--part 2/4 is the second of four parts"}
	}
	return nil
}

// share gives the part of the table that is asked for.
func (o *batchFlags) share() batch.Part {
	if !o.part.given {
		return batch.Whole()
	}
	part, _ := batch.ParsePart(o.part.text) // checked when it was set
	return part
}

// folder gives the folder of results. Parts do not share one unless told to.
func (o *batchFlags) folder() string {
	if o.out.given || !o.part.given {
		return o.out.text
	}
	part := o.share()
	return fmt.Sprintf("%s-%d-of-%d", o.out.text, part.Index, part.Of)
}
