package plant

import (
	"dhwcompare/compare/relax"
	"dhwcompare/compare/water"
)

// loop is the heating water and metal between heat pump and vessel, as one
// temperature: that of the flow as it reaches the vessel.
type loop struct {
	tempC      float64
	jPerK      float64
	indoorWPK  float64
	outdoorWPK float64
	nearing    relax.Memo
}

func newLoop(p Loop) loop {
	return loop{
		jPerK:      p.WaterL*water.VesselKgPerLitre*water.CpJPerKgK*p.CapacityShare + p.MetalJPerK,
		indoorWPK:  p.IndoorLossWPerK,
		outdoorWPK: p.OutdoorLossWPerK,
	}
}

func (l *loop) heatJ() float64 { return l.tempC * l.jPerK }

// surroundings gives the total loss coefficient and the one temperature that
// stands for room and outdoor air together.
func (l *loop) surroundings(roomC, outdoorC float64) (wPerK, tempC float64) {
	wPerK = l.indoorWPK + l.outdoorWPK
	if wPerK == 0 {
		return 0, roomC
	}
	return wPerK, (l.indoorWPK*roomC + l.outdoorWPK*outdoorC) / wPerK
}

// approach gives the mean of the loop's temperature over dt while it receives
// heatW and passes water of capacity rate wPerK through a vessel whose return is
// slope*flow + interceptC: the exact solution of
//
//	C dT/dt = Q + C_flow ((slope-1) T + intercept) - UA (T - T_around)
func (l *loop) approach(dt, heatW, wPerK, slope, interceptC, lossWPK, aroundC float64) (meanC float64) {
	pull := wPerK*(1-slope) + lossWPK
	final := (heatW + wPerK*interceptC + lossWPK*aroundC) / pull
	x := pull * dt / l.jPerK
	_, mean := l.nearing.Shares(x)
	return l.tempC + (final-l.tempC)*mean
}

// balance sets the loop's temperature from the heat that came and went.
func (l *loop) balance(gainJ float64) { l.tempC += gainJ / l.jPerK }

// idle cools the loop for dt without flow and gives the heat lost, in all and to
// the room.
func (l *loop) idle(dt, roomC, outdoorC float64) (totalJ, indoorJ float64) {
	wPerK, around := l.surroundings(roomC, outdoorC)
	if wPerK == 0 {
		return 0, 0
	}
	fallK := (l.tempC - around) * relax.Share(wPerK*dt/l.jPerK)
	l.tempC -= fallK
	totalJ = fallK * l.jPerK
	// The mean excess over the surroundings follows from the total; the rest is
	// what outdoor air, colder than the room, draws off in any case.
	meanC := around + totalJ/(wPerK*dt)
	return totalJ, l.indoorWPK * (meanC - roomC) * dt
}
