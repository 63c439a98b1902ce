package charts

import (
	"math"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/vg"

	"dhwcompare/compare/calendar"
)

// marks are the labelled places along an axis.
type marks []plot.Tick

// Ticks implements plot.Ticker.
func (m marks) Ticks(_, _ float64) []plot.Tick { return m }

const aboutMarks = 5

// roundMarks gives marks at round values from low to high, both included if they
// are round.
func roundMarks(low, high float64) marks { return marksOf(low, high, aboutMarks, number) }

// marksThatFit are round marks along a lying axis, so few that their words stay
// apart.
func marksThatFit(low, high float64, room vg.Length, write func(float64, int) string) marks {
	style := words(textSize, nil)
	for about := aboutMarks; ; about-- {
		m := marksOf(low, high, float64(about), write)
		wide := vg.Length(0)
		for _, t := range m {
			wide = max(wide, style.Width(t.Label)+wordGap)
		}
		if about == 1 || wide*vg.Length(len(m)) <= room {
			return m
		}
	}
}

const wordGap = 12.0 // points between words along an axis

func marksOf(low, high, about float64, write func(float64, int) string) marks {
	if high <= low {
		return marks{{Value: low, Label: write(low, 0)}}
	}
	s := roundStep((high - low) / about)
	decimals := max(0, int(-math.Floor(math.Log10(s))))
	var out marks
	// A whole multiple of the step, so that no error adds up.
	for i := math.Ceil(low/s - slack); i <= high/s+slack; i++ {
		out = append(out, plot.Tick{Value: i * s, Label: write(i*s, decimals)})
	}
	return out
}

// slack lets a round end count as reached though its quotient is a rounding
// error short of whole.
const slack = 1e-9

// roundStep is the next of 1, 2, 5, 10, ... that is no smaller.
func roundStep(least float64) float64 {
	if !(least > 0) {
		return 1
	}
	power := math.Pow(10, math.Floor(math.Log10(least)))
	for _, m := range []float64{1, 2, 5} {
		if m*power >= least*(1-slack) {
			return m * power
		}
	}
	return 10 * power
}

// top is where an axis from zero ends: at a round value no lower than the
// highest, and never at zero.
func top(highest float64) float64 {
	if !(highest > 0) {
		return 1
	}
	s := roundStep(highest / aboutMarks)
	return s * math.Ceil(highest/s-slack)
}

// monthMarks are the names of the months at 0 to 11.
func monthMarks() marks {
	names := calendar.MonthNames()
	out := make(marks, len(names))
	for i, name := range names {
		out[i] = plot.Tick{Value: float64(i), Label: name[:3]}
	}
	return out
}
