package charts

import (
	"fmt"

	"dhwcompare/compare"
)

// sizingFinite refuses sizes whose place in the picture is no number.
func sizingFinite(s *compare.Sizing) error {
	for _, side := range bothSides() {
		for i := range s.Of(side).Sizes {
			z := &s.Of(side).Sizes[i]
			if !finite(z.Trial.Cost, z.Trial.Failing.Mean, z.VolumeL, z.SetpointC, z.SummerC) {
				return fmt.Errorf("sizes: a figure of the %v of %v l is not a number", side, z.VolumeL)
			}
		}
	}
	if h := s.HeadToHead; h != nil && !spreadFinite(&h.Cost.Spread) {
		return fmt.Errorf("sizes: the difference in cost, best against best, is not a number")
	}
	return nil
}

// sensitivityFinite refuses ends that are no numbers.
func sensitivityFinite(s *compare.Sensitivity) error {
	if !pointFinite(&s.Base) {
		return fmt.Errorf("sensitivity: a figure of the case as it is stated is not a number")
	}
	for i := range s.Inputs {
		in := &s.Inputs[i]
		if !finite(in.LowValue, in.HighValue) || !pointFinite(&in.Low) || !pointFinite(&in.High) || in.Turn != nil && !finite(in.Turn.At) {
			return fmt.Errorf("sensitivity: a figure of %s is not a number", in.Name)
		}
	}
	return nil
}

func pointFinite(p *compare.SensitivityPoint) bool {
	return finite(p.CostDifference, p.FailingCompact, p.FailingCylinder)
}
