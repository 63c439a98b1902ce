package outline

import (
	"fmt"

	"dhwcompare/compare"
)

func scope(doc *compare.Document) Part {
	cmp := doc.Comparison
	blocks := []Block{
		text("This report compares two ways to hold and deliver hot water in one home that is heated, or at least served with hot water, by one air-source heat pump. It answers which of the two to take as set up here; it does not compare other systems, and it is no design."),
		lead("Boundary of costs and carbon.", capital(cmp.CostBoundary)+"."),
		lead("Boundary of hot water.", "Electricity for hot water is that of the compressor while it heats the vessel, of starting, of defrosts in such runs, of the circulation pump, of the immersion heater and of hot water's share of standby. Heat to the taps is counted at the outlet: what cools in the pipes is a loss."),
		lead("Same for both.", "Weather, mains water, people and their draw-offs, house, heat pump, pipes to the taps and tariffs. Only the vessel, what belongs to it and its control differ."),
	}
	return Part{ID: "scope", Title: "Scope and boundary", Blocks: append(blocks, tabled(optionTable(doc)))}
}

// optionTable describes the options without judging them.
func optionTable(doc *compare.Document) *Table {
	c, o := doc.Case, &doc.Comparison.Options
	rows := [][]string{
		{"what is stored", "heating water", "drinking water"},
		{"how the heat pump heats it", "directly: its water flows through the vessel", "through a coil in the lower part"},
		{"how water for the taps is heated", "as it passes an immersed coil", "in the vessel itself"},
		{"volume, l", amount(o.Compact.VolumeL, 0), amount(o.Cylinder.VolumeL, 0)},
		{"coil", fmt.Sprintf("corrugated tube, %s m", amount(c.Compact.CoilLengthM, 1)), fmt.Sprintf("%s m²", amount(c.Cylinder.CoilAreaM2, 1))},
	}
	both := func(name string, of func(*compare.Control, *compare.Body) string) {
		rows = append(rows, []string{name, of(&c.Compact.Control, &c.Compact.Body), of(&c.Cylinder.Control, &c.Cylinder.Body)})
	}
	both("setpoint, °C", func(k *compare.Control, _ *compare.Body) string { return amount(k.SetpointC, 1) })
	both("hysteresis, K", func(k *compare.Control, _ *compare.Body) string { return amount(k.HysteresisK, 1) })
	both("sensor, share of the height from the bottom", func(k *compare.Control, _ *compare.Body) string { return percentOf(k.SensorHeight) })
	both("largest output of the heat pump for hot water", func(k *compare.Control, _ *compare.Body) string { return percentOf(k.OutputCap) })
	both("least pause between runs, min", func(k *compare.Control, _ *compare.Body) string { return amount(k.AntiCycleMin, 0) })
	both("shower flow limiter", func(k *compare.Control, _ *compare.Body) string {
		return orNone(k.ShowerLimit > 0, amount(k.ShowerLimit, 1)+" l/min")
	})
	both("disinfection", func(_ *compare.Control, b *compare.Body) string { return hygieneWords(&b.Hygiene) })
	both("immersion heater", func(_ *compare.Control, b *compare.Body) string {
		return orNone(b.Immersion.PowerKW > 0, amount(b.Immersion.PowerKW, 1)+" kW")
	})
	rows = append(rows, []string{"weight when full, kg", amount(o.Compact.WeightFullKg, 0), amount(o.Cylinder.WeightFullKg, 0)})
	return &Table{ID: "options", Caption: "The two options as compared", Heads: []string{"property", "compact store", "cylinder"}, Words: 3, Groups: rowsOf(rows)}
}

func orNone(is bool, words string) string {
	if is {
		return words
	}
	return "none"
}

func hygieneWords(h *compare.Hygiene) string {
	return orNone(h.EveryDays > 0, fmt.Sprintf("every %s days, %s °C for %s min", amount(h.EveryDays, 0), amount(h.TargetC, 0), amount(h.HoldMin, 0)))
}
