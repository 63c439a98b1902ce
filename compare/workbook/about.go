package workbook

import (
	"fmt"

	"dhwcompare/compare"
	"dhwcompare/compare/wording"
)

// aboutChars is the number of characters that a line of the sheet holds.
const aboutChars = 118

func (b *book) writeAbout() {
	s := b.sheet(aboutName)
	s.head("About", "")
	at := place{1, 3}
	for _, part := range aboutParts() {
		s.text(at, heading, part.title)
		at = at.down(1)
		for _, line := range part.lines {
			s.paragraph(at, 2, aboutChars, prose, line)
			at = at.down(1)
		}
		at = at.down(1)
	}
	s.widths(28, 84)
	at = s.identity(at)
	s.lay(page{portrait: true, onePage: true, last: place{2, at.row - 1}})
}

type aboutPart struct {
	title string
	lines []string
}

func aboutParts() []aboutPart {
	return []aboutPart{
		{"Method in short", []string{
			"Two plants live through the same years: same weather, mains water, household, house and heat pump. Only the vessel and its control differ, so a difference in the results is a difference between the options.",
			"Compact store: heating water, charged directly by the heat pump; mains water is heated as it passes an immersed coil. Cylinder: drinking water, heated through an indirect coil. Both are stratified vessels, stepped through every draw-off and every run of the heat pump.",
			"Figures are of the mean of the simulated years. Years differ in weather and in when and how long people draw water.",
			"Electricity that made heat is divided among causes as that heat was: what reached the taps, and each loss. Starting, pump and standby stand on their own.",
		}},
		{"How to use the workbook", []string{
			"Change the framed cells on the sheet Assumptions: prices, taxes, outlays, rates, carbon, the place that there is, and judgements. Every cost, interval and finding follows, up to the Summary. The verdict in words, and its reasons, are of the inputs as simulated.",
			"What takes part in the simulation is locked there: a change needs a new run of the program. The sheet is protected without a password, against slips only.",
			"Framed cells on the sheet Settings are empty: they take what is set and measured on site, and nothing but the difference beside them follows.",
			"Italic figures are simulated; upright ones are formulas; no number hides in a formula. The sheet Checks holds the formulas against each other and against the program.",
		}},
		{"Cautions", []string{
			"Scald: water above about 50 °C burns skin within minutes, above 60 °C within seconds. Outlets need mixing or tempering valves as local codes say.",
			"Legionella: stored drinking water kept below about 60 °C, and pipes in which water stands, can let legionella grow. Local codes say what temperatures, flushing and disinfection are required; this comparison does not show that they are met.",
			"Pressure: vessels that are heated need safety valves, expansion and discharge pipes sized and fitted by licensed people.",
			"Electricity and refrigerant: work on them is for licensed people only.",
			"The comparison is no design and no promise of a bill. Local codes and the advice of licensed people come first.",
		}},
	}
}

// identity says what produced these figures, so that they can be had again.
func (s *sheet) identity(at place) place {
	c := s.book.comparison()
	s.text(at, heading, "Identity of the results")
	at = at.down(1)
	for _, l := range []struct{ name, value string }{
		{"Title", c.Title}, {"Form of case and results", c.Schema}, {"Digest of the case", c.CaseDigest},
		{"Seed", fmt.Sprint(c.Seed)}, {"Simulated years", fmt.Sprint(c.Years)}, {"Currency", c.Currency}, {"Costs are of", c.CostBoundary},
		{"Largest first-law residual", residuals(c)},
	} {
		s.text(at, label, l.name)
		s.foreign(at.right(1), l.value)
		s.height(at.row, linesOf(clean(l.value), 86)*lineHeight)
		at = at.down(1)
	}
	return at
}

func residuals(c *compare.Comparison) string {
	return wording.Sprintf("%.1e of the heat (compact store), %.1e (cylinder)", c.Options.Compact.FirstLawResidual, c.Options.Cylinder.FirstLawResidual)
}
