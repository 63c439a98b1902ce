package plant

import (
	"context"
	"fmt"
	"math"
	"sort"

	"dhwcompare/climate"
	"dhwcompare/compare/calendar"
	"dhwcompare/compare/heatpump"
	"dhwcompare/compare/household"
	"dhwcompare/compare/relax"
	"dhwcompare/compare/vessel"
)

// Inputs is what the outside world does to the plant.
type Inputs struct {
	Weather *climate.Series
	Draws   []household.Draw // sorted by start
}

// Mode says how the heat pump is run.
type Mode int

// The ways of running the heat pump. All but Normal are for timed tests of hot
// water: the house is left alone.
const (
	Normal    Mode = iota // by its controls
	Off                   // it stays off
	On                    // it runs from the start until its water gets too hot
	InDefrost             // as On, but a defrost has just begun
)

// Override replaces the controls for a timed test.
type Override struct {
	Mode      Mode
	OutputCap float64 // in place of the control's; 0 keeps that
}

// march is a run in progress.
type march struct {
	*Plant
	in          Inputs
	mode        Mode
	outputCap   float64
	ledger      *Ledger
	trace       func(*Sample)
	sample      Sample
	allowed     cursor
	raised      []cursor
	raisedTo    int // the last of them that is open, or -1
	t           float64
	endS        float64
	nextDraw    int
	halfHour    int     // counted from the start of the year, may lie outside it
	untilS      float64 // end of the half hour in hand
	openS       float64 // when a schedule changes next
	open        bool
	setpointC   float64
	outdoorC    float64
	rhPercent   float64
	mainsC      float64
	growth      float64 // of frost
	heating     weather
	returning   returning
	month       *Month
	monthNo     int
	held        holding // when the month began
	step        step
	spent       spent
	aroundC     float64 // water around the sensor
	aroundKPerS float64 // and how fast it changed in the last step
	lagging     relax.Memo
	stuck       bool           // a step has no end
	part        part           // of the step
	parts       []Sample       // of the step in hand, for the trace
	flows       vessel.Flows   // through the vessel in the part in hand
	pointNow    heatpump.Point // of the heat pump for hot water
	pointKnown  bool           // for the step in hand
}

// holding is the heat in the plant's two sides.
type holding struct{ waterJ, houseLoopJ, roomsJ float64 }

// Run marches the plant from one time to another, in seconds of standard time
// since the start of the year. Weather wraps round the year; draw-offs that
// start in the stretch are served, and those still in progress at its end are
// cut off there. Whatever stretch came before, the plant goes on from its present
// state.
func (p *Plant) Run(ctx context.Context, from, to float64, in Inputs, o Override, rec Recorder) error {
	m := p.prepare(from, to, in, o, rec)
	for m.t < to {
		if m.t >= m.untilS {
			m.closeHalfHour()
			m.halfHour++
			m.enterHalfHour()
			if err := ctx.Err(); err != nil {
				return err
			}
		}
		m.startDraws()
		m.decide()
		m.plan()
		m.march()
		if m.stuck {
			return fmt.Errorf("the calculation does not get on at second %.3f of the year: this is an error of the program, please report it with the case", m.t)
		}
	}
	m.endDraws(true)
	m.closeHalfHour()
	m.closeMonth()
	p.nowS = to
	return nil
}

func (p *Plant) prepare(from, to float64, in Inputs, o Override, rec Recorder) *march {
	p.setClock(from)
	m := &march{
		Plant: p, in: in, mode: o.Mode, outputCap: o.OutputCap,
		ledger: rec.Ledger, trace: rec.Trace, t: from, endS: to, openS: from, monthNo: -1,
		flows: vessel.Flows{RoomC: p.params.RoomC, ImmersionHeight: p.params.Immersion.Height},
	}
	if m.outputCap == 0 {
		m.outputCap = p.params.Control.OutputCap
	}
	if m.ledger == nil {
		m.ledger = &Ledger{}
	}
	m.allowed = p.params.Control.Allowed.at(from)
	for _, r := range p.params.Control.Raised {
		m.raised = append(m.raised, r.When.at(from))
	}
	m.nextDraw = sort.Search(len(in.Draws), func(i int) bool { return in.Draws[i].StartS >= from })
	m.halfHour = int(math.Floor(from / calendar.HalfHourS))
	m.enterHalfHour()
	m.aroundC = m.vessel.AtC(m.params.Control.SensorHeight)
	if m.mode != Normal && m.duty == forHouse {
		m.leaveHouse()
	}
	if m.mode == InDefrost {
		m.beginWater()
		m.frost.defrostLeft = p.params.Frost.DurationS
	}
	return m
}

// enterHalfHour looks up the weather and, on a month's first half hour, closes
// the month before.
func (m *march) enterHalfHour() {
	start := float64(m.halfHour) * calendar.HalfHourS
	m.untilS = start + calendar.HalfHourS
	m.room.weighAnew()
	m.outdoorC, m.rhPercent, m.mainsC = m.in.Weather.At(start)
	m.loop.stand(m.params.RoomC, m.outdoorC)
	m.growth = m.params.Frost.growth(m.outdoorC, m.rhPercent)
	m.readHouse()
	if now := calendar.MonthOfDay(calendar.DayOf(start)); now != m.monthNo {
		if m.monthNo >= 0 {
			m.closeMonth()
		}
		m.monthNo, m.month = now, &m.ledger.Months[now]
		m.held = m.holds()
	}
}

// closeMonth brings the pipes up to date and books what the plant has kept.
func (m *march) closeMonth() {
	for i := range m.legs {
		m.coolLeg(&m.legs[i])
	}
	now := m.holds()
	m.month.StoreGain += now.waterJ - m.held.waterJ
	m.month.HeatingLoopGain += now.houseLoopJ - m.held.houseLoopJ
	m.month.HouseKept += now.roomsJ - m.held.roomsJ
	m.held = now
}

func (m *march) holds() holding {
	return holding{m.heatJ(), m.houseLoopJ(), m.params.House.CapacityJPerK * m.room.tempC}
}

// coolLeg brings one pipe up to date; its heat went into the rooms.
func (m *march) coolLeg(l *leg) {
	lost := l.cool(m.t, m.params.RoomC, m.params.Supply.DeadLegCoolS)
	m.month.DeadLegLoss += lost
	m.step.indoorJ += lost
}

func (m *march) startDraws() {
	for m.nextDraw < len(m.in.Draws) && m.in.Draws[m.nextDraw].StartS <= m.t {
		m.begin(&m.in.Draws[m.nextDraw])
		m.nextDraw++
	}
}

// endDraws closes the draws that are over; with all, every one.
func (m *march) endDraws(all bool) {
	kept := m.active[:0]
	for i := range m.active {
		g := &m.active[i]
		if !all && !g.over(m.mainsC) {
			kept = append(kept, *g)
			continue
		}
		m.ledger.Outcomes = append(m.ledger.Outcomes, m.end(g, m.t, m.month))
	}
	m.active = kept
}
