package outline

import (
	"fmt"

	"dhwcompare/compare"
	"dhwcompare/compare/wording"
)

func limits(doc *compare.Document) Part {
	p := Part{ID: "limits", Title: "Limits", Blocks: []Block{}}
	if list := doc.Comparison.Warnings; len(list) > 0 {
		var words []string
		for _, w := range list {
			words = append(words, capital(wording.InPrint(w.Text))+".")
		}
		p.Blocks = append(p.Blocks, lead("Warnings about these results.", ""), listed(words...))
	}
	p.Blocks = append(p.Blocks, lead("What is not in the calculation.", ""), listed(
		"Secondary circulation of hot water, solar heat, waste-water heat recovery, and electric showers.",
		"Ageing: scale that grows in a coil, insulation that settles, a heat pump that wears.",
		"Faults: a sensor in the wrong place, air in the loop, a valve that leaks.",
		"Noise, and what neighbours or planners allow.",
		"Growth of bacteria: temperatures are calculated, microbiology is not.",
		"Very cold hours are rarer in the calculated years than in real ones; that is why hard spells are looked at besides.",
		"Tariffs keep today's rates and bands, apart from the stated growth; carbon factors are the same for all years.",
		"Starts of the compressor are counted, not turned into a life: no published rule links the two.",
	))
	return p
}

// checks shows by what the figures can be trusted, and had again.
func checks(doc *compare.Document) Part {
	cmp := doc.Comparison
	blocks := []Block{
		text("The first law is held in every month of every year: heat in, less heat to the taps, losses, defrosts and what stays in vessel and loop, over heat in. More than one in a million would be an error of the program."),
		tabled(&Table{ID: "residuals", Caption: "Largest first-law residual, share of the heat", Heads: []string{"option", "residual"}, Groups: rowsOf([][]string{
			{cmp.Options.Compact.Name, residual(cmp.Options.Compact.FirstLawResidual)},
			{cmp.Options.Cylinder.Name, residual(cmp.Options.Cylinder.FirstLawResidual)},
		})}),
		tabled(&Table{ID: "identity", Caption: "To have these figures again", Heads: []string{"what", "value"}, Words: 2, Groups: rowsOf([][]string{
			{"form of case and results", cmp.Schema}, {"digest of the case", cmp.CaseDigest}, {"seed", fmt.Sprint(cmp.Seed)}, {"calculated years", fmt.Sprint(cmp.Years)},
		}), Note: "The same program, case and seed give the same figures to the last digit; another kind of processor may differ in the ninth."}),
	}
	blocks = append(blocks, startBudget(doc)...)
	return Part{ID: "checks", Title: "Checks", Blocks: blocks}
}

// startBudget sets starts against what the case states for the compressor, if it
// does.
func startBudget(doc *compare.Document) []Block {
	a, b := doc.Comparison.Options.Compact.StartBudget, doc.Comparison.Options.Cylinder.StartBudget
	if a == nil || b == nil {
		return nil
	}
	return []Block{lead("Starts.", fmt.Sprintf("The case states %s starts for the compressor. Heating included, it starts %s times a year with the compact store and %s with the cylinder: %s against %s of them in %d years. This is no forecast of its life.",
		amount(a.DesignStarts, 0), amount(a.StartsPerYear, 0), amount(b.StartsPerYear, 0), percentOf(a.ShareOverHorizon), percentOf(b.ShareOverHorizon), a.HorizonYears))}
}
