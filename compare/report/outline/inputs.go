package outline

import (
	"strings"

	"dhwcompare/compare"
	"dhwcompare/compare/wording"
)

// inputs shows what somebody stated for this home; all others stand in an
// appendix.
func inputs(doc *compare.Document) Part {
	if len(doc.Inputs) == 0 {
		return Part{}
	}
	return Part{ID: "inputs", Title: "Inputs and assumptions", Blocks: []Block{
		text("These inputs come from the case file. What the case leaves out takes a documented default, or is derived from other inputs; those stand, with their sources, in the list of all inputs near the end. Practice means common practice in the trade without a source; memory means a value from memory."),
		tabled(inputTable("inputs-stated", "Inputs that the case states", doc, true)),
	}}
}

func otherInputs(doc *compare.Document) Part {
	if len(doc.Inputs) == 0 {
		return Part{}
	}
	return Part{ID: "all-inputs", Title: "Appendix: defaults and derived inputs", Blocks: []Block{
		tabled(inputTable("inputs-other", "Inputs that the case leaves to defaults or to other inputs", doc, false)),
	}}
}

// inputTable lists the inputs that are stated, or else the others with what they
// rest on.
func inputTable(id, caption string, doc *compare.Document, stated bool) *Table {
	t := &Table{ID: id, Caption: caption, Heads: []string{"input", "value", "unit", "meaning"}, Words: 5}
	list := doc.Inputs
	if !stated {
		t.Heads = append(t.Heads, "origin and source")
	}
	for i := range list {
		in := &list[i]
		if (in.Origin == compare.Stated) != stated {
			continue
		}
		section, rest := keyParts(in.Key)
		row := []string{doc.Comparison.Marked(rest, in.Key), inputValue(in), in.Unit, wording.InPrint(in.Help)}
		if !stated {
			row = append(row, string(in.Origin)+": "+in.Source)
		}
		t.add(section, row)
	}
	t.explainMark()
	return t
}

// keyParts divides a key at its first dot; keys without one are general.
func keyParts(key string) (section, rest string) {
	section, rest, dotted := strings.Cut(key, ".")
	if !dotted {
		return "general", key
	}
	return section, rest
}

func inputValue(in *compare.Input) string {
	if !in.Numeric {
		return in.Text
	}
	return plainNumber(in.Number)
}

// filledIn is the case that gives these results again.
func filledIn(doc *compare.Document) Part {
	if len(doc.CaseYAML) == 0 {
		return Part{}
	}
	return Part{ID: "case", Title: "Appendix: the filled-in case", Blocks: []Block{
		text("Save these lines as a file and run it again: the same program gives the same figures."),
		{Listing: string(doc.CaseYAML)},
	}}
}
