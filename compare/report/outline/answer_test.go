package outline

import (
	"strings"
	"testing"

	"dhwcompare/compare"
)

func TestAnswerFollowsTheVerdict(t *testing.T) {
	doesNotFit := &compare.Fit{Text: "does not fit (height: needs 2000 mm, has 1800 mm, 200 mm short)"}
	tests := map[string]struct {
		change func(*compare.Comparison)
		want   string
	}{
		"cylinder, the other runs cold": {func(*compare.Comparison) {}, "Take the cylinder: the compact store would run too cold in about 3 showers a year (the limit set for this home is 2). The cylinder costs about £60 a year less to run, and between £50 and £70 less in nine years out of ten."},
		"cylinder, the other could serve": {func(c *compare.Comparison) { remediable(c, 80) },
			"(the limit set for this home is 2) unless it is kept at 63 °C instead of 60 °C. The cylinder costs about £60 a year less to run, and between £50 and £70 less in nine years out of ten; kept at 63 °C, the compact store would cost about £80 a year more than the cylinder."},
		"cylinder, the other could serve with a limiter": {func(c *compare.Comparison) {
			remediable(c, -80)
			c.Options.Compact.EqualService.ShowerLimit, c.Options.Compact.EqualService.SetpointC = 7, 60
		}, "unless its showers are held to 7 litres a minute. The cylinder costs about £60 a year less to run, and between £50 and £70 less in nine years out of ten; with its showers held to 7 litres a minute, the compact store would cost about £80 a year less than the cylinder."},
		"cylinder, the other could serve hotter and with a limiter": {func(c *compare.Comparison) {
			remediable(c, 19)
			c.Options.Compact.EqualService.ShowerLimit = 6.5
		}, "unless it is kept at 63 °C instead of 60 °C and its showers are held to 6.5 litres a minute. The cylinder costs about £60 a year less to run, and between £50 and £70 less in nine years out of ten; kept at 63 °C and with its showers held to 6.5 litres a minute, the compact store would cost about as much a year as the cylinder."},
		"cylinder, the other never serves": {func(c *compare.Comparison) {
			c.Options.Compact.EqualService = compare.EqualService{Note: "none"}
		}, "(the limit set for this home is 2), however hot it may be kept. The cylinder costs"},
		"neither, one could serve": {func(c *compare.Comparison) {
			remediable(c, 80)
			c.Verdict.Recommend, c.Verdict.Cost, c.Options.Cylinder.MeetsServiceRule = compare.RecommendNeither, compare.CostNotCompared, false
		}, "unless it is kept at 63 °C instead of 60 °C, and the cylinder is not certain to keep within 2 cold showers a year. Their running costs cannot be compared fairly, because one that runs cold only looks cheap."},
		"cylinder, on cost": {func(c *compare.Comparison) { c.Options.Compact.MeetsServiceRule = true },
			"Take the cylinder: both give this home enough hot water, and the cylinder costs less to run."},
		"compact, the other does not fit": {func(c *compare.Comparison) {
			c.Verdict.Recommend, c.Options.Cylinder.Fit = compare.RecommendCompact, doesNotFit
		}, "Take the compact store: the cylinder does not fit into the room that there is for it."},
		"either, no real difference": {func(c *compare.Comparison) {
			c.Verdict.Recommend, c.Verdict.Cost = compare.RecommendEither, compare.CostNoDifference
			c.Difference.FloorAreaM2 = -0.361
		}, "Either will do, so let the space decide: both give this home enough hot water, and the compact store takes 0.36 m² less floor. There is no real difference in what they cost to run: it is less than £20 a year."},
		"neither, not compared": {func(c *compare.Comparison) {
			c.Verdict.Recommend, c.Verdict.Cost = compare.RecommendNeither, compare.CostNotCompared
			c.Options.Cylinder.Fit = doesNotFit
		}, "Neither, as they are planned now: the compact store would run too cold in about 3 showers a year (the limit set for this home is 2), and the cylinder does not fit into the room that there is for it. Their running costs cannot be compared fairly, because one that runs cold only looks cheap."},
		"neither fits nor serves": {func(c *compare.Comparison) {
			c.Verdict.Recommend, c.Verdict.Cost = compare.RecommendNeither, compare.CostNotCompared
			c.Options.Compact.Fit, c.Options.Compact.FailingShowers = doesNotFit, 227
			c.Options.Cylinder.Fit = doesNotFit
		}, "Neither, as they are planned now: the compact store does not fit into the room that there is for it and would run too cold in about 227 showers a year, and the cylinder does not fit into the room that there is for it."},
		"undecided, either sign": {func(c *compare.Comparison) {
			c.Verdict.Cost, c.Difference.Spread["cost_per_year"] = compare.CostUndecided, around(10, 40)
		}, "Which of them costs less to run is not settled: a year with the compact store could cost anything from £30 less to £50 more than with the cylinder."},
		"undecided, too few years": {func(c *compare.Comparison) { c.Verdict.Cost, c.Years = compare.CostUndecided, 1 },
			"too few years were calculated for that."},
		"the same every year": {func(c *compare.Comparison) { c.Difference.Spread["cost_per_year"] = around(60, 0) },
			"The cylinder costs about £60 a year less to run, in nearly every year."},
	}
	for name, test := range tests {
		t.Run(name, func(t *testing.T) {
			doc := invented()
			test.change(doc.Comparison)
			got := firstSentence(doc) + " " + secondSentence(doc)
			if !strings.Contains(got, test.want) {
				t.Errorf("got  %s\nwant %s", got, test.want)
			}
			if n := strings.Count(got, ". ") + 1; n != 2 {
				t.Errorf("%d sentences: %s", n, got)
			}
		})
	}
}

// A house that gets too little heat with either option is told so; what hot water
// takes from the rooms is told of the others.
func TestWarmRoomsTellAShortageOfHeat(t *testing.T) {
	doc := invented()
	if got := warmRooms(doc)[0].Text; !strings.Contains(got, "In 5 days at −3 °C outside, that cooled them by 0.4 °C at most") {
		t.Error(got)
	}
	doc.Comparison.Spells[0].Cylinder.FellBehind = 6
	if got := warmRooms(doc)[0].Text; !strings.Contains(got, "In 5 days at −3 °C outside the heat pump alone does not keep the house warm: rooms cooled by 0.4 °C") {
		t.Error(got)
	}
}

// What keeps costs from being compared is said once under the price of space.
func TestANoteOnSpaceIsSaidOnce(t *testing.T) {
	doc := invented()
	p := &doc.Comparison.PriceOfSpace
	p.TurnsAtPerM2, p.Note, p.TurnsNote = nil, "an option runs cold", "an option runs cold"
	said := 0
	for _, b := range spacePrice(doc) {
		for _, item := range b.Points {
			if strings.Contains(item.Text, "An option runs cold.") {
				said++
			}
		}
	}
	if said != 1 {
		t.Errorf("said %d times", said)
	}
}

// remediable lets the compact store serve when it is kept hotter, at so much a year
// beyond the cylinder.
func remediable(c *compare.Comparison, above float64) {
	o := &c.Options.Compact
	o.EqualService.Remedied = &compare.Remedied{AboveStated: 20, AboveOther: above, LifeCost: compare.LifeCost{EquivalentAnnualCost: 732}, OtherPerYear: 700}
}

func TestLifeCostOfWhatServes(t *testing.T) {
	doc := invented()
	if got := allInRemedied(doc); got != "" {
		t.Errorf("nobody has looked: %q", got)
	}
	remediable(doc.Comparison, 80)
	if got, want := allInRemedied(doc), " Kept at 63 °C, the compact store comes to about £732, about £32 a year more than the cylinder."; got != want {
		t.Errorf("got %q, want %q", got, want)
	}
	doc.Comparison.Options.Cylinder.MeetsServiceRule = false
	if got := allInRemedied(doc); got != "" {
		t.Errorf("held against one that does not serve: %q", got)
	}
}

func TestLongTime(t *testing.T) {
	for minutes, want := range map[float64]string{8: "8 minutes", 99: "99 minutes", 100: "about 1.5 hours", 119: "about 2 hours", 173: "about 3 hours", 200: "about 3.5 hours"} {
		if got := longTime(minutes); got != want {
			t.Errorf("%v: %q, want %q", minutes, got, want)
		}
	}
}

func TestAFindingNamesTheBetter(t *testing.T) {
	doc := invented()
	tests := map[string]struct {
		figure string
		spread compare.DifferenceSpread
		want   string
	}{
		"less is better":      {"starts_per_day", around(5, 1), "better: cylinder"},
		"more is better":      {"heat_pump_cop", around(5, 1), "better: compact store"},
		"neither":             {"wanted_heat_kwh", around(-5, 1), "higher: cylinder"},
		"not told apart":      {"starts_per_day", around(5, 6), noDifference},
		"cost, not material":  {"cost_per_year", around(15, 4), noDifference},
		"cost, at the band":   {"cost_per_year", around(16, 4), noDifference},
		"cost, over the band": {"cost_per_year", around(17, 4), "better: cylinder"},
	}
	for name, test := range tests {
		f := figureNamed(test.figure)
		if got := differenceFinding(doc, &f, test.spread); got != test.want {
			t.Errorf("%s: %q, want %q", name, got, test.want)
		}
	}
	f := figureNamed("cost_per_year")
	doc.Comparison.Verdict.Cost = compare.CostNotCompared
	if got := differenceFinding(doc, &f, around(60, 1)); got != notJudged {
		t.Errorf("not compared: %q", got)
	}
}
