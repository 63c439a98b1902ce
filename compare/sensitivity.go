package compare

import (
	"cmp"
	"context"
	"fmt"
	"math"
	"slices"
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

// sensitivities looks at the given levers.
func (c *Case) sensitivities(ctx context.Context, levers []lever, n, workers int, progress Progress) (*Sensitivity, error) {
	s := &Sensitivity{Years: n}
	const ends = 2
	probes := ends*len(levers) + expectedTurns*turnSteps
	p := prober{c: c, n: n, meter: &meter{progress: progress, of: (1 + probes) * n}}
	p.meter.stage(n)
	var err error
	if s.Base, err = p.at(ctx, workers, func(*Case) {}); err != nil {
		return nil, err
	}
	p.meter.stage(probes * n)
	s.Inputs = make([]SensitivityInput, len(levers))
	err = inParallel(workers, len(levers), func(i int) (err error) {
		s.Inputs[i], err = p.input(ctx, levers[i], s.Base)
		return err
	})
	if err != nil {
		return nil, err
	}
	p.meter.stage(0)
	slices.SortStableFunc(s.Inputs, func(a, b SensitivityInput) int { return cmp.Compare(b.width(&s.Base), a.width(&s.Base)) })
	return s, nil
}

// prober evaluates changed cases.
type prober struct {
	c     *Case
	n     int
	meter *meter
}

func (p *prober) at(ctx context.Context, workers int, change func(*Case)) (SensitivityPoint, error) {
	changed := *p.c
	change(&changed)
	changed.Years = p.n
	c, err := Compare(ctx, &changed, workers, func(int, int) { p.meter.tick() })
	if err != nil {
		return SensitivityPoint{}, err
	}
	return SensitivityPoint{
		Recommend: c.Verdict.Recommend, CostDifference: c.Difference.CostPerYear,
		FailingCompact: c.Options.Compact.FailingShowers, FailingCylinder: c.Options.Cylinder.FailingShowers,
	}, nil
}

// input looks at both ends of a lever and, where the verdict is another there, for
// where it turns.
func (p *prober) input(ctx context.Context, l lever, base SensitivityPoint) (SensitivityInput, error) {
	in := SensitivityInput{Name: l.name, Label: l.label, Unit: l.unit, BaseValue: l.base, LowValue: l.low, HighValue: l.high}
	at := func(v float64) (SensitivityPoint, error) {
		if v == l.base {
			return base, nil
		}
		return p.at(ctx, 1, func(c *Case) { l.set(c, v) })
	}
	for _, end := range []struct {
		value float64
		point *SensitivityPoint
	}{{l.low, &in.Low}, {l.high, &in.High}} {
		var err error
		if *end.point, err = at(end.value); err != nil {
			return in, err
		}
		if end.point.Recommend == base.Recommend {
			continue
		}
		turn, err := turning(l.base, end.value, base.Recommend, end.point.Recommend, at)
		if err != nil {
			return in, err
		}
		if in.Turn == nil || math.Abs(turn.At-l.base) < math.Abs(in.Turn.At-l.base) {
			in.Turn = &turn
		}
	}
	in.Turns = in.turnsText()
	return in, nil
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
	return fmt.Sprintf("turns to %q at about %.3g%s", i.Turn.To, i.Turn.At, unit)
}
