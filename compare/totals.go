package compare

import (
	"dhwcompare/compare/calendar"
	"dhwcompare/compare/household"
	"dhwcompare/compare/plant"
)

const joulesPerKWh = 3.6e6

// MonthTotals are one option's figures of one month.
type MonthTotals struct {
	Month int `json:"month"` // 1 is January
	Days  int `json:"days"`
	Totals
	ElectricityByCause Causes `json:"electricity_by_cause"`
}

// monthTotals turns a month of the ledger into figures. Figures "per year" are
// those of the month here.
func monthTotals(month int, m *plant.Month) MonthTotals {
	shower, bath, tap := &m.Draws[household.Shower], &m.Draws[household.Bath], &m.Draws[household.Tap]
	t := Totals{
		ElectricityKWh:    m.Electricity() / joulesPerKWh,
		WholeHouseKWh:     (m.Electricity() + m.HouseElectricity()) / joulesPerKWh,
		ImmersionKWh:      m.ImmersionHeat / joulesPerKWh,
		DefrostHeatKWh:    m.DefrostHeat / joulesPerKWh,
		LoopToHouseKWh:    (m.LoopToHouse - m.LoopFromHouse) / joulesPerKWh,
		Changeovers:       float64(m.Changeovers),
		Defrosts:          float64(m.Defrosts),
		HygieneMissed:     float64(m.HygieneMissed),
		TepidHours:        m.TepidS / calendar.HourS,
		HeatingHeatKWh:    m.HeatingHeat / joulesPerKWh,
		CreditedKWh:       m.Credited / joulesPerKWh,
		SummerGainKWh:     (m.HouseFromWater - m.Credited) / joulesPerKWh,
		HeatingStarts:     float64(m.HeatingStarts),
		HeatingDefrosts:   float64(m.HeatingDefrosts),
		InterruptedHours:  m.InterruptedS / calendar.HourS,
		LongestGapMin:     m.LongestGapS / secondsPerMinute,
		WorstDipK:         m.WorstDipK,
		WantedHeatKWh:     m.Wanted / joulesPerKWh,
		HeatToTapsKWh:     m.Delivered / joulesPerKWh,
		UnmetHeatKWh:      (m.Wanted - m.Delivered) / joulesPerKWh,
		HeatPumpHeatKWh:   m.HeatPumpHeat / joulesPerKWh,
		DeadLegLossKWh:    m.DeadLegLoss / joulesPerKWh,
		VesselLossKWh:     m.VesselLoss / joulesPerKWh,
		LoopLossKWh:       m.LoopLoss / joulesPerKWh,
		StoreGainKWh:      m.StoreGain / joulesPerKWh,
		RunHours:          m.RunS / calendar.HourS,
		ExtrapolatedHours: m.ExtrapolatedS / calendar.HourS,
		StartsPerYear:     float64(m.Starts),
		Showers:           float64(shower.Count),
		FailingShowers:    float64(shower.Failed),
		Baths:             float64(bath.Count),
		FailingBaths:      float64(bath.Failed),
		TapDraws:          float64(tap.Count),
		FailingTaps:       float64(tap.Failed),
		TooColdMinutes:    shower.ColdS / secondsPerMinute,
		WaitMinutes:       (shower.WaitS + bath.WaitS + tap.WaitS) / secondsPerMinute,
	}
	out := MonthTotals{Month: month + 1, Days: calendar.DaysIn(month), Totals: t, ElectricityByCause: causesOf(m)}
	out.derive(float64(out.Days), compressorKWh(&out.Totals, &out.ElectricityByCause))
	return out
}

// derive fills the figures that are ratios of others. The COP is of the heat that
// stayed in the water, after what defrosts took back.
func (t *Totals) derive(days, compressorKWh float64) {
	t.SystemEfficiency = ratio(t.HeatToTapsKWh, t.ElectricityKWh)
	t.HeatPumpCOP = ratio(t.HeatPumpHeatKWh-t.DefrostHeatKWh, compressorKWh)
	t.StartsPerDay = t.StartsPerYear / days
	t.MinutesPerRun = ratio(t.RunHours*minutesPerHour, t.StartsPerYear+t.Changeovers)
}

// ratio is a/b, and 0 where b is 0: nothing ran, so nothing can be said.
func ratio(a, b float64) float64 {
	if b == 0 {
		return 0
	}
	return a / b
}

// yearTotals adds up the months of a year.
func yearTotals(months *[calendar.MonthsInAYear]MonthTotals) (Totals, Causes) {
	var t Totals
	var c Causes
	for i := range months {
		t.add(&months[i].Totals, 1)
		c.add(&months[i].ElectricityByCause, 1)
	}
	for _, f := range Figures() {
		if f.Largest {
			largest := 0.0
			for i := range months {
				largest = max(largest, *f.Of(&months[i].Totals))
			}
			*f.Of(&t) = largest
		}
	}
	t.derive(calendar.Days, compressorKWh(&t, &c))
	return t, c
}

// compressorKWh is the electricity of the compressor for hot water alone.
func compressorKWh(t *Totals, c *Causes) float64 {
	return t.ElectricityKWh - c.Pump - c.Standby - c.Immersion
}

// add adds another's figures, weighted. Ratios are added too and mean nothing
// until derive is called.
func (t *Totals) add(o *Totals, weight float64) {
	for _, f := range Figures() {
		*f.Of(t) += weight * *f.Of(o)
	}
}
