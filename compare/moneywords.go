package compare

// moneyWarnings says which amounts nobody has stated yet.
func moneyWarnings(c *Case) []Warning {
	standard, m := defaultMoney(), &c.Money
	var list []Warning
	if m.Compact == standard.Compact || m.Cylinder == standard.Cylinder {
		list = append(list, Warning{presentCostName,
			"purchase, installation and service are placeholders until quotes replace them; costs over the whole life, the break-even and the price of space rest on them"})
	}
	if m.FloorValuePerM2Year == standard.FloorValuePerM2Year {
		list = append(list, Warning{"price_of_space",
			"the value of floor space is a placeholder, a British mean rent; state your own beside the price of the space"})
	}
	return list
}
