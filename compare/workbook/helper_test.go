package workbook

import (
	"context"
	"sync"
	"testing"

	"dhwcompare/compare"
)

// british is a home with British averages of outdoor air and mains water
// (Standard Assessment Procedure, tables U1 and J1).
func british() compare.Case {
	c := compare.Default()
	c.Title = "An invented home"
	c.Years = 3
	c.Household.People = 3
	c.Climate.OutdoorC = [12]float64{4.3, 4.9, 6.5, 8.9, 11.7, 14.6, 16.6, 16.4, 14.1, 10.6, 7.1, 4.2}
	c.Climate.MainsC = &[12]float64{8.0, 8.2, 9.3, 12.7, 14.6, 16.7, 18.4, 17.6, 16.6, 14.3, 11.1, 8.5}
	return c
}

func documentOf(t testing.TB, c compare.Case) *compare.Document {
	t.Helper()
	cmp, err := compare.Run(context.Background(), &c, 2, nil)
	if err != nil {
		t.Fatal(err)
	}
	return &compare.Document{Case: &c, Comparison: cmp, Inputs: someInputs()}
}

func someInputs() []compare.Input {
	return []compare.Input{
		{Key: "title", Text: "An invented home", Origin: compare.Stated, Help: "one line that names the case"},
		{Key: "household.people", Text: "3", Number: 3, Numeric: true, Origin: compare.Stated, Help: "people who live in the home"},
		{Key: "household.showers_per_day", Text: "2.1", Number: 2.1, Numeric: true, Origin: compare.Derived, Source: "from people: a published relation of showers to people", Help: "showers a day of all residents together"},
		{Key: "compact.setpoint_c", Text: "58", Number: 58, Numeric: true, Unit: "°C", Origin: compare.Assumed, Source: "common practice, no source", Help: "temperature at which the compact store is kept"},
		{Key: "money.materiality_per_year", Text: "20", Number: 20, Numeric: true, Unit: "GBP", Origin: compare.Assumed, Source: "common practice, no source", Help: "a smaller difference in running cost is no real difference"},
	}
}

// base is the document that most tests read, simulated once.
var base = sync.OnceValues(func() (*compare.Document, error) {
	c := british()
	cmp, err := compare.Run(context.Background(), &c, 2, nil)
	return &compare.Document{Case: &c, Comparison: cmp, Inputs: someInputs()}, err
})

func baseDocument(t testing.TB) *compare.Document {
	t.Helper()
	doc, err := base()
	if err != nil {
		t.Fatal(err)
	}
	return doc
}
