package coil

import "dhwcompare/compare/water"

// The tube is cut into at least this many pieces; four times as many move UA by
// 0.1 % at most.
const marchPieces = 200

// Result is what a coil does in one steady flow.
type Result struct {
	UAWPerK        float64 // sum over the tube, on the local difference
	OutletC        float64
	HeatW          float64 // into the mains water
	Effectiveness  float64 // of the difference between the last layer and mains; 0 when they are equal
	InsideWPerM2K  float64 // mean film coefficient along the tube
	OutsideWPerM2K float64 // mean film coefficient along the tube
	InletRe        float64
	OutletRe       float64
}

// UA marches the full chain of resistances along a coil in a store of one
// temperature: mains water in at mainsInC, at a flow metered there.
//
//	1/UA' = 1/(h_i A_i) + wall + fouling + 1/(h_o A_o), per metre of tube
//	T_out = T_s - (T_s - T_in) exp(-UA' dL/C), piece by piece
//
// Films as in [InsideNusselt] and [OutsideNusselt]. The geometry must pass
// [Geometry.Check] and the flow be above 0; without flow see [StillUA].
func UA(g Geometry, storeC, mainsInC, flowLPerMin float64) Result {
	return UALayers(g, []float64{storeC}, mainsInC, flowLPerMin)
}

// UALayers is [UA] in a store of layers: layersC are their temperatures in the
// order in which the mains water meets them, each with the same length of tube.
// There must be at least one.
func UALayers(g Geometry, layersC []float64, mainsInC, flowLPerMin float64) Result {
	pieces := (marchPieces + len(layersC) - 1) / len(layersC)
	m := march{
		tube:     g.perMetre(),
		flow:     flowLPerMin,
		mainsC:   mainsInC,
		capacity: water.CapacityRateWPerK(flowLPerMin, mainsInC),
		pieceM:   g.LengthM / float64(pieces*len(layersC)),
		waterC:   mainsInC,
	}
	for _, layerC := range layersC {
		for range pieces {
			m.step(layerC)
		}
	}
	return m.result(pieces*len(layersC), layersC[len(layersC)-1])
}

// march is the state of the water on its way through the tube.
type march struct {
	tube
	flow, mainsC, capacity, pieceM float64
	waterC                         float64
	sumUA, sumInside, sumOutside   float64
}

// step takes the water through one piece of tube, with films at the temperature
// at which it enters.
func (m *march) step(storeC float64) {
	h := m.insideWPerM2K(m.reynolds(m.flow, m.mainsC, m.waterC), m.waterC)
	l := m.solve(1/(h*m.insideM2PerM), m.waterC, storeC)
	ua := l.uaWPerMK * m.pieceM
	m.waterC = Pass(m.waterC, storeC, ua, m.capacity)
	m.sumUA += ua
	m.sumInside += h
	m.sumOutside += l.outsideWPerM2K
}

func (m *march) result(pieces int, lastC float64) Result {
	r := Result{
		UAWPerK:        m.sumUA,
		OutletC:        m.waterC,
		HeatW:          m.capacity * (m.waterC - m.mainsC),
		InsideWPerM2K:  m.sumInside / float64(pieces),
		OutsideWPerM2K: m.sumOutside / float64(pieces),
		InletRe:        m.reynolds(m.flow, m.mainsC, m.mainsC),
		OutletRe:       m.reynolds(m.flow, m.mainsC, m.waterC),
	}
	if span := lastC - m.mainsC; span != 0 {
		r.Effectiveness = (m.waterC - m.mainsC) / span
	}
	return r
}
