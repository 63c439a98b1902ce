package compare

import "dhwcompare/compare/plant"

// Causes divides electricity by what it was for. The parts exclude each other
// and add up to the electricity exactly. Electricity that made heat is divided
// as the heat was: what reached the taps, and each loss.
type Causes struct {
	TapHeat    float64 `json:"tap_heat"`
	DeadLegs   float64 `json:"dead_legs"`
	VesselLoss float64 `json:"vessel_loss"`
	LoopLoss   float64 `json:"loop_loss"`
	ToHouse    float64 `json:"loop_heat_to_house"`
	StartUp    float64 `json:"start_up"`
	Defrost    float64 `json:"defrost"`
	Pump       float64 `json:"pump"`
	Standby    float64 `json:"standby"`
	Immersion  float64 `json:"immersion"`
}

// Cause names one part of Causes.
type Cause struct {
	Name, Label string
	Of          func(*Causes) *float64
}

// CauseList lists the parts in the order in which they are shown.
func CauseList() []Cause {
	return []Cause{
		{"tap_heat", "heat at the taps", func(c *Causes) *float64 { return &c.TapHeat }},
		{"dead_legs", "pipes to the taps", func(c *Causes) *float64 { return &c.DeadLegs }},
		{"vessel_loss", "vessel loss", func(c *Causes) *float64 { return &c.VesselLoss }},
		{"loop_loss", "loop loss", func(c *Causes) *float64 { return &c.LoopLoss }},
		{"loop_heat_to_house", "loop heat handed to heating", func(c *Causes) *float64 { return &c.ToHouse }},
		{"start_up", "starting", func(c *Causes) *float64 { return &c.StartUp }},
		{"defrost", "defrosting", func(c *Causes) *float64 { return &c.Defrost }},
		{"pump", "circulation pump", func(c *Causes) *float64 { return &c.Pump }},
		{"standby", "standby", func(c *Causes) *float64 { return &c.Standby }},
		{"immersion", "immersion heater", func(c *Causes) *float64 { return &c.Immersion }},
	}
}

// Sum adds up the parts.
func (c *Causes) Sum() float64 {
	sum := 0.0
	for _, cause := range CauseList() {
		sum += *cause.Of(c)
	}
	return sum
}

func (c *Causes) add(o *Causes, weight float64) {
	for _, cause := range CauseList() {
		*cause.Of(c) += weight * *cause.Of(o)
	}
}

// causesOf divides a month's electricity. Loop heat that heating handed over in
// exchange for more is not hot water's to divide: only what went to the house on
// balance counts.
func causesOf(m *plant.Month) Causes {
	c := Causes{
		StartUp:   m.ElectricGone / joulesPerKWh,
		Defrost:   m.ElectricDefrost / joulesPerKWh,
		Pump:      m.ElectricPump / joulesPerKWh,
		Standby:   m.ElectricIdle / joulesPerKWh,
		Immersion: m.ImmersionHeat / joulesPerKWh,
	}
	toHouse := max(0, m.LoopToHouse-m.LoopFromHouse)
	heat := m.Delivered + m.DeadLegLoss + m.VesselLoss + m.LoopLoss + m.DefrostHeat + toHouse
	if heat <= 0 {
		// Nothing was heated to be divided; a run that only warmed the store.
		c.VesselLoss = m.ElectricRun / joulesPerKWh
		return c
	}
	perHeat := m.ElectricRun / joulesPerKWh / heat
	c.TapHeat, c.DeadLegs = perHeat*m.Delivered, perHeat*m.DeadLegLoss
	c.VesselLoss, c.LoopLoss = perHeat*m.VesselLoss, perHeat*m.LoopLoss
	c.Defrost += perHeat * m.DefrostHeat
	c.ToHouse = perHeat * toHouse
	return c
}
