package compare

import (
	"math"

	"dhwcompare/compare/calendar"
	"dhwcompare/compare/household"
	"dhwcompare/compare/plant"
	"dhwcompare/tariffs"
)

// record is what is kept of one option's year.
type record struct {
	months   [calendar.MonthsInAYear]MonthTotals
	totals   Totals
	causes   Causes
	residual float64
	risk     riskYear
	costs    []float64    // on each tariff
	bands    [][]BandBill // of each tariff's bill
}

// collector keeps the years of an ensemble.
type collector struct {
	clock   calendar.Year
	rates   []*tariffs.Rates
	years   [sides][]record
	bills   [sides][]TariffBill // mean over the years, by tariff
	weight  float64             // of one year in the mean
	profile []float64           // of the year in hand
	carbon  [calendar.MonthsInAYear]float64
	means   [sides][]float64 // profile of the mean year
	shown   [sides][]FailedDraw
	outlets []household.Outlet
	waits   [sides][]waitTally // by outlet
	failed  [sides]failedShowers
	showers [sides]showerClock
}

func newCollector(c *Case) (*collector, error) {
	rates, err := c.rates()
	if err != nil {
		return nil, err
	}
	k := &collector{
		clock: c.Climate.Year(), weight: 1 / float64(c.Years), rates: rates,
		profile: make([]float64, calendar.HalfHours), carbon: c.Money.CarbonByMonth(),
	}
	k.outlets = household.Outlets(c.Household.Bathrooms)
	for side := range sides {
		k.waits[side] = make([]waitTally, len(k.outlets))
		k.bills[side] = make([]TariffBill, len(k.rates))
		k.means[side] = make([]float64, calendar.HalfHours)
	}
	return k, nil
}

// take is the sink of Years.
func (k *collector) take(year int, p Pair) error {
	for side := range sides {
		l := p.Ledgers[side]
		r := record{residual: l.Residual(), risk: riskOf(l.Outcomes, k.clock)}
		for m := range l.Months {
			r.months[m] = monthTotals(m, &l.Months[m])
			r.risk.months[m].note(&r.months[m].Totals)
			r.months[m].CarbonKg = k.carbon[m] * r.months[m].WholeHouseKWh
		}
		r.totals, r.causes = yearTotals(&r.months)
		if err := k.price(side, l, &r); err != nil {
			return err
		}
		k.years[side] = append(k.years[side], r)
		addWaits(k.waits[side], l.Outcomes)
		k.failed[side].add(year, l.Outcomes, k.clock)
		k.showers[side].take(l, k.weight)
		if year == 0 {
			k.shown[side] = failedDraws(l.Outcomes)
		}
	}
	return nil
}

// price bills a year on every tariff. The primary tariff's cost is the cost.
func (k *collector) price(side Side, l *plant.Ledger, r *record) error {
	addChannels(k.profile, l)
	for i := range k.profile {
		k.means[side][i] += k.weight * k.profile[i]
	}
	for t, rates := range k.rates {
		bill, err := rates.Bill(k.profile)
		if err != nil {
			return err
		}
		r.costs = append(r.costs, bill.Year.EnergyCost)
		r.bands = append(r.bands, addBands(nil, bill.Year.Bands, 1))
		k.bills[side][t].add(&bill, k.weight)
		if t == 0 {
			r.totals.CostPerYear = bill.Year.EnergyCost
			for m := range r.months {
				r.months[m].CostPerYear = bill.Months[m].EnergyCost
			}
		}
	}
	return nil
}

// addChannels makes the profile of all electricity of a year.
func addChannels(profile []float64, l *plant.Ledger) {
	for i := range profile {
		profile[i] = 0
		for _, channel := range l.HalfHourKWh {
			profile[i] += channel[i]
		}
	}
}

// option makes the mean year of one option.
func (k *collector) option(side Side) Option {
	o := Option{Name: side.String(), Spread: map[string]Spread{}, ShowerTime: k.showers[side].time()}
	for i := range k.years[side] {
		r := &k.years[side][i]
		for m := range r.months {
			o.Months[m].Month, o.Months[m].Days = m+1, calendar.DaysIn(m)
			o.Months[m].add(&r.months[m].Totals, k.weight)
			o.Months[m].ElectricityByCause.add(&r.months[m].ElectricityByCause, k.weight)
		}
		o.FirstLawResidual = max(o.FirstLawResidual, r.residual)
	}
	for m := range o.Months {
		month := &o.Months[m]
		month.derive(float64(month.Days), compressorKWh(&month.Totals, &month.ElectricityByCause))
		o.FailuresByMonth[m] = SpreadOf(k.monthValues(side, m))
	}
	o.Totals, o.ElectricityByCause = yearTotals(&o.Months)
	k.meanOfLargest(side, &o.Totals)
	for _, f := range Figures() {
		if f.Varies {
			s := SpreadOf(k.values(side, f))
			o.Spread[f.Name] = s
			one(f.Of(&o.Totals), s.Mean)
		}
	}
	return o
}

// one makes a figure and the mean of its years the same number where only rounding
// tells them apart: else a tie would be printed as 2.6 in one place and 2.7 in another.
func one(figure *float64, mean float64) {
	const rounding = 1e-9
	if math.Abs(*figure-mean) <= rounding*math.Abs(mean) {
		*figure = mean
	}
}

// eachYear lists one option's years.
func (k *collector) eachYear(side Side) []YearRecord {
	out := make([]YearRecord, len(k.years[side]))
	for i := range k.years[side] {
		r := &k.years[side][i]
		out[i] = YearRecord{Totals: r.totals, Months: r.months, Bands: r.bands}
	}
	return out
}

// meanOfLargest makes the figures that are the largest of a year the mean of
// their years, not the largest of the mean months.
func (k *collector) meanOfLargest(side Side, t *Totals) {
	for _, f := range Figures() {
		if f.Largest {
			*f.Of(t) = SpreadOf(k.values(side, f)).Mean
		}
	}
}

func (k *collector) values(side Side, f Figure) []float64 {
	out := make([]float64, len(k.years[side]))
	for i := range k.years[side] {
		out[i] = *f.Of(&k.years[side][i].totals)
	}
	return out
}

func (k *collector) monthValues(side Side, month int) []float64 {
	out := make([]float64, len(k.years[side]))
	for i := range k.years[side] {
		out[i] = k.years[side][i].months[month].FailingShowers
	}
	return out
}

// difference compares year with year.
func (k *collector) difference(o *Options) Difference {
	d := Difference{Totals: o.Compact.Totals, Spread: map[string]DifferenceSpread{}}
	d.Totals.add(&o.Cylinder.Totals, -1)
	for _, f := range Figures() {
		if !f.Varies {
			continue
		}
		gaps := k.values(SideCompact, f)
		for i, v := range k.values(SideCylinder, f) {
			gaps[i] -= v
		}
		d.Spread[f.Name] = DifferenceSpread{Spread: SpreadOf(gaps), ShareBetter: shareBetter(gaps, f.Better)}
	}
	return d
}

// tariffCosts sets the options' bills side by side.
func (k *collector) tariffCosts() []TariffCost {
	out := make([]TariffCost, len(k.rates))
	for t, rates := range k.rates {
		gaps := make([]float64, len(k.years[SideCompact]))
		for i := range gaps {
			gaps[i] = k.years[SideCompact][i].costs[t] - k.years[SideCylinder][i].costs[t]
		}
		compact, cylinder := k.bills[SideCompact][t], k.bills[SideCylinder][t]
		out[t] = TariffCost{
			Name: rates.Name(), Primary: t == 0, StandingAYear: rates.StandingPerDay() * calendar.Days,
			Compact: compact, Cylinder: cylinder, Difference: compact.Cost - cylinder.Cost,
			DifferenceOver: DifferenceSpread{Spread: SpreadOf(gaps), ShareBetter: shareBetter(gaps, Less)},
		}
	}
	return out
}
