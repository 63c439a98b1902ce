package charts

import (
	"fmt"
	"strings"

	"dhwcompare/compare"
)

// causesChart shows what the electricity was for.
func causesChart(cmp *compare.Comparison) Chart {
	rows := pairs{unit: "kWh a year"}
	for _, cause := range compare.CauseList() {
		row := pair{label: causeLabel(cause)}
		for _, side := range bothSides() {
			v := *cause.Of(&cmp.Options.Of(side).ElectricityByCause)
			row.values[side], row.texts[side] = v, number(v, 0)
		}
		// What neither option has is left out.
		if row.values != [2]float64{} {
			rows.rows = append(rows.rows, row)
		}
	}
	return Chart{
		Name:     "electricity-by-cause",
		Title:    causesTitle(cmp),
		Alt:      "Paired bars, kWh of electricity a year. " + rows.inWords(),
		subtitle: "What the electricity for hot water was for.",
		caption:  meanYears(cmp),
		room:     rows.room(),
		body:     rows.draw,
	}
}

// causeLabel says in plain words what electricity was for; a cause without words
// here keeps its own label.
func causeLabel(c compare.Cause) string {
	switch c.Name {
	case "tap_heat":
		return "hot water at the taps"
	case "dead_legs":
		return "left in pipes to the taps"
	case "vessel_loss":
		return "lost from store or cylinder"
	case "loop_loss":
		return "lost in pipes to the heat pump"
	case "loop_heat_to_house":
		return "left over for heating"
	case "start_up":
		return "starting the heat pump"
	case "defrost":
		return "melting ice off the heat pump"
	default:
		return c.Label
	}
}

// causesTitle says how much of what is bought ends as hot water.
func causesTitle(cmp *compare.Comparison) string {
	a, b := tapShare(&cmp.Options.Compact), tapShare(&cmp.Options.Cylinder)
	switch {
	case a == "" || b == "":
		return "What the electricity is used for"
	case a == b:
		return fmt.Sprintf("Of every 100 kWh bought for hot water, %s serve the taps with either option", a)
	}
	return fmt.Sprintf("Of every 100 kWh bought for hot water, %s serve the taps with the compact store and %s with the cylinder", a, b)
}

// tapShare is empty where nothing was used.
func tapShare(o *compare.Option) string {
	const percent = 100
	if sum := o.ElectricityByCause.Sum(); sum > 0 {
		return number(percent*o.ElectricityByCause.TapHeat/sum, 0)
	}
	return ""
}

// inWords lists the rows for those who cannot see them.
func (r *pairs) inWords() string {
	var list []string
	for i := range r.rows {
		row := &r.rows[i]
		list = append(list, fmt.Sprintf("%s: compact store %s, cylinder %s", capital(row.label), row.texts[0], row.texts[1]))
	}
	return strings.Join(list, "; ") + "."
}
