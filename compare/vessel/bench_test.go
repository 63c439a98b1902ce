package vessel

import (
	"math"
	"testing"
	"time"

	"dhwcompare/compare/checkvalues"
	"dhwcompare/compare/water"
)

// BenchmarkSolverCases marches the four cases of testdata/solver in the steps that the
// plant takes, without the plant. Beside the mean time it gives that of the quickest
// repeat, which other work on the machine hardly touches, and how far the march is from
// the solver's tables: the outlet in K, root mean square, and the largest of heat drawn,
// charged and held, as a share. testdata/speed sets plain C and a general solver beside it.
func BenchmarkSolverCases(b *testing.B) {
	for _, c := range solverCases() {
		b.Run(c.name, func(b *testing.B) {
			rows, start := checkvalues.Rows(b, "solver/"+c.name+".csv"), c.vessel.Snapshot()
			endS := rows[len(rows)-1].Number(b, "time_s")
			least, steps := time.Duration(math.MaxInt64), 0
			for b.Loop() {
				c.vessel.Restore(start)
				began := time.Now()
				steps = 0
				for way := (course{solverCase: c}); way.atS < endS; steps++ {
					way.step(endS)
				}
				least = min(least, time.Since(began))
			}
			c.vessel.Restore(start)
			outletK, energy := (&course{solverCase: c}).deviation(b, rows)
			b.ReportMetric(float64(c.layers()), "layers")
			b.ReportMetric(float64(steps), "steps")
			b.ReportMetric(float64(least.Nanoseconds()), "least-ns")
			b.ReportMetric(outletK*1000, "outlet-mK")
			b.ReportMetric(energy*1e6, "energy-ppm")
		})
	}
}

func (c *solverCase) layers() int {
	if s, compact := c.vessel.(*Compact); compact {
		return len(s.temps)
	}
	return len(c.vessel.(*Cylinder).temps)
}

// course is a case on its way. What heat a step brought too little, because the return
// rose while it lasted, comes with the next, as from the loop of a plant.
type course struct {
	solverCase
	atS, owedJ       float64
	drawnJ, chargedJ float64
}

// longestS is the longest part of a step of the plant (compare/plant/parts.go) in such a
// state: the plant cuts its steps after a minute.
func (c *course) longestS() float64 {
	const stepS = 60
	return min(stepS, c.vessel.StepLimitS(c.flows.DrawKgPerS, c.flows.PrimaryKgPerS))
}

func (c *course) step(endS float64) {
	f := c.flows
	f.MainsC, f.RoomC, f.DtS = 10, 20, min(c.longestS(), endS-c.atS)
	if c.heatW > 0 {
		slope, interceptC := c.vessel.ReturnLine(f.PrimaryKgPerS, f.DtS)
		heatW := c.heatW + c.owedJ/f.DtS
		f.FlowInC = (heatW/(f.PrimaryKgPerS*water.CpJPerKgK) + interceptC) / (1 - slope)
	}
	r := c.vessel.Step(&f)
	c.owedJ += c.heatW*f.DtS - r.PrimaryInJ
	c.drawnJ += f.DrawKgPerS * f.DtS * water.CpJPerKgK * (r.DrawOutC - f.MainsC)
	c.chargedJ += r.PrimaryInJ
	c.atS += f.DtS
	if endS-c.atS < 1e-9 {
		c.atS = endS
	}
}

// deviation marches the case and says how far it is from the table: the outlet over
// each ten seconds or each step, whichever is longer, its mean while water is drawn.
func (c *course) deviation(t testing.TB, rows []checkvalues.Row) (outletK, energy float64) {
	const sampleS = 10
	first, last := rows[0], rows[len(rows)-1]
	endS, stretches := last.Number(t, "time_s"), 0.0
	var sinceS, wasJ, wasTrueJ float64
	for c.atS < endS {
		c.step(endS)
		if c.atS-sinceS < sampleS-1e-6 {
			continue
		}
		offK := c.vessel.OutletC() - between(t, rows, c.atS, "outlet_C")
		if wPerK := c.flows.DrawKgPerS * water.CpJPerKgK; wPerK > 0 {
			trueJ := drawnJ(t, rows, c.atS, wPerK)
			offK = (c.drawnJ - wasJ - (trueJ - wasTrueJ)) / (wPerK * (c.atS - sinceS))
			wasJ, wasTrueJ = c.drawnJ, trueJ
		}
		outletK += offK * offK
		sinceS, stretches = c.atS, stretches+1
	}
	energy = math.Abs(c.vessel.HeatJ()/1000-last.Number(t, "held_kJ")) / first.Number(t, "held_kJ")
	for key, gotJ := range map[string]float64{"drawn_kJ": c.drawnJ, "charged_kJ": c.chargedJ} {
		if want := last.Number(t, key); want > 0 {
			energy = max(energy, math.Abs(gotJ/1000/want-1))
		}
	}
	return math.Sqrt(outletK / stretches), energy
}

// place gives the row before a moment and the share of the way to the next.
func place(t testing.TB, rows []checkvalues.Row, atS float64) (before int, share float64) {
	first, second := rows[0].Number(t, "time_s"), rows[1].Number(t, "time_s")
	x := (atS - first) / (second - first)
	before = min(int(x), len(rows)-2)
	return before, x - float64(before)
}

func between(t testing.TB, rows []checkvalues.Row, atS float64, key string) float64 {
	i, share := place(t, rows, atS)
	a, b := rows[i].Number(t, key), rows[i+1].Number(t, key)
	return a + share*(b-a)
}

// drawnJ is the heat drawn until a moment: a cubic between rows, as steps end between
// them, with the outlet as its slope.
func drawnJ(t testing.TB, rows []checkvalues.Row, atS, wPerK float64) float64 {
	i, x := place(t, rows, atS)
	y, a, b := 1-x, rows[i], rows[i+1]
	widthS := b.Number(t, "time_s") - a.Number(t, "time_s")
	slopeJ := func(r checkvalues.Row) float64 { return wPerK * (r.Number(t, "outlet_C") - 10) * widthS }
	return 1000*(a.Number(t, "drawn_kJ")*(1+2*x)*y*y+b.Number(t, "drawn_kJ")*x*x*(3-2*x)) +
		slopeJ(a)*x*y*y - slopeJ(b)*x*x*y
}
