package heatpump

import "fmt"

// Params describes a unit. [Defaults] fills every field.
type Params struct {
	Size      Size    // class of the generic map
	NominalKW float64 // scales the generic map: outputs times NominalKW over the nominal of the class

	// Table is the unit's own performance; it replaces the generic map, and
	// Size and NominalKW then mean nothing. Nil or empty: generic map.
	Table          []Row
	MinimumShare   float64 // table only: smallest output as a share of the largest
	OutdoorMarginK float64 // table only: how far it is carried on beyond its edges
	LeavingMarginK float64

	LoadPenalty  float64 // efficiency lost from half to full output, as a share of the ideal COP
	FieldDerate  float64 // multiplies the COP: field against test bench
	HighestFlowC float64 // hottest leaving water

	Start Start
}

// Defaults is a small unit on the generic map.
func Defaults() Params {
	return Params{
		Size:      Small,
		NominalKW: Small.NominalKW(), // kW; class of the certified medians

		MinimumShare:   0.30, // -; usual modulation down to 0.25-0.40, from memory
		OutdoorMarginK: 5,    // K; common practice, no source
		LeavingMarginK: 5,    // K; common practice, no source

		LoadPenalty:  0.07, // -; fitted to certified medians, uncertain by 0.05 as full load was certified almost only at -7 C
		FieldDerate:  1.0,  // -; 0.85 makes field results of older units of a European demand time-series study (Ruhnau et al. 2019)
		HighestFlowC: 70,   // C; certified median, 55-75 between 10th and 90th percentile

		Start: Start{
			HeatTauS:        60, // s; common practice, no source
			ElectricityTauS: 30, // s; common practice, no source
		},
	}
}

// Number is one figure of [Params] with its allowed range.
type Number struct {
	Field    string // name in Params
	Unit     string
	Value    float64
	Min, Max float64
	Remedy   string
}

// Numbers lists the figures of p that have a range and matter: those of the
// table only with a table, those of the generic map only without.
func (p Params) Numbers() []Number {
	return append(p.mapNumbers(),
		Number{"LoadPenalty", "", p.LoadPenalty, 0.02, 0.12, "use 0.07 unless a part-load test says otherwise"},
		Number{"FieldDerate", "", p.FieldDerate, 0.80, 1, "use 1 for bench figures, 0.85 for a cautious field figure"},
		Number{"HighestFlowC", "C", p.HighestFlowC, 45, 80, "take the highest flow temperature from the unit's data sheet"},
		Number{"Start.HeatTauS", "s", p.Start.HeatTauS, 30, 120, "use 60 unless a start was measured"},
		Number{"Start.ElectricityTauS", "s", p.Start.ElectricityTauS, 0, 60, "use 30 unless a start was measured"},
	)
}

func (p Params) mapNumbers() []Number {
	if len(p.Table) == 0 {
		return []Number{{"NominalKW", "kW", p.NominalKW, 3, 16, "give a larger or smaller unit by its own table"}}
	}
	return []Number{
		{"MinimumShare", "", p.MinimumShare, 0.10, 1, "use 1 for a unit that cannot modulate"},
		{"OutdoorMarginK", "K", p.OutdoorMarginK, 0, 10, "add table rows further out instead"},
		{"LeavingMarginK", "K", p.LeavingMarginK, 0, 10, "add table rows further out instead"},
	}
}

// Problem is one thing wrong with [Params].
type Problem struct {
	Field string // name in Params, such as "LoadPenalty" or "Table[2].FullCOP"
	Text  string // value seen, what is allowed, what to do
}

// Error gives field and text on one line.
func (p Problem) Error() string { return "heat pump: " + p.Field + " " + p.Text }

func (n Number) problems() []Problem {
	if n.Value >= n.Min && n.Value <= n.Max {
		return nil
	}
	unit := n.Unit
	if unit != "" {
		unit = " " + unit
	}
	text := fmt.Sprintf("is %g, allowed is %g to %g%s: %s", n.Value, n.Min, n.Max, unit, n.Remedy)
	return []Problem{{n.Field, text}}
}

// Validate returns every problem found, none if the parameters are sound.
func (p Params) Validate() []Problem {
	var problems []Problem
	for _, n := range p.Numbers() {
		problems = append(problems, n.problems()...)
	}
	if p.Start.ElectricityTauS > p.Start.HeatTauS {
		problems = append(problems, Problem{"Start.ElectricityTauS", fmt.Sprintf(
			"is %g s, longer than the lag of heat, %g s: make it shorter, heat cannot run ahead of electricity",
			p.Start.ElectricityTauS, p.Start.HeatTauS)})
	}
	if len(p.Table) == 0 {
		return append(problems, p.Size.problems()...)
	}
	problems = append(problems, tableProblems(p.Table)...)
	if len(problems) > 0 {
		return problems
	}
	return newGrid(p.Table).marginProblems(p.OutdoorMarginK, p.LeavingMarginK)
}

func (s Size) problems() []Problem {
	if s.NominalKW() > 0 {
		return nil
	}
	return []Problem{{"Size", fmt.Sprintf("is %q, allowed are %q and %q", string(s), Small, Medium)}}
}
