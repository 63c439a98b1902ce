package outline

import (
	"fmt"

	"dhwcompare/compare"
)

// method says in a page how the figures came about.
func method(doc *compare.Document) Part {
	cmp := doc.Comparison
	blocks := []Block{
		lead("Two plants, one world.", fmt.Sprintf("%s of %s are drawn at random from the seed %d. Both options live through the very same years, so what differs between them in a year is due to the options. Differences therefore settle sooner than totals do.", capital(calculated(cmp.Years)), doc.Case.WhatVaries(), cmp.Seed)),
		lead("Weather.", weatherText(doc.Case)),
		lead("People.", "Showers end after their minutes, baths when the litres are in, tap draws likewise. Start times follow measured habits, lengths and flows vary about their medians, and a stated share of showers follows another person's at once. Cold water standing in the pipe to an outlet comes first."),
		lead("Vessels.", "Both are columns of water in layers, with conduction, mixing at the inlets, buoyancy and heat loss. In the compact store mains water takes up heat from each layer that its coil passes, and the coil's own content counts. In the cylinder an indirect coil gives heat to the layers around it."),
		lead("Heat pump.", "Output and efficiency depend on outdoor air, on the temperature of the water that leaves it, and on its share of full output. Water leaves at return temperature plus output over flow, never simply at the setpoint. A start takes time to come up to output; frost grows with running in humid cold and is melted with heat from the water; the loop holds heat and loses it."),
		lead("Service.", fmt.Sprintf("A shower fails if it is below %s °C for more than %s s after the pipe has run warm; a bath if it ends below %s °C or takes longer than %s min; a tap draw if it stays below %s °C. The service rule allows %s failing showers in the mean year, and asks for %s %% confidence in that.",
			amount(doc.Case.Household.ShowerMinC, 0), amount(doc.Case.Service.ColdSeconds, 0), amount(doc.Case.Household.BathMinC, 0), amount(doc.Case.Service.BathPatienceMin, 0), amount(doc.Case.Household.TapMinC, 0), few(doc.Case.Service.FailuresPerYear), amount(doc.Case.Service.ConfidencePercent, 0))),
		lead("Order of judgement.", "Service and room come before cost: an option that runs cold or does not fit is reported as that, whatever it saves. Costs are not compared while an option leaves more than 1 % of the wanted heat undelivered. Where both serve, the running cost on the first tariff decides, unless the difference is not material."),
		lead("Intervals.", fmt.Sprintf("A 90 %% interval is that of the mean over the calculated years (Student's distribution): it says how well these years settle the mean, and narrows as years are added. Chances have Wilson's interval (Wilson 1927). Percentiles are of years and do not narrow. None of them covers errors of the inputs or of the method. There is no real difference where the interval of a figure includes zero, or, for cost, stays within %s a year.",
			moneyOf(cmp).whole(doc.Case.Money.MaterialityPerYear))),
	}
	if heats(doc) {
		blocks = append(blocks, lead("House.", "The same heat pump heats the house. While it makes hot water the house waits and cools, and catches up afterwards. Losses of vessel and pipes indoors displace heating in the season and are waste outside it."))
	}
	return Part{ID: "method", Title: "Method in a page", Blocks: blocks}
}

// weatherText says where the hours of a year come from.
func weatherText(c *compare.Case) string {
	const mains = " Mains water follows its own monthly means."
	if c.Climate.Outdoor != nil {
		return "Outdoor air is that of the weather file, hour by hour, the same in every year." + mains
	}
	return "Twelve monthly means become hours: daily means whose monthly averages meet the input, a daily swing, and spells of warmer and colder days." + mains
}
