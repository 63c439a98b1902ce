package plant

// hygieneState follows the regular hot spell.
type hygieneState struct {
	dueS   float64 // when the next one is due
	sinceS float64 // when the present one began
	heldS  float64 // how long it has held its temperature
	on     bool
}

// runHygiene begins and ends hot spells. A spell holds once the control sensor
// has read its target for the whole hold; one that takes too long is given up, and
// counted as missed.
func (m *march) runHygiene() {
	h := &m.params.Hygiene
	if h.EveryS <= 0 || m.mode != Normal {
		return
	}
	s := &m.hygiene
	if !s.on {
		if m.t >= s.dueS {
			s.on, s.sinceS, s.heldS = true, m.t, 0
			s.dueS += h.EveryS
		}
		return
	}
	switch {
	case s.heldS >= h.HoldS:
		s.on = false
		m.month.HygieneHeld++
	case m.t-s.sinceS > h.GiveUpS:
		s.on = false
		m.month.HygieneMissed++
	}
}

// holdHygiene counts a step of dt towards the hold.
func (m *march) holdHygiene(dt float64) {
	if m.hygiene.on && m.sensorC+m.params.Control.SensorErrorK >= m.params.Hygiene.TargetC {
		m.hygiene.heldS += dt
	}
}

// hotSpellK is how far above its target a hot spell aims.
const hotSpellK = 2

// hygieneSetpointC is the setpoint of the heat pump during a hot spell: a little
// above the target, or as hot as the unit can make the vessel.
func (m *march) hygieneSetpointC() float64 {
	reach := m.params.HeatPump.HighestFlowC() - m.params.Hygiene.HeadroomK
	return min(m.params.Hygiene.TargetC+hotSpellK, reach)
}

// cutOutC is the temperature of the hottest water, that at the top, at which an
// immersion heater's own cut-out takes it off, whatever asks for it: common practice,
// no source.
const cutOutC = 85

// runImmersion decides whether the immersion heater is on: where it is wanted, unless
// its cut-out has taken it off.
func (m *march) runImmersion() float64 {
	i := &m.params.Immersion
	if i.PowerW <= 0 || !m.wantsImmersion() {
		return 0
	}
	if m.vessel.NearC(1) >= cutOutC {
		m.boosting = false
		return 0
	}
	return i.PowerW
}

// wantsImmersion: in a hot spell the heater does what the heat pump cannot; else it
// helps below its own temperature.
func (m *march) wantsImmersion() bool {
	i := &m.params.Immersion
	if m.hygiene.on && m.hotSpellNeedsHelp() {
		return true
	}
	if i.BoostBelowC <= 0 {
		return false
	}
	hereC := m.vessel.NearC(i.Height)
	if hereC < i.BoostBelowC {
		m.boosting = true
	} else if hereC >= i.BoostBelowC+i.BoostK {
		m.boosting = false
	}
	return m.boosting
}

// hotSpellNeedsHelp: the heat pump cannot reach the goal, or has had half of the
// time that a hot spell is given.
func (m *march) hotSpellNeedsHelp() bool {
	goal := m.params.Hygiene.TargetC + hotSpellK
	if m.sensorC >= goal {
		return false
	}
	late := m.t-m.hygiene.sinceS > m.params.Hygiene.GiveUpS/2
	return late || (m.hygieneSetpointC() < goal && m.duty != forWater)
}
