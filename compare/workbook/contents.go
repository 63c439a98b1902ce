package workbook

import "dhwcompare/compare"

// Names of the sheets.
const (
	summaryName      = "Summary"
	reasonsName      = "Reasons"
	assumptionsName  = "Assumptions"
	monthsName       = "Months"
	causesName       = "Causes"
	whyName          = "Why they differ"
	chartsName       = "Charts"
	billsName        = "Tariff and bills"
	lifeName         = "Whole-life cost"
	riskName         = "Risk"
	findingName      = "Recommendation"
	yearsName        = "Each year"
	drawoffsName     = "Draw-offs"
	spellsName       = "Cold spell"
	alternativesName = "Alternatives"
	settingsName     = "Settings"
	sizingName       = "Sizing"
	sensitivityName  = "Sensitivity"
	spaceName        = "Space"
	outletsName      = "Outlets and queue"
	showersName      = "Showers"
	failingName      = "Failing draws"
	halfHoursName    = "Half-hours"
	checksName       = "Checks"
	aboutName        = "About"
)

// entry is one sheet in the list of contents.
type entry struct {
	name, words string
	absent      bool // the document has nothing for it
}

// contents lists the sheets in the order in which they are read. A sheet for which
// the document has nothing is left out.
func contents(doc *compare.Document) []entry {
	c := doc.Comparison
	var out []entry
	for _, e := range []entry{
		{name: summaryName, words: "the answer on one page"},
		{name: reasonsName, words: "why, point by point"},
		{name: assumptionsName, words: "inputs; prices to change"},
		{name: monthsName, words: "both options by month"},
		{name: causesName, words: "what the electricity was for"},
		{name: whyName, words: "what makes the difference", absent: len(c.ByCause.Parts) == 0},
		{name: chartsName, words: "the months as pictures"},
		{name: billsName, words: "cost by band and by month"},
		{name: lifeName, words: "purchase, service, electricity"},
		{name: riskName, words: "spread over the years"},
		{name: findingName, words: "how it follows, step by step"},
		{name: yearsName, words: "the years one by one"},
		{name: drawoffsName, words: "minutes of shower, baths, recharge", absent: doc.Draws == nil},
		{name: spellsName, words: "hard weather", absent: len(c.Spells) == 0},
		{name: alternativesName, words: "one thing changed; equal service", absent: !hasAlternatives(c)},
		{name: settingsName, words: "what each is worth; list for site", absent: doc.Settings == nil},
		{name: sizingName, words: "best size of each option", absent: doc.Sizing == nil},
		{name: sensitivityName, words: "what turns the decision", absent: doc.Sensitivity == nil},
		{name: spaceName, words: "what each takes; fit; starts"},
		{name: outletsName, words: "waits at each; who runs cold, when"},
		{name: showersName, words: "how warm showers run for how long", absent: !hasShowers(c)},
		{name: failingName, words: "each draw-off that fails in a year"},
		{name: halfHoursName, words: "electricity through the year"},
		{name: checksName, words: "sums, balances, program's values"},
		{name: aboutName, words: "method, cautions, identity"},
	} {
		if !e.absent {
			out = append(out, e)
		}
	}
	return out
}

// has reports whether the workbook has a sheet.
func (b *book) has(name string) bool {
	for _, s := range b.sheets {
		if s.name == name {
			return true
		}
	}
	return false
}

// hasShowers reports whether the temperatures of both options' showers are known.
func hasShowers(c *compare.Comparison) bool {
	return len(c.Options.Compact.ShowerTime.Colder) > 0 && len(c.Options.Cylinder.ShowerTime.Colder) > 0
}

// showers are how warm one option's showers run.
func (b *book) showers(side int) *compare.ShowerTime {
	return &b.comparison().Options.Of(compare.Side(side)).ShowerTime
}
