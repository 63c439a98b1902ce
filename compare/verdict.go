package compare

import (
	"fmt"
	"math"
	"strings"

	"dhwcompare/compare/wording"
)

// Recommendation is the outcome of a comparison.
type Recommendation string

// The outcomes.
const (
	RecommendCompact  Recommendation = "compact"
	RecommendCylinder Recommendation = "cylinder"
	RecommendEither   Recommendation = "either"
	RecommendNeither  Recommendation = "neither"
)

// Verdict says which option to take, in words, and why.
type Verdict struct {
	Recommend Recommendation `json:"recommend"`
	Cost      CostFinding    `json:"cost_finding"`
	Short     string         `json:"short"` // the text without costs over the whole life
	Text      string         `json:"text"`
	Reasons   []string       `json:"reasons"`
}

// CostFinding says what can be said about the difference in cost.
type CostFinding string

// The findings on cost.
const (
	CostNotCompared  CostFinding = "not compared: an option leaves too much heat unmet"
	CostNoDifference CostFinding = "no real difference"
	CostUndecided    CostFinding = "undecided"
	CostCompactLess  CostFinding = "compact store costs less"
	CostCylinderLess CostFinding = "cylinder costs less"
)

// LargestUnmetShare is the share of wanted heat beyond which an option's cost is
// not compared: it looks cheap because it runs cold.
const LargestUnmetShare = 0.01

// verdict weighs a comparison whose figures are complete.
func verdict(c *Case, cmp *Comparison) Verdict {
	v := Verdict{Cost: costFinding(c, cmp)}
	v.Recommend = recommend(cmp, v.Cost)
	v.Short = v.text(c, cmp)
	v.Text = v.Short
	if v.Recommend != RecommendNeither {
		v.Text += lifeClause(c, cmp)
	}
	v.Reasons = []string{serviceReason(c, cmp)}
	v.Reasons = append(v.Reasons, spellReasons(cmp)...)
	v.Reasons = append(v.Reasons, costReason(c, cmp, v.Cost))
	v.Reasons = append(v.Reasons, equalReasons(c, cmp)...)
	v.Reasons = append(v.Reasons, lifeReasons(c, cmp)...)
	v.Reasons = append(v.Reasons, energyReason(cmp), carbonReason(cmp), startsReason(cmp))
	v.Reasons = append(v.Reasons, budgetReasons(cmp)...)
	v.Reasons = append(v.Reasons, windowReasons(c, cmp)...)
	v.Reasons = append(v.Reasons, spaceReason(cmp))
	v.Reasons = append(v.Reasons, waterReasons(cmp)...)
	v.Reasons = append(v.Reasons, fitReasons(cmp)...)
	return v
}

// costFinding says what can be said about running costs.
func costFinding(c *Case, cmp *Comparison) CostFinding { return findingOn("cost_per_year", c, cmp) }

// findingOn holds the 90 % interval of the mean difference in a yearly cost against
// the band in which a difference is not material.
func findingOn(name string, c *Case, cmp *Comparison) CostFinding {
	s, band := cmp.Difference.Spread[name], c.Money.MaterialityPerYear
	switch {
	case !cmp.comparable():
		return CostNotCompared
	case cmp.Years < LeastYearsForInterval:
		return CostUndecided
	case s.CILow >= -band && s.CIHigh <= band:
		return CostNoDifference
	case s.CILow > band:
		return CostCylinderLess
	case s.CIHigh < -band:
		return CostCompactLess
	default:
		return CostUndecided
	}
}

func (o *Option) unmetShare() float64 { return ratio(o.UnmetHeatKWh, o.WantedHeatKWh) }

// recommend puts service, and the room that there is, before cost. Where both
// serve and cost does not decide, the choice is left to the value of the space.
func recommend(cmp *Comparison, cost CostFinding) Recommendation {
	compact, cylinder := cmp.Options.Compact.usable(), cmp.Options.Cylinder.usable()
	switch {
	case !compact && !cylinder:
		return RecommendNeither
	case !cylinder:
		return RecommendCompact
	case !compact:
		return RecommendCylinder
	case cost == CostCompactLess:
		return RecommendCompact
	case cost == CostCylinderLess:
		return RecommendCylinder
	default:
		return RecommendEither
	}
}

func (v *Verdict) text(c *Case, cmp *Comparison) string {
	a, b := &cmp.Options.Compact, &cmp.Options.Cylinder
	switch v.Recommend {
	case RecommendNeither:
		if !a.fits() || !b.fits() {
			return fmt.Sprintf("Neither option can be taken as set up: the compact store %s; the cylinder %s. Change the size, the settings or the place before choosing.", a.obstacle(c), b.obstacle(c)) + v.remedyClause(c, cmp)
		}
		if a.onlyUncertain(c) || b.onlyUncertain(c) {
			return fmt.Sprintf("Neither option as set up is sure to give this home enough hot water: the compact store %s; the cylinder %s. Simulate more years, or change the size or the settings, before choosing.", a.obstacle(c), b.obstacle(c)) + v.remedyClause(c, cmp)
		}
		return fmt.Sprintf("Neither option as set up gives this home enough hot water: %s fail in a year with the compact store and %s with the cylinder. Change the size or the settings before choosing.",
			showers(a.FailingShowers), showers(b.FailingShowers)) + v.remedyClause(c, cmp)
	case RecommendCompact:
		if !b.usable() {
			return fmt.Sprintf("Take the compact store: the cylinder %s.%s", b.obstacle(c), v.costClause(c, cmp))
		}
		return fmt.Sprintf("Take the compact store: both options keep the showers warm.%s", v.costClause(c, cmp))
	case RecommendCylinder:
		if !a.usable() {
			return fmt.Sprintf("Take the cylinder: the compact store %s.%s", a.obstacle(c), v.costClause(c, cmp))
		}
		return wording.Sprintf("Take the cylinder, unless the %.2f m2 of floor that the compact store saves are worth its price: both options keep the showers warm.%s",
			-cmp.Difference.FloorAreaM2, v.costClause(c, cmp))
	default:
		return wording.Sprintf("Either option serves this home; let the space decide: the compact store saves %.2f m2 of floor.%s",
			-cmp.Difference.FloorAreaM2, v.costClause(c, cmp))
	}
}

// usable reports whether the option keeps the service rule and fits the room, as
// far as one is stated.
func (o *Option) usable() bool { return o.MeetsServiceRule && o.fits() }

// onlyUncertain reports whether an option misses the service rule for want of
// certainty alone: the mean, as it is printed, keeps it.
func (o *Option) onlyUncertain(c *Case) bool {
	return !o.MeetsServiceRule && wording.Rounded(o.FailingShowers, 0) <= c.Service.FailuresPerYear
}

// obstacle says why an option cannot be taken as set up, or that it could be.
func (o *Option) obstacle(c *Case) string {
	cold := fmt.Sprintf("as set up leaves %s a year too cold", showers(o.FailingShowers))
	if o.onlyUncertain(c) {
		cold = wording.Sprintf("is not certain to keep within %.3g cold showers a year", c.Service.FailuresPerYear)
	}
	switch {
	case !o.fits() && !o.MeetsServiceRule:
		return o.Fit.Text + " and " + cold
	case !o.fits():
		return o.Fit.Text
	case !o.MeetsServiceRule:
		return cold
	default:
		return "serves and fits"
	}
}

// costClause gives the costs of a year, and those at a setting that serves where an
// option as set up does not.
func (v *Verdict) costClause(c *Case, cmp *Comparison) string {
	return v.runningClause(c, cmp) + v.remedyClause(c, cmp)
}

func (v *Verdict) runningClause(c *Case, cmp *Comparison) string {
	switch v.Cost {
	case CostNotCompared:
		return " Their running costs are not compared, because an option that runs cold only looks cheap."
	case CostNoDifference:
		return wording.Sprintf(" There is no real difference in running cost (less than %s %.0f a year).", c.Currency, c.Money.MaterialityPerYear)
	case CostUndecided:
		return " The difference in running cost is undecided on the years simulated."
	case CostCompactLess:
		return wording.Sprintf(" The compact store costs %s %.0f a year less to run.", c.Currency, math.Abs(cmp.Difference.CostPerYear))
	default:
		return wording.Sprintf(" The cylinder costs %s %.0f a year less to run.", c.Currency, math.Abs(cmp.Difference.CostPerYear))
	}
}

func showers(n float64) string {
	if wording.Rounded(n, 0) == 1 {
		return "1 shower"
	}
	return wording.Sprintf("%.0f showers", n)
}

// spellReasons say what hard weather does, which synthetic years are too mild to
// show.
func spellReasons(cmp *Comparison) []string {
	var out []string
	for i := range cmp.Spells {
		s := &cmp.Spells[i]
		out = append(out, wording.Sprintf("%s%s (%.0f C, mains %.0f C, %d %s): %.1f against %.1f of %.0f showers fail; rooms fall by up to %.1f against %.1f K; the longest wait of heating is %.0f against %.0f minutes.",
			strings.ToUpper(s.Name[:1]), s.Name[1:], s.OutdoorC, s.MainsC, s.Days, days(s.Days),
			s.Compact.FailingShowers, s.Cylinder.FailingShowers, s.Compact.Showers,
			s.Compact.WorstDipK, s.Cylinder.WorstDipK, s.Compact.LongestGapMin, s.Cylinder.LongestGapMin))
	}
	return out
}

// spellWarnings tell that the house gets too little heat in hard weather, which no
// choice between the options puts right.
func spellWarnings(cmp *Comparison) []Warning {
	var list []Warning
	for i := range cmp.Spells {
		if s := &cmp.Spells[i]; s.HeatShort(SideCompact) || s.HeatShort(SideCylinder) {
			list = append(list, Warning{"heat_pump.nominal_kw", wording.Sprintf("%s: at %.0f C the heat pump does not keep the house warm; rooms fall by up to %.1f K with the compact store and %.1f K with the cylinder; check its size and its performance in such cold, or plan other heat beside it",
				s.Name, s.OutdoorC, s.Compact.WorstDipK, s.Cylinder.WorstDipK)})
		}
	}
	return list
}

func days(n int) string {
	if n == 1 {
		return "day"
	}
	return "days"
}
