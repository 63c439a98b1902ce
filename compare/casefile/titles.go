package casefile

// sectionTitle says what a section is about.
func sectionTitle(path string) string {
	switch path {
	case "household":
		return "The people and how they use hot water."
	case "mains":
		return "The cold supply, and what stands in its way."
	case "climate":
		return "The place, month by month, January first."
	case "dwelling":
		return "The building around the vessel."
	case "heat_pump":
		return "The unit that charges either vessel."
	case "pipes":
		return "Pipes between unit and vessel, and from the vessel to the outlets."
	case "compact_store":
		return "The first option: heating water, with mains water heated as it passes a coil."
	case "cylinder":
		return "The second option: stored hot water, heated through a coil."
	case "surplus":
		return "Electricity of the home's own that would otherwise be exported."
	case "money":
		return "What a difference is worth, in units of the currency."
	case "room":
		return "The place that the home has for an option, inner dimensions."
	case "service":
		return "What the household expects."
	default:
		return partTitle((&Key{Path: path}).name())
	}
}

// partTitle says what a section within another is about.
func partTitle(name string) string {
	switch name {
	case "limits":
		return "What its controller can be set to."
	case "immersion":
		return "An electric heater in the vessel."
	case "hygiene":
		return "A regular hot spell of the whole vessel."
	case "cheapest":
		return "Hours that follow the first tariff, in place of windows."
	case "compact_store", "cylinder":
		return "What this option costs besides electricity."
	default:
		return "How it calls for heat."
	}
}
