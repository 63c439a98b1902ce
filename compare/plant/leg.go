package plant

import (
	"dhwcompare/compare/relax"
	"dhwcompare/compare/water"
)

// leg is the pipe from the vessel to one outlet. Its water cools between
// draw-offs; it is worked out only when somebody looks.
type leg struct {
	kg    float64
	tempC float64
	atS   float64 // time for which tempC holds
	inUse int     // draws that run through it now
}

func (l *leg) heatJ() float64 { return l.kg * water.CpJPerKgK * l.tempC }

// cool brings the leg to time t and gives the heat that it lost to the room.
func (l *leg) cool(t, roomC, timeConstantS float64) (lossJ float64) {
	if l.inUse > 0 || t <= l.atS {
		return 0
	}
	fallK := (l.tempC - roomC) * relax.Share((t-l.atS)/timeConstantS)
	l.tempC -= fallK
	l.atS = t
	return l.kg * water.CpJPerKgK * fallK
}
