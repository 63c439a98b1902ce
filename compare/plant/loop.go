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
	lossWPK    float64 // to both
	aroundC    float64
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

// stand notes what surrounds the loop: one temperature stands for room and outdoor air
// together.
func (l *loop) stand(roomC, outdoorC float64) {
	l.lossWPK, l.aroundC = l.indoorWPK+l.outdoorWPK, roomC
	if l.lossWPK > 0 {
		l.aroundC = (l.indoorWPK*roomC + l.outdoorWPK*outdoorC) / l.lossWPK
	}
}

// approach gives the mean of the loop's temperature over dt while it receives
// heatW and passes water of capacity rate wPerK through a vessel whose return is
// slope*flow + interceptC: the exact solution of
//
//	C dT/dt = Q + C_flow ((slope-1) T + intercept) - UA (T - T_around)
func (l *loop) approach(dt, heatW, wPerK, slope, interceptC float64) (meanC float64) {
	pull := wPerK*(1-slope) + l.lossWPK
	final := (heatW + wPerK*interceptC + l.lossWPK*l.aroundC) / pull
	x := pull * dt / l.jPerK
	_, mean := l.nearing.Shares(x)
	return l.tempC + (final-l.tempC)*mean
}

// balance sets the loop's temperature from the heat that came and went.
func (l *loop) balance(gainJ float64) { l.tempC += gainJ / l.jPerK }

// idle cools the loop for dt without flow and gives the heat lost, in all and to
// the room.
func (l *loop) idle(dt, roomC float64) (totalJ, indoorJ float64) {
	if l.lossWPK == 0 {
		return 0, 0
	}
	fallK := (l.tempC - l.aroundC) * relax.Share(l.lossWPK*dt/l.jPerK)
	l.tempC -= fallK
	totalJ = fallK * l.jPerK
	// The mean excess over the surroundings follows from the total; the rest is
	// what outdoor air, colder than the room, draws off in any case.
	return totalJ, l.indoorWPK * ((l.aroundC-roomC)*dt + totalJ/l.lossWPK)
}
