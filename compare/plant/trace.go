package plant

// Sample is the state of the plant over one step, for traces and pictures.
type Sample struct {
	T, Dt                   float64 // start and length of the step, s
	OutdoorC, MainsC        float64
	BottomC, MiddleC, TopC  float64 // of the vessel, after the step
	OutletC                 float64 // water at the vessel's hot outlet
	FlowC, ReturnC          float64 // leaving and returning water at the heat pump
	Running                 bool
	HeatW, ElectricW, PumpW float64
	Draws                   []DrawSample // draws in progress; valid until the next step
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

// sample describes a draw during the step in hand.
func (g *drawing) sample(outletC, mainsC float64) DrawSample {
	supplyC := outletC
	if g.flushKg > 0 || g.warmKg > 0 {
		supplyC = g.legC
	}
	return DrawSample{
		Kind: g.draw.Kind.String(), Outlet: g.draw.Outlet, Waiting: g.flushKg > 0, WantC: g.draw.WantC,
		DeliveredC:  mainsC + g.share*(supplyC-mainsC),
		FlowLPerMin: g.mixedKgPerS / g.kgPerL * secondsPerMinute,
	}
}
