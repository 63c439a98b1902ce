package compare

import (
	"dhwcompare/compare/calendar"
	"dhwcompare/tariffs"
)

// Comparison is the decision with everything that it rests on. It is complete:
// an output format computes nothing of its own.
type Comparison struct {
	Schema       string            `json:"schema"`
	Title        string            `json:"title"`
	CaseDigest   string            `json:"case_digest"`
	Seed         uint64            `json:"seed"`
	Years        int               `json:"years"`
	Currency     string            `json:"currency"`
	CostBoundary string            `json:"cost_boundary"`
	Options      Options           `json:"options"`
	Difference   Difference        `json:"difference"`
	ByCause      DifferenceByCause `json:"difference_by_cause"`
	Tariffs      []TariffCost      `json:"tariffs"`
	Verdict      Verdict           `json:"verdict"`
	Warnings     []Warning         `json:"warnings"`
	Spells       []Spell           `json:"spells"`
	Alternatives []Alternative     `json:"alternatives"`
	Shown        Shown             `json:"shown"`

	Worth

	// Profiles are the electricity of each option by half hour of the mean year,
	// kWh: bills are linear, so the bill of the mean is the mean of the bills.
	Profiles [sides][]float64 `json:"-"`

	// EachYear holds the years of the ensemble one by one, in order.
	EachYear [sides][]YearRecord `json:"-"`
}

// YearRecord is one simulated year of one option.
type YearRecord struct {
	Totals Totals
	Months [calendar.MonthsInAYear]MonthTotals
	Bands  [][]BandBill // by tariff, then by band
}

// What costs are of.
const (
	hotWaterBoundary   = "hot water only: compressor, starts, defrosts, pump, immersion heater and hot water's share of standby; without standing charge"
	wholeHouseBoundary = "the whole house's heat pump and immersion heater: hot water and heating, pumps and standby; without standing charge"
)

func (c *Case) boundary() string {
	if c.Dwelling.HeatLossWPerK > 0 {
		return wholeHouseBoundary
	}
	return hotWaterBoundary
}

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
	Ownership
	MeetsServiceRule   bool                                `json:"meets_service_rule"`
	FirstLawResidual   float64                             `json:"first_law_residual"`
	ElectricityByCause Causes                              `json:"electricity_by_cause"`
	Months             [calendar.MonthsInAYear]MonthTotals `json:"months"`
	Spread             map[string]Spread                   `json:"spread"`
	FailuresByMonth    [calendar.MonthsInAYear]Spread      `json:"failing_showers_by_month_spread"`
	ShowerTime         ShowerTime                          `json:"shower_time"`
	Risk               Risk                                `json:"risk"`
	// CostAtEqualService is the cost a year at the cheapest setpoint, and limiter if
	// need be, at which the option keeps the service rule; null if none does.
	CostAtEqualService *float64     `json:"cost_at_equal_service"`
	EqualService       EqualService `json:"equal_service"`
	SpaceItems         []SpaceItem  `json:"space_items"`
	SystemWater        SystemWater  `json:"system_water"`
	FloorShare         float64      `json:"floor_share"` // of the floor under the vessel, what is lost to other use
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
	LifeCost
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
	// AnnualDifference is that of the equivalent annual costs.
	AnnualDifference float64 `json:"equivalent_annual_cost_difference"`
	BreakEven
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
	LifeCost

	Months [calendar.MonthsInAYear][]BandBill `json:"-"` // bands by month
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

// About lists the texts of the warnings that go with a figure or a key.
func (cmp *Comparison) About(name string) []string {
	var texts []string
	for _, w := range cmp.Warnings {
		if w.About == name {
			texts = append(texts, w.Text)
		}
	}
	return texts
}

// WarningMark stands behind the label of what a warning is about.
const WarningMark = " (!)"

// Marked gives a label with the mark if a warning goes with the figure or key.
func (cmp *Comparison) Marked(label, name string) string {
	if len(cmp.About(name)) == 0 {
		return label
	}
	return label + WarningMark
}

// add adds a year's bill, weighted.
func (b *TariffBill) add(bill *tariffs.Bill, weight float64) {
	b.KWh += weight * bill.Year.KWh
	b.Cost += weight * bill.Year.EnergyCost
	b.Bands = addBands(b.Bands, bill.Year.Bands, weight)
	for m := range b.Months {
		b.Months[m] = addBands(b.Months[m], bill.Months[m].Bands, weight)
	}
	b.MeanPerKWh = ratio(b.Cost, b.KWh)
}

// addBands adds the lines of a bill, weighted, to bands, which may be nil.
func addBands(bands []BandBill, lines []tariffs.Line, weight float64) []BandBill {
	if bands == nil {
		bands = make([]BandBill, len(lines))
	}
	for i, line := range lines {
		bands[i].Name = line.Label
		bands[i].KWh += weight * line.KWh
		bands[i].Cost += weight * line.Cost
	}
	return bands
}
