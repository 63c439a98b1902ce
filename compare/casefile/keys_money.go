package casefile

import (
	"slices"

	"dhwcompare/compare"
)

type money = compare.Money

func moneyKeys() []field[compare.Case] {
	keys := slices.Concat(worthKeys(), carbonKeys(),
		within("compact_store", func(m *money) *compare.Outlay { return &m.Compact }, outlayKeys()...),
		within("cylinder", func(m *money) *compare.Outlay { return &m.Cylinder }, outlayKeys()...))
	return within("money", func(c *compare.Case) *money { return &c.Money }, keys...)
}

// largestAmount is beyond any vessel in any currency.
const largestAmount = 1e7

func worthKeys() []field[money] {
	return []field[money]{
		number("materiality_per_year", "currency/year", 0, 1e5, func(m *money) *float64 { return &m.MaterialityPerYear }, practice,
			"a smaller difference in yearly cost is no real difference").common(),
		count("horizon_years", 1, 60, func(m *money) *int { return &m.HorizonYears }, "service life of a vessel, from memory",
			"years over which costs are counted").common(),
		number("discount_percent", "%", -5, 20, func(m *money) *float64 { return &m.DiscountPercent },
			"public-sector rate of the British Green Book; a household may want 0 to 7", "discount rate a year, beyond inflation").common(),
		number("energy_growth_percent", "%", -10, 15, func(m *money) *float64 { return &m.EnergyGrowthPercent }, "no forecast",
			"growth of electricity prices a year, beyond inflation").common(),
		number("floor_value_per_m2_year", "currency/m² year", 0, 1e6, func(m *money) *float64 { return &m.FloorValuePerM2Year },
			"British mean rent of January 2026 over about 76 m² (from memory)", "what a square metre of floor is worth a year; 0: not stated"),
		number("floor_value_share", shareUnit, 0, 1, func(m *money) *float64 { return &m.FloorValueShare },
			"judgement: a cupboard makes no room", "share of that which a square metre of cupboard is worth"),
	}
}

func carbonKeys() []field[money] {
	byYear := func(m *money) string {
		if m.CarbonYearKgPerKWh == 0 {
			return ""
		}
		return "money.carbon_year_kg_per_kwh stands in its place"
	}
	return []field[money]{
		months("carbon_kg_per_kwh", "kg/kWh", 0, 2, func(m *money) *monthly { return &m.CarbonKgPerKWh },
			"British electricity, projection for 2020 to 2025: SAP 10.2, Table 12d", "carbon dioxide equivalent of electricity in each month").idleIf(byYear),
		number("carbon_year_kg_per_kwh", "kg/kWh", 0, 2, func(m *money) *float64 { return &m.CarbonYearKgPerKWh }, practice,
			"one figure for all months in place of them; 0: by month"),
	}
}

func outlayKeys() []field[compare.Outlay] {
	type outlay = compare.Outlay
	const quote = "middle of a wide range from memory, to be replaced by a quote"
	amount := func(path, unit string, at func(*outlay) *float64, source, help string) field[outlay] {
		return number(path, unit, 0, largestAmount, at, source, help)
	}
	return []field[outlay]{
		amount("purchase", "currency", func(o *outlay) *float64 { return &o.Purchase }, quote, "price of the vessel with its fittings").common(),
		amount("installation", "currency", func(o *outlay) *float64 { return &o.Installation }, quote, "price of putting it in").common(),
		amount("volumiser", "currency", func(o *outlay) *float64 { return &o.Volumiser }, "150 to 500, from memory, to be replaced by a quote",
			"price of a volumiser, fitted; it counts where the option needs one").common(),
		amount("safety_check_per_year", "currency/year", func(o *outlay) *float64 { return &o.SafetyCheckPerYear },
			"unvented storage: 89 to 140 pounds on a London trade page", "inspection of safety devices, often a condition of the warranty").common(),
		amount("upkeep_per_year", "currency/year", func(o *outlay) *float64 { return &o.UpkeepPerYear }, memory, "valves and expansion vessel"),
		amount("descaling_per_year", "currency/year", func(o *outlay) *float64 { return &o.DescalingPerYear },
			practice+", hard water; 0 in soft", "descaling of coil or heater").common(),
		count("life_years", 1, 60, func(o *outlay) *int { return &o.LifeYears }, memory, "years after which purchase and installation are paid again"),
	}
}
