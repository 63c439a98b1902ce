package report

import (
	"bytes"
	"strings"
	"testing"

	"dhwcompare/compare"
)

// studied is a document with everything that a study can find, in figures as wide
// as they get.
func studied() *compare.Document {
	c := compare.Default()
	doc := &compare.Document{Case: &c, Comparison: &compare.Comparison{Title: strings.Repeat("long title ", 20), Currency: "GBP", Years: 20}}
	wide := compare.Size{
		VolumeL: 300, SetpointC: 65, SummerC: 61, HysteresisK: 12.5, OutputCap: 1, ShowerLimit: 12.5, SpaceL: 1234.5,
		Trial: compare.Trial{Cost: 12345.6, Failing: compare.Spread{Mean: 999.9}, RunsADay: 99.9},
	}
	plain := compare.Size{VolumeL: 120, SetpointC: 50, SummerC: 50, HysteresisK: 3, OutputCap: 0.7, SpaceL: 500, NonDominated: true}
	r := compare.SizingResult{Sizes: []compare.Size{plain, wide}, TooLarge: []float64{400, 500}, Failing: []float64{50}}
	r.Smallest, r.Cheapest = &r.Sizes[0], &r.Sizes[1]
	doc.Sizing = &compare.Sizing{ConfirmYears: 20, ScreenYears: 3, Compact: r, Cylinder: compare.SizingResult{Note: "nothing serves"}}
	doc.Sensitivity = &compare.Sensitivity{
		Base: compare.SensitivityPoint{Recommend: compare.RecommendEither, CostDifference: 0},
		Inputs: []compare.SensitivityInput{{
			Label: "an input with a long name", Unit: "l/min", BaseValue: 6, LowValue: 4.25, HighValue: 12345,
			Low: compare.SensitivityPoint{CostDifference: -1000}, High: compare.SensitivityPoint{CostDifference: 100, FailingCompact: 999.9},
			Turn: &compare.Turn{At: 5}, Turns: `turns to "cylinder" at about 5 l/min`,
		}, {Label: "another", Turns: "does not turn"}},
	}
	doc.Settings = &compare.Settings{Years: 1, Steps: []compare.SettingStep{
		{Name: "uncommissioned example", WinterMin: 7.2, SummerMin: 9.3, Trial: compare.Trial{Cost: 787, Failing: compare.Spread{Mean: 317}, RunsADay: 4}},
		{Name: "setpoint", Change: "setpoint 50 to 60 C", WinterMin: 14.2}, {Name: "commissioned", Change: "all together"},
	}, List: []compare.Commission{{Option: "cylinder", Setting: "sensor", Value: "40 %", Reason: strings.Repeat("because ", 12)}}}
	return doc
}

// Where nothing serves, there is no table of sizes to explain; where there is no bath,
// none is timed.
func TestStudiesExplainOnlyWhatTheyShow(t *testing.T) {
	doc := studied()
	doc.Sizing.Compact.Sizes, doc.Sizing.Cylinder.Sizes = nil, nil
	var b bytes.Buffer
	if err := Sizes(&b, doc, ""); err != nil || strings.Contains(b.String(), "smallest that serves") {
		t.Errorf("%v: %s", err, b.String())
	}
	doc.Draws = &compare.Drawoff{}
	for _, has := range []bool{true, false} {
		doc.Case.Household.HasBath = has
		heads, _ := otherGrid(doc)
		if words := bathWords(doc) != ""; words != has || (len(heads) == 9) != has {
			t.Errorf("has a bath: %t, words %t, %d columns", has, words, len(heads))
		}
	}
}

// TestStudiesFitTheTerminal also looks for what each table must say.
func TestStudiesFitTheTerminal(t *testing.T) {
	doc := studied()
	for name, test := range map[string]struct {
		write func(*bytes.Buffer) error
		want  []string
	}{
		"sizes": {func(b *bytes.Buffer) error { return Sizes(b, doc, "") }, []string{
			"S*        120         50           3      70    none    500      0   0.0   0.0\n",
			"C         300    65 (61)        12.5     100    12.5   1235  12346 999.9  99.9\n",
			"Fail at every setting tried: 50 l.\n", "Too large for the room, with what stands beside: 400, 500 l.\n", "None: nothing serves.\n", "There is no best against best", "added limiter",
		}},
		"tornado": {func(b *bytes.Buffer) error { return Tornado(b, doc, "") }, []string{
			"an input with a long name, l/min  4.25", "-1000  +100 ====================|==\n",
			"- an input with a long name: from 6, turns to \"cylinder\" at about 5 l/min\n", "It does not turn with: another.\n",
		}},
		"settings": {func(b *bytes.Buffer) error { return Ladder(b, doc, "") }, []string{
			"uncommissioned example                   7.2         9.3   317.0    4.0      787\n", "setpoint 50 to 60 C                     14.2 ",
			"\ncommissioned    ", "\ncylinder\n  [ ] sensor: 40 %; because",
		}},
	} {
		t.Run(name, func(t *testing.T) {
			var b bytes.Buffer
			if err := test.write(&b); err != nil {
				t.Fatal(err)
			}
			for line := range strings.SplitSeq(b.String(), "\n") {
				if width(line) > columns {
					t.Errorf("%d columns: %q", width(line), line)
				}
			}
			for _, want := range test.want {
				if !strings.Contains(b.String(), want) {
					t.Errorf("%q is missing in\n%s", want, b.String())
				}
			}
		})
	}
}

// TestBars draws values at the ends of their scale and at one point.
func TestBars(t *testing.T) {
	s := barScale{-10, 12}
	for _, test := range []struct {
		low, high, base float64
		want            string
	}{
		{-10, 12, 1, "===========|==========="[:23]},
		{1, 1, 1, "           |           "},
		{12, 12, -10, "|======================"},
		{-10, -9, 12, "======================|"}, // the base lies outside
	} {
		if got := s.bar(test.low, test.high, test.base); got != test.want {
			t.Errorf("%g to %g with %g: %q, want %q", test.low, test.high, test.base, got, test.want)
		}
	}
	if got := (barScale{5, 5}).bar(5, 5, 5); len(got) != barCells || strings.Count(got, "|") != 1 {
		t.Errorf("a scale without width: %q", got)
	}
}

func TestPortfolio(t *testing.T) {
	var b bytes.Buffer
	h := Homes{Table: "homes.csv", Years: 5, Homes: 1_000_000, Compact: 999_999, Failed: 1, FirstFailure: "homes.csv:2: x\x1b[2J", Part: "2/4"}
	if err := Portfolio(&b, &h, "out"); err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{
		"1000000 homes in part 2/4 of homes.csv, 5 simulated years each.\n", "compact store recommended                        999999\n",
		"no result                                             1\n", "the first: homes.csv:2:\nx[2J\n", "scalding", "Results: out\n",
	} {
		if !strings.Contains(b.String(), want) {
			t.Errorf("%q is missing in\n%s", want, b.String())
		}
	}
}
