package space

import "fmt"

// BesideCylinder lists what has to stand or hang beside a cylinder of stored
// drinking water by default: expansion vessel, discharge pipework of the safety
// valves, and tempering valve. Local codes say what else.
func BesideCylinder(litres float64) ([]Item, error) {
	vessel, err := expansionItem(litres, drinkingExpansion, drinkingPrechargeBar, drinkingEndBar)
	if err != nil {
		return nil, err
	}
	return []Item{vessel, dischargePipework(), temperingValve()}, nil
}

// BesideCompact lists what has to hang beside a compact store by default: the
// heating circuit's expansion vessel grows by the store's water, and its hot
// outlet needs a tempering valve.
func BesideCompact(litres float64) ([]Item, error) {
	vessel, err := expansionItem(litres, heatingExpansion, heatingPrechargeBar, heatingEndBar)
	if err != nil {
		return nil, err
	}
	return []Item{vessel, temperingValve()}, nil
}

// DefaultPump is a circulation pump with its valves, for an option that needs one
// of its own beside the heat pump's.
func DefaultPump() Item { return pump() }

// ExpansionVesselL is the least nominal volume, litres, of an expansion vessel
// for a content that grows by a share e of itself, with precharge p0 and end
// pressure pf in bar gauge:
//
//	V = content e / (1 - (p0 + 1)/(pf + 1))
//
// the ideal-gas form used by EN 12828 (from memory). It needs pf > p0 >= 0 and
// gives an error otherwise.
func ExpansionVesselL(contentL, e, prechargeBar, endBar float64) (float64, error) {
	if !(contentL > 0 && e > 0 && prechargeBar >= 0 && endBar > prechargeBar) {
		return 0, fmt.Errorf("expansion vessel: %g l growing by %g between %g and %g bar: content and growth must be above 0, the end pressure above the precharge",
			contentL, e, prechargeBar, endBar)
	}
	return contentL * e / (1 - (prechargeBar+1)/(endBar+1)), nil
}

// expansionItem picks the smallest size that holds the growth.
func expansionItem(contentL, e, prechargeBar, endBar float64) (Item, error) {
	least, err := ExpansionVesselL(contentL, e, prechargeBar, endBar)
	if err != nil {
		return Item{}, err
	}
	sizes := expansionSizes()
	for _, s := range sizes {
		if s.litres < least {
			continue
		}
		return Item{
			Name:        fmt.Sprintf("expansion vessel %g l", s.litres),
			WidthMM:     s.diameterMM,
			DepthMM:     s.diameterMM,
			HeightMM:    s.heightMM,
			ClearSideMM: fittingSideMM,
			// The water that it takes up comes from the vessel, so it adds weight on
			// the wall but no litres to the whole.
			WeightFullKg: s.emptyKg + kgPerL*contentL*e,
			Above:        true,
		}, nil
	}
	return Item{}, fmt.Errorf("expansion vessel for %g l: needs %.0f l, the largest default size is %g l; give it as an item of its own",
		contentL, least, sizes[len(sizes)-1].litres)
}
