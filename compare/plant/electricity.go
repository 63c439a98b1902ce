package plant

import "dhwcompare/compare/calendar"

// bookElectricity adds a step's electricity to its month and half hour.
func (m *march) bookElectricity(dt float64) {
	immersion := m.step.immersionW * dt
	m.month.ImmersionHeat += immersion
	m.spent.hotWaterJ += m.step.hotWaterJ
	m.spent.immersionJ += immersion
	m.spent.heatingJ += m.step.houseElectricJ
	m.spent.overS += dt
}

// spent is the electricity of the half hour in hand.
type spent struct {
	hotWaterJ, immersionJ, heatingJ float64
	overS                           float64
}

// closeHalfHour books what is spent all the time, and the half hour.
func (m *march) closeHalfHour() {
	const joulesPerKWh = 3.6e6
	s := m.spent
	m.spent = spent{}
	idleJ, houseJ := m.params.Power.StandbyW*s.overS, m.params.Power.HouseW*s.overS
	m.month.ElectricIdle += idleJ
	m.month.ElectricHouseIdle += houseJ
	if m.ledger.HalfHourKWh[HotWater] == nil {
		return
	}
	i := calendar.WrapHalfHour(m.halfHour)
	m.ledger.HalfHourKWh[HotWater][i] += s.hotWaterJ / joulesPerKWh
	m.ledger.HalfHourKWh[ImmersionHeat][i] += s.immersionJ / joulesPerKWh
	m.ledger.HalfHourKWh[Standby][i] += idleJ / joulesPerKWh
	m.ledger.HalfHourKWh[Heating][i] += (s.heatingJ + houseJ) / joulesPerKWh
}
