package compare

import (
	"dhwcompare/compare/calendar"
	"dhwcompare/tariffs"
)

// Comparison is the decision with everything that it rests on. It is complete:
// an output format computes nothing of its own.
type Comparison struct {
	Schema       string       `json:"schema"`
	Title        string       `json:"title"`
	CaseDigest   string       `json:"case_digest"`
	Seed         uint64       `json:"seed"`
	Years        int          `json:"years"`
	Currency     string       `json:"currency"`
	CostBoundary string       `json:"cost_boundary"`
	Options      Options      `json:"options"`
	Difference   Difference   `json:"difference"`
	Tariffs      []TariffCost `json:"tariffs"`
	Verdict      Verdict      `json:"verdict"`
	Warnings     []Warning    `json:"warnings"`
	Shown        Shown        `json:"shown"`

	// Profiles are the electricity of each option by half hour of the mean year,
	// kWh: bills are linear, so the bill of the mean is the mean of the bills.
	Profiles [sides][]float64 `json:"-"`
}

// hotWaterBoundary says what costs are of.
const hotWaterBoundary = "hot water only: compressor, starts, pump and hot water's share of standby; no space heating; without standing charge"

// Options are the two options.
type Options struct {
	Compact  Option `json:"compact"`
	Cylinder Option `json:"cylinder"`
}

// Of gives one of them.
func (o *Options) Of(side Side) *Option {
	if side == SideCompact {
		return &o.Compact
	}
	return &o.Cylinder
}

// Option is one option's mean year of the ensemble.
type Option struct {
	Name    string  `json:"name"`
	VolumeL float64 `json:"volume_l"`
	// Setpoint at which it is kept, C.
	SetpointC float64 `json:"setpoint_c"`
	Totals
	MeetsServiceRule   bool                                `json:"meets_service_rule"`
	FirstLawResidual   float64                             `json:"first_law_residual"`
	ElectricityByCause Causes                              `json:"electricity_by_cause"`
	Months             [calendar.MonthsInAYear]MonthTotals `json:"months"`
	Spread             map[string]Spread                   `json:"spread"`
	FailuresByMonth    [calendar.MonthsInAYear]Spread      `json:"failing_showers_by_month_spread"`
	SpaceItems         []SpaceItem                         `json:"space_items"`
}

// SpaceItem is one thing that an option needs room for, outer dimensions.
type SpaceItem struct {
	Name     string  `json:"name"`
	WidthMM  float64 `json:"width_mm"`
	DepthMM  float64 `json:"depth_mm"`
	HeightMM float64 `json:"height_mm"`
	Hangs    bool    `json:"hangs_above"` // takes no floor
}

// Difference is compact store minus cylinder.
type Difference struct {
	Totals
	Spread map[string]DifferenceSpread `json:"spread"`
}

// TariffCost is what each option's mean year costs on one tariff, standing charge
// left out: it is the same for both.
type TariffCost struct {
	Name           string           `json:"name"`
	Primary        bool             `json:"primary"`
	StandingAYear  float64          `json:"standing_charge_per_year"`
	Compact        TariffBill       `json:"compact"`
	Cylinder       TariffBill       `json:"cylinder"`
	Difference     float64          `json:"difference"`
	DifferenceOver DifferenceSpread `json:"difference_spread"`
}

// Of gives one option's bill.
func (t *TariffCost) Of(side Side) *TariffBill {
	if side == SideCompact {
		return &t.Compact
	}
	return &t.Cylinder
}

// TariffBill is the mean year's bill of one option.
type TariffBill struct {
	KWh        float64    `json:"kwh"`
	Cost       float64    `json:"cost"`
	MeanPerKWh float64    `json:"mean_per_kwh"`
	Bands      []BandBill `json:"bands"`
}

// BandBill is one band of a bill.
type BandBill struct {
	Name string  `json:"name"`
	KWh  float64 `json:"kwh"`
	Cost float64 `json:"cost"`
}

// Warning is something that a reader must know beside a figure.
type Warning struct {
	About string `json:"about"` // name of the figure or key concerned
	Text  string `json:"text"`
}

// billOf averages bills over years.
func (b *TariffBill) add(bill *tariffs.Bill, weight float64) {
	if b.Bands == nil {
		b.Bands = make([]BandBill, len(bill.Year.Bands))
	}
	b.KWh += weight * bill.Year.KWh
	b.Cost += weight * bill.Year.EnergyCost
	for i, line := range bill.Year.Bands {
		b.Bands[i].Name = line.Label
		b.Bands[i].KWh += weight * line.KWh
		b.Bands[i].Cost += weight * line.Cost
	}
	b.MeanPerKWh = ratio(b.Cost, b.KWh)
}
