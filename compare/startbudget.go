package compare

// StartBudget sets an option's compressor starts against the number that the user
// states for the compressor's design. It is no forecast of a life, and no money.
type StartBudget struct {
	DesignStarts  float64 `json:"design_starts"`
	StartsPerYear float64 `json:"starts_per_year"` // for hot water and for heating
	HorizonYears  int     `json:"horizon_years"`
	// ShareOverHorizon is the share of the design starts that the horizon uses up;
	// 1 is all of them.
	ShareOverHorizon float64 `json:"share_over_horizon"`
	// YearsToDesign is the time in which they are used up, null if nothing starts.
	YearsToDesign *float64 `json:"years_to_design_starts"`
}

func startBudget(c *Case, t *Totals) *StartBudget {
	design := c.HeatPump.DesignStarts
	if design <= 0 {
		return nil
	}
	b := &StartBudget{DesignStarts: design, StartsPerYear: t.StartsPerYear + t.HeatingStarts, HorizonYears: c.Money.HorizonYears}
	b.ShareOverHorizon = b.StartsPerYear * float64(b.HorizonYears) / design
	if b.StartsPerYear > 0 {
		b.YearsToDesign = per(design, b.StartsPerYear)
	}
	return b
}
