package plant

// House is the building that the same heat pump heats: one lump of heat capacity
// behind one heat loss coefficient. The zero House needs no heat.
type House struct {
	LossWPerK     float64 // heat loss coefficient; 0: no house
	CapacityJPerK float64
	RoomC         float64 // kept by heating
	BaseC         float64 // outdoor temperature below which heat is needed; gains do the rest
	DesignC       float64 // outdoor temperature for which FlowDesignC is meant
	FlowDesignC   float64 // heating flow at DesignC
	FlowBaseC     float64 // heating flow at BaseC
	MinRunS       float64 // least heating run that the thermostat aims at
	HeatedShare   float64 // share of vessel, pipe and loop losses indoors that lands in heated rooms
	// TankWasteWPerK is what a tank in the heating circuit loses to rooms that are not
	// heated, while heating runs.
	TankWasteWPerK float64
}

// there reports whether there is a house at all.
func (h *House) there() bool { return h.LossWPerK > 0 }

// flowC is the weather-compensated flow temperature: a straight line from BaseC
// to DesignC, held level beyond.
func (h *House) flowC(outdoorC float64) float64 {
	share := (h.BaseC - outdoorC) / (h.BaseC - h.DesignC)
	return h.FlowBaseC + (h.FlowDesignC-h.FlowBaseC)*min(max(share, 0), 1)
}

// gainsW are the steady gains that make BaseC the outdoor temperature at which
// no heat is needed.
func (h *House) gainsW() float64 { return h.LossWPerK * (h.RoomC - h.BaseC) }

// steadyNeedW is the heat that holds RoomC, 0 when none is needed.
func (h *House) steadyNeedW(outdoorC float64) float64 {
	return max(0, h.LossWPerK*(h.BaseC-outdoorC))
}

// Constants of the heating thermostat.
const (
	recoverS = 3600.0 // a deficit is made up in about this time, capacity permitting
	ventK    = 1.0    // rooms warmer than RoomC by this are aired
)

// room is the state of the house.
type room struct {
	tempC     float64
	gapS      float64 // how long heat has been missing
	lostJ     float64 // what hot water lost into the rooms since the half hour began
	needJ     float64 // and what heating would have had to give
	creditedJ float64 // of the two, what has been credited
}

// deficitJ is the heat that brings the house back to RoomC.
func (r *room) deficitJ(h *House) float64 { return h.CapacityJPerK * (h.RoomC - r.tempC) }

// needW is the heat wanted now, a deficit included.
func (r *room) needW(h *House, outdoorC float64) float64 {
	return max(0, h.LossWPerK*(h.BaseC-outdoorC)+r.deficitJ(h)/recoverS)
}

// live books dt of the house: heat from the heat pump, heat from the hot-water
// side's losses, gains and the loss outdoors. Rooms that get too warm are aired.
func (r *room) live(h *House, dt, heatJ, lostHeatJ, outdoorC float64, m *Month) {
	lossJ := h.LossWPerK * (r.tempC - outdoorC) * dt
	gainJ := h.gainsW() * dt
	r.tempC += (heatJ + lostHeatJ + gainJ - lossJ) / h.CapacityJPerK
	if tooWarmK := r.tempC - h.RoomC - ventK; tooWarmK > 0 {
		m.HouseAired += tooWarmK * h.CapacityJPerK
		r.tempC -= tooWarmK
	}
	r.lostJ += lostHeatJ
	r.needJ += h.steadyNeedW(outdoorC) * dt
	credit := min(r.lostJ, r.needJ)
	m.Credited += credit - r.creditedJ
	r.creditedJ = credit

	m.HouseHeat += heatJ
	m.HouseLoss += lossJ
	m.HouseGain += gainJ
	m.HouseFromWater += lostHeatJ
	if dipK := h.RoomC - r.tempC; dipK > m.WorstDipK {
		m.WorstDipK = dipK
	}
}

// missing notes dt without heating while the house needs it.
func (r *room) missing(dt float64, needs bool, m *Month) {
	if !needs {
		r.gapS = 0
		return
	}
	r.gapS += dt
	m.InterruptedS += dt
	m.LongestGapS = max(m.LongestGapS, r.gapS)
}

// weighAnew begins the half hour over which losses are set against what heating
// would have had to give: not each step, since a pipe's cooling is booked when its
// outlet is next used.
func (r *room) weighAnew() { r.lostJ, r.needJ, r.creditedJ = 0, 0, 0 }
