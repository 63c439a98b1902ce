package compare

import (
	"cmp"
	"context"
	"math"
	"slices"

	"dhwcompare/compare/wording"
)

// Sensitivity says which uncertain inputs move the decision, one at a time; it
// does not show what two of them do together.
type Sensitivity struct {
	Years  int                `json:"years"`
	Base   SensitivityPoint   `json:"base"`
	Inputs []SensitivityInput `json:"inputs"` // by width of the cost difference, widest first
}

// SensitivityInput is one input between a low and a high value.
type SensitivityInput struct {
	Name      string           `json:"name"`
	Label     string           `json:"label"`
	Unit      string           `json:"unit"`
	BaseValue float64          `json:"base_value"`
	LowValue  float64          `json:"low_value"`
	HighValue float64          `json:"high_value"`
	Low       SensitivityPoint `json:"low"`
	High      SensitivityPoint `json:"high"`
	// Turn is where the verdict turns nearest the base; null if it does not turn
	// between low and high.
	Turn  *Turn  `json:"turn"`
	Turns string `json:"turns"`
}

// Turn is where the verdict turns as an input moves away from its base.
type Turn struct {
	At     float64        `json:"at"`     // halfway between kept and turned
	Kept   float64        `json:"kept"`   // the farthest value looked at that keeps the verdict of the base
	Turned float64        `json:"turned"` // the nearest that does not
	To     Recommendation `json:"to"`     // the verdict there
}

// SensitivityPoint is the decision at one value.
type SensitivityPoint struct {
	Recommend       Recommendation `json:"recommend"`
	CostDifference  float64        `json:"cost_difference"` // compact store less cylinder
	FailingCompact  float64        `json:"failing_showers_compact"`
	FailingCylinder float64        `json:"failing_showers_cylinder"`
}

// width is the span of the cost difference, the base included.
func (i *SensitivityInput) width(base *SensitivityPoint) float64 {
	a, b, c := i.Low.CostDifference, i.High.CostDifference, base.CostDifference
	return max(a, b, c) - min(a, b, c)
}

// expectedTurns is how many inputs are expected to turn the verdict, for the
// progress.
const expectedTurns = 4

// Sensitivities moves each input to its ends and looks for where the verdict
// turns, over the first n years of the case. Windows are those that are stated, as
// with Compare. Progress counts pairs of years, of a number that is estimated.
func Sensitivities(ctx context.Context, c *Case, n, workers int, progress Progress) (*Sensitivity, error) {
	return c.sensitivities(ctx, c.levers(), n, workers, progress)
}

// sensitivities looks at the given levers: at both ends of each, and then for where
// the verdict turns on the way to those ends where it is another.
func (c *Case) sensitivities(ctx context.Context, levers []lever, n, workers int, progress Progress) (*Sensitivity, error) {
	s := &Sensitivity{Years: n, Inputs: make([]SensitivityInput, len(levers))}
	probes := ends*len(levers) + expectedTurns*turnSteps
	p := prober{c: c, worlds: newWorlds(c), n: n, meter: &meter{progress: progress, of: (1 + probes) * n}}
	p.meter.stage(n)
	var err error
	if s.Base, err = p.at(ctx, workers, func(*Case) {}); err != nil {
		return nil, err
	}
	p.meter.stage(probes * n)
	moves := make([]move, 0, ends*len(levers))
	for i, l := range levers {
		s.Inputs[i] = SensitivityInput{Name: l.name, Label: l.label, Unit: l.unit, BaseValue: l.base, LowValue: l.low, HighValue: l.high}
		moves = append(moves, move{lever: l, to: l.low}, move{lever: l, to: l.high})
	}
	err = inParallel(workers, len(moves), func(i int) error { return p.end(ctx, &moves[i], &s.Base) })
	if err != nil {
		return nil, err
	}
	err = inParallel(workers, len(moves), func(i int) error { return p.turn(ctx, &moves[i], &s.Base) })
	if err != nil {
		return nil, err
	}
	p.meter.stage(0)
	for i := range s.Inputs {
		s.Inputs[i].take(&moves[ends*i], &moves[ends*i+1])
	}
	slices.SortStableFunc(s.Inputs, func(a, b SensitivityInput) int { return cmp.Compare(b.width(&s.Base), a.width(&s.Base)) })
	return s, nil
}

// ends is how many each input has.
const ends = 2

// move takes an input from its base to one end.
type move struct {
	lever lever
	to    float64
	point SensitivityPoint // there
	turn  *Turn            // on the way; nil if the verdict keeps
}

// take notes what came of the moves to both ends. Of two turns the nearer counts.
func (i *SensitivityInput) take(low, high *move) {
	i.Low, i.High = low.point, high.point
	i.Turn = low.turn
	if high.turn != nil && (low.turn == nil || math.Abs(high.turn.At-i.BaseValue) < math.Abs(low.turn.At-i.BaseValue)) {
		i.Turn = high.turn
	}
	i.Turns = i.turnsText()
}

// prober evaluates changed cases.
type prober struct {
	c      *Case
	worlds *worlds // of the levers that leave weather and habits alone
	n      int
	meter  *meter
}

func (p *prober) at(ctx context.Context, workers int, change func(*Case)) (SensitivityPoint, error) {
	changed := *p.c
	change(&changed)
	changed.Years = p.n
	c, err := compareIn(ctx, &changed, p.worlds, workers, func(int, int) { p.meter.tick() })
	if err != nil {
		return SensitivityPoint{}, err
	}
	return SensitivityPoint{
		Recommend: c.Verdict.Recommend, CostDifference: c.Difference.CostPerYear,
		FailingCompact: c.Options.Compact.FailingShowers, FailingCylinder: c.Options.Cylinder.FailingShowers,
	}, nil
}

// end evaluates the end of a move.
func (p *prober) end(ctx context.Context, m *move, base *SensitivityPoint) (err error) {
	if m.to == m.lever.base {
		m.point = *base
		return nil
	}
	m.point, err = p.at(ctx, 1, func(c *Case) { m.lever.set(c, m.to) })
	return err
}

// turn looks for where the verdict turns, if it is another at the end of a move.
func (p *prober) turn(ctx context.Context, m *move, base *SensitivityPoint) error {
	if m.point.Recommend == base.Recommend {
		return nil
	}
	turn, err := turning(m.lever.base, m.to, base.Recommend, m.point.Recommend, func(v float64) (SensitivityPoint, error) {
		return p.at(ctx, 1, func(c *Case) { m.lever.set(c, v) })
	})
	m.turn = &turn
	return err
}

// turnSteps halves the interval in which the verdict turns so often: the answer is
// good to a thirty-second of it.
const turnSteps = 5

// turning finds where the verdict leaves that of the base, between the base and an
// end where it is another.
func turning(base, end float64, kept, to Recommendation, at func(float64) (SensitivityPoint, error)) (Turn, error) {
	t := Turn{Kept: base, Turned: end, To: to}
	for range turnSteps {
		middle := (t.Kept + t.Turned) / 2
		point, err := at(middle)
		if err != nil {
			return t, err
		}
		if point.Recommend == kept {
			t.Kept = middle
		} else {
			t.Turned, t.To = middle, point.Recommend
		}
	}
	t.At = (t.Kept + t.Turned) / 2
	return t, nil
}

func (i *SensitivityInput) turnsText() string {
	if i.Turn == nil {
		return "does not turn"
	}
	unit := i.Unit
	if unit != "" {
		unit = " " + unit
	}
	return wording.Sprintf("turns to %q at about %.3g%s", i.Turn.To, i.Turn.At, unit)
}
