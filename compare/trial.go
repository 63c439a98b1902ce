package compare

import "context"

// Trial is what one option does over some years with some of its case changed.
type Trial struct {
	Years      int     `json:"years"`
	Failing    Spread  `json:"failing_showers_per_year"`
	Cost       float64 `json:"cost_per_year"`
	KWh        float64 `json:"whole_house_electricity_kwh"`
	HotWater   float64 `json:"electricity_kwh"`
	RunsADay   float64 `json:"runs_per_day"` // starts and changeovers
	UnmetShare float64 `json:"unmet_share"`
	Meets      bool    `json:"meets_service_rule"`
}

// trial lives some years through one option.
func (s *scout) trial(ctx context.Context, c *Case, side Side, n int) (Trial, error) {
	years, err := s.years(ctx, c, c.asStated(side), n)
	if err != nil {
		return Trial{}, err
	}
	return trialOf(&c.Service, years), nil
}

// trialOf sums up some years of one option.
func trialOf(s *Service, years []Totals) Trial {
	var t Totals
	failures := make([]float64, len(years))
	for i := range years {
		t.add(&years[i], 1/float64(len(years)))
		failures[i] = *failingShowers().Of(&years[i])
	}
	failing := SpreadOf(failures)
	const days = 365
	return Trial{
		Years: len(years), Failing: failing, Cost: t.CostPerYear, KWh: t.WholeHouseKWh, HotWater: t.ElectricityKWh,
		RunsADay: (t.StartsPerYear + t.Changeovers) / days, UnmetShare: ratio(t.UnmetHeatKWh, t.WantedHeatKWh),
		Meets: meetsServiceRule(s, failing, len(years)),
	}
}

// failingShowers is the figure that the service rule is about.
func failingShowers() Figure { return figureNamed("failing_showers_per_year") }

func figureNamed(name string) Figure {
	for _, f := range Figures() {
		if f.Name == name {
			return f
		}
	}
	return Figure{}
}

// withControl gives a copy of the case with one option's control changed.
func (c *Case) withControl(side Side, change func(*Control)) *Case {
	changed := *c
	if side == SideCompact {
		change(&changed.Compact.Control)
	} else {
		change(&changed.Cylinder.Control)
	}
	return &changed
}
