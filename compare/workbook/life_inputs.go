package workbook

import (
	"fmt"

	"dhwcompare/compare"
	"dhwcompare/compare/calendar"
)

// lifeRefs are the assumptions about costs over the whole life.
type lifeRefs struct {
	horizon, discount, growth term // years; percent a year
	floorValue, floorShare    term
	outlay                    [2]outlayRefs
}

// outlayRefs are what an option costs besides electricity.
type outlayRefs struct{ purchase, installation, volumiser, check, upkeep, descaling, life term }

// longestHorizon is the most years that the case and the sheet of costs take.
const longestHorizon = 60

// money writes what a difference is worth.
func (w *assumptionsWriter) money(refs *inputRefs) {
	m, money := &w.book.doc.Case.Money, w.book.currency()
	put := func(r row) term {
		r.key = "money." + r.key
		return w.put(r)
	}
	refs.materiality = put(row{key: "materiality_per_year", name: "Materiality_per_year", meaning: "a smaller difference in running cost is no real difference",
		unit: money + " a year", value: m.MaterialityPerYear, format: formatTwo, most: mostMoney})
	l := &refs.life
	l.horizon = put(row{key: "horizon_years", name: "Horizon_years", meaning: "years over which costs are counted", unit: "years", value: float64(m.HorizonYears), format: formatWhole, least: 1, most: longestHorizon, whole: true})
	l.discount = put(row{key: "discount_percent", name: "Discount_percent", meaning: "discount rate a year, beyond inflation", unit: "% a year", value: m.DiscountPercent, format: formatTwo, least: -5, most: 20})
	l.growth = put(row{key: "energy_growth_percent", name: "Energy_growth_percent", meaning: "growth of electricity prices a year, beyond inflation", unit: "% a year", value: m.EnergyGrowthPercent, format: formatTwo, least: -10, most: 15})
	l.floorValue = put(row{key: "floor_value_per_m2_year", name: "Floor_value_per_m2_year", meaning: "what a square metre of floor is worth a year", unit: money + " a year", value: m.FloorValuePerM2Year, format: formatTwo, most: mostMoney})
	l.floorShare = put(row{key: "floor_value_share", name: "Floor_value_share", meaning: "share of that which a square metre of cupboard is worth", unit: "share", value: m.FloorValueShare, format: formatTwo, most: 1})
	for side := range sideOrder() {
		l.outlay[side] = w.outlay(side)
	}
}

// outlay writes what one option costs besides electricity.
func (w *assumptionsWriter) outlay(side int) outlayRefs {
	o, money := w.book.doc.Case.Money.OutlayOf(compare.Side(side)), w.book.currency()
	group, name := "money.compact_store.", "Compact_"
	if side == int(compare.SideCylinder) {
		group, name = "money.cylinder.", "Cylinder_"
	}
	put := func(key, words, unit string, value float64) term {
		return w.put(row{key: group + key, name: name + key, meaning: blockName(side) + ": " + words, unit: unit, value: value, format: formatTwo, most: 10 * mostMoney})
	}
	refs := outlayRefs{
		purchase:     put("purchase", "price of the vessel with its fittings", money, o.Purchase),
		installation: put("installation", "price of putting it in", money, o.Installation),
		volumiser:    zero(),
		check:        put("safety_check_per_year", "inspection of safety devices", money+" a year", o.SafetyCheckPerYear),
		upkeep:       put("upkeep_per_year", "valves and expansion vessel", money+" a year", o.UpkeepPerYear),
		descaling:    put("descaling_per_year", "descaling of coil or heater", money+" a year", o.DescalingPerYear),
		life: w.put(row{key: group + "life_years", name: name + "life_years", meaning: blockName(side) + ": years after which purchase and installation are paid again",
			unit: "years", value: float64(o.LifeYears), format: formatWhole, least: 1, most: longestHorizon, whole: true}),
	}
	if w.book.comparison().Options.Of(compare.Side(side)).SystemWater.VolumiserL > 0 {
		refs.volumiser = put("volumiser", "price of its volumiser, fitted", money, o.Volumiser)
	}
	return refs
}

// carbon writes the carbon of electricity in each month.
func (w *assumptionsWriter) carbon(refs *inputRefs) {
	factors := w.book.doc.Case.Money.CarbonByMonth()
	first := place{valueCol, w.at.row}
	for m, v := range factors {
		refs.carbon[m] = w.put(row{key: fmt.Sprintf("%s[%d]", carbonKey, m+1), of: carbonKey, name: "Carbon_" + calendar.ShortMonth(m), meaning: "carbon of electricity, CO2 equivalent, " + calendar.ShortMonth(m),
			unit: "kg per kWh", value: v, format: "0.000", most: 2})
	}
	refs.carbonMonths = w.span(first, first.down(calendar.MonthsInAYear-1))
}

// carbonKey is the key of the case under which all months stand.
const carbonKey = "money.carbon_kg_per_kwh"
