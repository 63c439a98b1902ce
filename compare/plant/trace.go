package plant

// Sample is the state of the plant over one part of a step, for traces and pictures;
// electricity and room temperature are those of the step.
type Sample struct {
	T, Dt                   float64 // start and length of the part, s
	OutdoorC, MainsC        float64
	BottomC, MiddleC, TopC  float64 // of the vessel, after the part
	OutletC                 float64 // water at the vessel's hot outlet
	FlowC, ReturnC          float64 // leaving and returning water at the heat pump
	Running                 bool    // the compressor runs for hot water
	Defrosting              bool
	HeatW, ElectricW, PumpW float64      // for hot water
	ImmersionW              float64      // of the immersion heater
	HouseW, HouseElectricW  float64      // for the house
	RoomTempC               float64      // of the house
	Draws                   []DrawSample // draws in progress
}

// DrawSample is one draw-off in progress.
type DrawSample struct {
	Kind        string
	Outlet      int
	Waiting     bool // the cooled water of the dead leg is still running out
	WantC       float64
	DeliveredC  float64
	FlowLPerMin float64
}

// Recorder says where a run's results go. Both parts may be nil.
type Recorder struct {
	Ledger *Ledger
	Trace  func(*Sample)
}

// sample describes a draw during the step just taken.
func (g *drawing) sample() DrawSample {
	return DrawSample{
		Kind: g.draw.Kind.String(), Outlet: g.draw.Outlet, Waiting: g.waiting, WantC: g.draw.WantC,
		DeliveredC:  g.deliveredC,
		FlowLPerMin: g.mixedKgPerS / g.kgPerL * secondsPerMinute,
	}
}

// record keeps a part of the step for the trace.
func (m *march) record(dt float64) {
	s := m.sample
	s.T, s.Dt, s.OutdoorC, s.MainsC, s.Running = m.t, dt, m.outdoorC, m.mainsC, m.duty == forWater
	s.BottomC, s.MiddleC, s.TopC = m.vessel.AtC(0), m.vessel.AtC(0.5), m.vessel.AtC(1)
	s.OutletC, s.ImmersionW = m.part.outletC, m.step.immersionW
	s.Draws = nil
	for i := range m.active {
		s.Draws = append(s.Draws, m.active[i].sample())
	}
	m.parts = append(m.parts, s)
}

// hand gives the trace the parts of the step, now that it is known what electricity it
// took and what the house made of it.
func (m *march) hand() {
	for i := range m.parts {
		m.parts[i].ElectricW, m.parts[i].RoomTempC = m.sample.ElectricW, m.room.tempC
		m.trace(&m.parts[i])
	}
	m.parts = m.parts[:0]
}
