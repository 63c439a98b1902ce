package plant

import (
	"fmt"
	"math"
	"testing"

	"dhwcompare/compare/calendar"
	"dhwcompare/compare/vessel"
)

// effort is a choice of layers and of the longest step while water moves; zero is the
// plant's own choice.
type effort struct {
	layers  int
	movingS float64
}

func (e effort) String() string {
	if e.movingS == 0 {
		return fmt.Sprintf("%d_layers", e.layers)
	}
	return fmt.Sprintf("%d_layers_steps_%g_s", e.layers, e.movingS)
}

func (e effort) pace() pace {
	if e.movingS == 0 {
		return pace{}
	}
	p := ownPace
	p.drawingS, p.startingS, p.runningS = e.movingS, e.movingS, e.movingS
	return p
}

func (e effort) compact(b *testing.B) Params {
	p, v := compactParams(b), compactStore()
	v.Layers = e.layers
	p.Vessel, p.pace = vessel.NewCompact(v), e.pace()
	return p
}

func (e effort) cylinder(b *testing.B) Params {
	p, v := cylinderParams(b), tallCylinder()
	v.Layers = e.layers
	p.Vessel, p.pace = vessel.NewCylinder(v), e.pace()
	return p
}

// BenchmarkAccuracy sets error against time: five years of each option with coarser
// and finer layers and steps, against the reference of fine steps. One time round is
// enough: go test -run xxx -bench Accuracy -benchtime 1x ./compare/plant.
func BenchmarkAccuracy(b *testing.B) {
	for _, e := range []effort{{layers: 8}, {layers: 10}, {layers: 15}, {layers: 20}, {layers: 40}, {10, 5}, {40, 5}} {
		b.Run("compact/"+e.String(), func(b *testing.B) { accuracyOf(b, "compact", e.compact) })
	}
	for _, e := range []effort{{layers: 20}, {layers: 32}, {layers: 40}, {layers: 60}, {layers: 100}, {40, 5}} {
		b.Run("cylinder/"+e.String(), func(b *testing.B) { accuracyOf(b, "cylinder", e.cylinder) })
	}
}

func accuracyOf(b *testing.B, option string, params func(*testing.B) Params) {
	stored := readReference(b)
	var own, fine figures
	worst := 0.0
	for b.Loop() {
		own, fine, worst = figures{}, figures{}, 0
		for year := range referenceYears {
			l := marched(b, New(params(b)), 0, calendar.YearS, twoPeopleIn(year), Override{})
			var mine, reference figures
			for i := range l.Months {
				mine.add(figuresOf(&l.Months[i]))
				reference.add(stored[place{option, year, i + 1}])
			}
			worst = max(worst, math.Abs(mine.electricityKWh/reference.electricityKWh-1))
			own.add(mine)
			fine.add(reference)
		}
	}
	b.ReportMetric(100*(own.electricityKWh/fine.electricityKWh-1), "%electricity")
	b.ReportMetric(100*worst, "%worst-year")
	b.ReportMetric(100*float64(own.failing-fine.failing)/float64(fine.failing), "%failing")
	b.ReportMetric(b.Elapsed().Seconds()*1000/float64(b.N*referenceYears), "ms/year")
}
