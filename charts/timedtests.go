package charts

import (
	"fmt"
	"slices"

	"dhwcompare/compare"
)

// drawoffCharts draws the timed draw-off tests of a document, if it has any.
func drawoffCharts(doc *compare.Document) ([]Chart, error) {
	if doc.Draws == nil || doc.Case == nil {
		return nil, nil
	}
	if err := drawoffFinite(doc.Draws); err != nil {
		return nil, err
	}
	h := &doc.Case.Household
	charts := []Chart{drawoffChart(doc.Draws, h.ShowerFlowLPerMin), showerMapChart(doc.Draws, h.ShowerFlowLPerMin, h.ShowerMinutes)}
	if len(doc.Draws.Compact.Strips)+len(doc.Draws.Cylinder.Strips) > 0 {
		charts = append(charts, stripsChart(doc.Draws, h.ShowerMinC))
	}
	return charts, nil
}

// withPump says plainly what the heat pump does in a state.
func withPump(state string) string {
	switch state {
	case "full output":
		return "heat pump at full output"
	case "capped":
		return "heat pump at half output"
	case "off":
		return "heat pump off"
	case "in defrost":
		return "heat pump melting ice"
	default:
		return "heat pump: " + plain(state)
	}
}

// alone is the state in which store or cylinder serve by themselves, or else the
// first.
func alone(states []string) int { return max(0, slices.Index(states, "off")) }

// inMonths writes in how many months of the year something holds.
func inMonths(n int) string {
	switch n {
	case 0:
		return "in no month"
	case 1:
		return "in one month"
	case 12:
		return "all year"
	default:
		return fmt.Sprintf("in %d months", n)
	}
}
