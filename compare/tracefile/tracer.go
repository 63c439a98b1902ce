package tracefile

import (
	"context"
	"io"

	"dhwcompare/compare/household"
	"dhwcompare/compare/plant"
)

const (
	minuteS = 60
	slackS  = 1e-6 // steps meet the clock to within this
)

// tracer turns the engine's steps into rows.
type tracer struct {
	out     io.Writer
	failed  context.CancelCauseFunc
	option  string
	outlets []household.Outlet
	line    []byte

	started bool
	before  heights // at the start of the step in hand
	minute  int     // that ends next
	sinceS  float64 // end of the last minute row or step
	workJ   powers  // times time, since the last minute row
}

// heights are the vessel's temperatures.
type heights struct{ bottomC, middleC, topC float64 }

// powers are what runs, W, in the order of the columns: heat, compressor, pump
// and immersion heater for hot water; heat and compressor for the house.
type powers [6]float64

func powersOf(s *plant.Sample) powers {
	return powers{s.HeatW, s.ElectricW, s.PumpW, s.ImmersionW, s.HouseW, s.HouseElectricW}
}

func newTracer(out io.Writer, option string, outlets []household.Outlet) *tracer {
	return &tracer{out: out, option: option, outlets: outlets, minute: 1, failed: func(error) {}}
}

// sample takes a step of the engine.
func (t *tracer) sample(s *plant.Sample) {
	after := heights{s.BottomC, s.MiddleC, s.TopC}
	if !t.started {
		t.started, t.before, t.sinceS = true, after, s.T
	}
	end := s.T + s.Dt
	for m := float64(t.minute) * minuteS; m <= end+slackS; m = float64(t.minute) * minuteS {
		t.spend(s, m)
		t.minuteRow(s, m, between(t.before, after, (m-s.T)/s.Dt))
		t.minute++
	}
	t.spend(s, end)
	for i := range s.Draws {
		t.drawRow(s, &s.Draws[i], end, after)
	}
	t.before = after
	const full = 1 << 16
	if len(t.line) > full {
		if err := t.flush(); err != nil {
			t.failed(err)
		}
	}
}

// spend books what the step used from the last booking up to a time.
func (t *tracer) spend(s *plant.Sample, untilS float64) {
	dt := max(untilS-t.sinceS, 0)
	for i, w := range powersOf(s) {
		t.workJ[i] += w * dt
	}
	t.sinceS = untilS
}

// between interpolates over a step; at rest a step may last many minutes.
func between(a, b heights, share float64) heights {
	share = min(share, 1)
	mix := func(x, y float64) float64 { return x + share*(y-x) }
	return heights{mix(a.bottomC, b.bottomC), mix(a.middleC, b.middleC), mix(a.topC, b.topC)}
}

// flush hands on the rows collected.
func (t *tracer) flush() error {
	_, err := t.out.Write(t.line)
	t.line = t.line[:0]
	return err
}
