package outline

import (
	"fmt"

	"dhwcompare/compare"
)

// cautions says what can hurt people, with figures and their sources. Rules
// differ from place to place: it defers to them and to those licensed to do the
// work.
func cautions(doc *compare.Document) Part {
	return Part{ID: "cautions", Title: "Cautions", Blocks: []Block{
		text("Hot water, pressure and electricity can injure and kill. Local codes come first, and licensed people must design, install, commission and check the work. Nothing in this report shows that an installation is safe or lawful."),
		lead("Scalding.", "A compact store is kept hot enough to scald within seconds, and water can reach the outlet at nearly the temperature of the store when the flow is small. A cylinder scalds too while it is disinfected. Fit thermostatic mixing or tempering valves as local codes say, set them with a thermometer and test that they shut. Bath outlets in new English dwellings may deliver 48 °C at most (Approved Document G; read at second hand)."),
		tabled(scaldTable()),
		lead("Legionella.", fmt.Sprintf("Legionella grows in water of about 20 to 45 °C. In this case the compact store is kept at %s °C and the cylinder at %s °C; both are colder near the bottom and during a long draw-off: the water at the vessel's outlet is below 50 °C for %s hours a year in the compact store and %s hours in the cylinder. Usual advice is to store drinking water at 60 °C or more and to reach 50 °C at the outlets within a minute (Health and Safety Executive, hot and cold water systems). A cylinder at 45 to 50 °C is at the edge of growth and hardly kills; a regular hot spell is a choice for a risk assessment and is not shown to be equal to storage at 60 °C. A compact store holds less stored drinking water, but its coil and warm pipes still need assessment.",
			amount(doc.Comparison.Options.Compact.SetpointC, 0), amount(doc.Comparison.Options.Cylinder.SetpointC, 0),
			amount(doc.Comparison.Options.Compact.TepidHours, 0), amount(doc.Comparison.Options.Cylinder.TepidHours, 0))),
		tabled(killTable()),
		lead("Landlords and employers.", "Whoever lets a home or runs a workplace has duties of their own on legionella, hot water and electrical safety (in Great Britain: Health and Safety Executive, Approved Code of Practice L8). A risk assessment by a competent person comes before this report."),
		lead("Pressure.", "Closed vessels that are heated can burst. They need safety valves, expansion vessels and, for stored drinking water, at least two independent safety devices besides the thermostat, with a safe discharge (Approved Document G3, England; read at second hand). Vessels of drinking water are to be fitted by people qualified for that, and often have to be notified."),
		lead("Expansion in the coil.", "Water in a coil that is heated without a draw-off expands by about 1.7 % from 10 to 60 °C (from the density of water, IAPWS-95). Behind a check valve or a pressure-reducing valve it has nowhere to go: provide an expansion vessel or a relief for the coil (common practice, no source)."),
		lead("Backflow.", "One wall of the coil parts drinking water from heating water with inhibitor or antifreeze. Local water rules say what protection that asks for; use only additives that they allow, and have the mains connection guarded accordingly (from memory)."),
		lead("Immersion heaters.", "An electric element in a sealed vessel needs its own thermostat and its own cut-out that does not reset itself, on its own circuit (common practice, no source). Electrical work is for licensed people."),
		lead("Refrigerant.", "Many heat pumps of this size hold flammable propane. Opening or moving the unit is for licensed people, and its surroundings have to be kept free as its instructions say."),
	}}
}

// scaldTable gives bands, for the published figures differ by more than twice.
func scaldTable() *Table {
	return &Table{
		ID: "scald", Caption: "Time to a serious burn of adult skin", Heads: []string{"water at, °C", "about"}, Words: 2,
		Groups: rowsOf([][]string{
			{"45", "1 to 3 hours"}, {"48", "8 to 20 minutes"}, {"51", "2 to 4 minutes"},
			{"55", "15 to 30 seconds"}, {"60", "3 to 8 seconds"}, {"65", "less than 5 seconds"},
		}),
		Note: "Bands over published tables for second- and third-degree burns and a published fit for burns of full depth, all of which rest on Moritz and Henriques (1947). Children and the old are burnt sooner. Bands, not limits that are safe.",
	}
}

// killTable is from one published fit, which differs from others by up to twice.
func killTable() *Table {
	return &Table{
		ID: "legionella", Caption: "Time to kill all but one in 100,000 free-floating legionella", Heads: []string{"water at, °C", "about"}, Words: 2,
		Groups: rowsOf([][]string{
			{"50", "13 hours"}, {"55", "90 minutes"}, {"60", "10 minutes"}, {"65", "1 minute"}, {"70", "8 seconds"},
		}),
		Note: "From a published fit: 2 minutes at 60 °C for nine in ten, ten times faster every 5.29 K. Published times differ by twice and more, and films on walls and sediment protect the bacteria: real systems need far longer.",
	}
}
