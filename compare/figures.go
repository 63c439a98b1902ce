package compare

// Totals are the figures of one option over a year, or their difference. Every
// output takes them from here, in the order and with the names of Figures.
type Totals struct {
	ElectricityKWh  float64 `json:"electricity_kwh"`
	WholeHouseKWh   float64 `json:"whole_house_electricity_kwh"`
	ImmersionKWh    float64 `json:"immersion_electricity_kwh"`
	WantedHeatKWh   float64 `json:"wanted_heat_kwh"`
	HeatToTapsKWh   float64 `json:"heat_to_taps_kwh"`
	UnmetHeatKWh    float64 `json:"unmet_heat_kwh"`
	HeatPumpHeatKWh float64 `json:"heat_pump_heat_kwh"`
	DeadLegLossKWh  float64 `json:"dead_leg_loss_kwh"`
	VesselLossKWh   float64 `json:"vessel_loss_kwh"`
	LoopLossKWh     float64 `json:"loop_loss_kwh"`
	DefrostHeatKWh  float64 `json:"defrost_heat_kwh"`
	LoopToHouseKWh  float64 `json:"loop_heat_to_house_kwh"` // less what the loop brought from heating
	StoreGainKWh    float64 `json:"store_gain_kwh"`

	SystemEfficiency  float64 `json:"system_efficiency"`
	HeatPumpCOP       float64 `json:"heat_pump_cop"`
	RunHours          float64 `json:"run_hours"`
	ExtrapolatedHours float64 `json:"extrapolated_hours"`
	StartsPerYear     float64 `json:"starts_per_year"`
	StartsPerDay      float64 `json:"starts_per_day"`
	Changeovers       float64 `json:"changeovers_per_year"`
	MinutesPerRun     float64 `json:"minutes_per_run"`
	Defrosts          float64 `json:"defrosts_per_year"`
	HygieneMissed     float64 `json:"missed_hot_spells_per_year"`
	TepidHours        float64 `json:"outlet_below_50_c_hours"`

	HeatingHeatKWh   float64 `json:"heating_heat_kwh"`
	CreditedKWh      float64 `json:"credited_heat_kwh"`
	SummerGainKWh    float64 `json:"unwanted_heat_kwh"`
	HeatingStarts    float64 `json:"heating_starts_per_year"`
	HeatingDefrosts  float64 `json:"heating_defrosts_per_year"`
	InterruptedHours float64 `json:"heating_interrupted_hours"`
	LongestGapMin    float64 `json:"longest_heating_gap_minutes"`
	WorstDipK        float64 `json:"worst_room_dip_k"`

	Showers        float64 `json:"showers_per_year"`
	FailingShowers float64 `json:"failing_showers_per_year"`
	Baths          float64 `json:"baths_per_year"`
	FailingBaths   float64 `json:"failing_baths_per_year"`
	TapDraws       float64 `json:"tap_draws_per_year"`
	FailingTaps    float64 `json:"failing_tap_draws_per_year"`
	TooColdMinutes float64 `json:"too_cold_minutes_per_year"`
	WaitMinutes    float64 `json:"wait_minutes_per_year"`
	BadDays        float64 `json:"days_with_a_failing_shower"`
	WorstDay       float64 `json:"worst_day_failing_showers"`
	LongestSpell   float64 `json:"longest_bad_spell_days"` // of a month: of the spells that reach into it, up to its end

	CostPerYear float64 `json:"cost_per_year"`
	CarbonKg    float64 `json:"carbon_kg_per_year"` // of the same electricity as the cost
	FloorAreaM2 float64 `json:"floor_area_m2"`
	SpaceL      float64 `json:"space_l"`
}

// Better says which way a figure is good.
type Better int

// The ways.
const (
	Neither Better = iota // a fact, not a merit
	Less
	More
)

// Figure describes one figure of Totals.
type Figure struct {
	Name     string // as in comparison.json
	Label    string // for people
	Unit     string // empty for a plain number; "money" for the case's currency
	Decimals int
	Better   Better
	Varies   bool // from year to year, so that it has a spread
	Largest  bool // of a year is the largest of its months, not their sum
	Of       func(*Totals) *float64
}

// Figures lists the figures in the order in which they are shown.
func Figures() []Figure {
	return []Figure{
		{"electricity_kwh", "electricity for hot water", "kWh", 0, Less, true, false, func(t *Totals) *float64 { return &t.ElectricityKWh }},
		{"whole_house_electricity_kwh", "electricity for hot water and heating", "kWh", 0, Less, true, false, func(t *Totals) *float64 { return &t.WholeHouseKWh }},
		{"immersion_electricity_kwh", "of hot water, by the immersion heater", "kWh", 0, Less, true, false, func(t *Totals) *float64 { return &t.ImmersionKWh }},
		{"wanted_heat_kwh", "heat wanted at the taps", "kWh", 0, Neither, true, false, func(t *Totals) *float64 { return &t.WantedHeatKWh }},
		{"heat_to_taps_kwh", "heat delivered at the taps", "kWh", 0, More, true, false, func(t *Totals) *float64 { return &t.HeatToTapsKWh }},
		{"unmet_heat_kwh", "heat wanted but not delivered", "kWh", 1, Less, true, false, func(t *Totals) *float64 { return &t.UnmetHeatKWh }},
		{"heat_pump_heat_kwh", "heat from the heat pump", "kWh", 0, Less, true, false, func(t *Totals) *float64 { return &t.HeatPumpHeatKWh }},
		{"dead_leg_loss_kwh", "heat lost in pipes to the taps", "kWh", 0, Less, true, false, func(t *Totals) *float64 { return &t.DeadLegLossKWh }},
		{"vessel_loss_kwh", "heat lost from the vessel", "kWh", 0, Less, true, false, func(t *Totals) *float64 { return &t.VesselLossKWh }},
		{"loop_loss_kwh", "heat lost from the loop to the heat pump", "kWh", 0, Less, true, false, func(t *Totals) *float64 { return &t.LoopLossKWh }},
		{"defrost_heat_kwh", "heat taken back by defrosts", "kWh", 1, Less, true, false, func(t *Totals) *float64 { return &t.DefrostHeatKWh }},
		{"loop_heat_to_house_kwh", "loop heat handed on to heating", "kWh", 0, Neither, true, false, func(t *Totals) *float64 { return &t.LoopToHouseKWh }},
		{"store_gain_kwh", "heat kept at the year's end", "kWh", 1, Neither, true, false, func(t *Totals) *float64 { return &t.StoreGainKWh }},
		{"system_efficiency", "heat delivered per unit of electricity", "", 2, More, true, false, func(t *Totals) *float64 { return &t.SystemEfficiency }},
		{"heat_pump_cop", "COP of the heat pump, starts included", "", 2, More, true, false, func(t *Totals) *float64 { return &t.HeatPumpCOP }},
		{"run_hours", "compressor running", "h", 0, Neither, true, false, func(t *Totals) *float64 { return &t.RunHours }},
		{"extrapolated_hours", "of which outside the performance data", "h", 0, Less, true, false, func(t *Totals) *float64 { return &t.ExtrapolatedHours }},
		{"starts_per_year", "compressor starts a year", "", 0, Less, true, false, func(t *Totals) *float64 { return &t.StartsPerYear }},
		{"starts_per_day", "compressor starts a day", "", 1, Less, true, false, func(t *Totals) *float64 { return &t.StartsPerDay }},
		{"changeovers_per_year", "changeovers from heating a year", "", 0, Less, true, false, func(t *Totals) *float64 { return &t.Changeovers }},
		{"minutes_per_run", "mean run", "min", 0, More, true, false, func(t *Totals) *float64 { return &t.MinutesPerRun }},
		{"defrosts_per_year", "defrosts in hot-water runs a year", "", 0, Less, true, false, func(t *Totals) *float64 { return &t.Defrosts }},
		{"missed_hot_spells_per_year", "disinfection spells that did not hold", "", 1, Less, true, false, func(t *Totals) *float64 { return &t.HygieneMissed }},
		{"outlet_below_50_c_hours", "vessel's outlet below 50 C", "h", 0, Less, true, false, func(t *Totals) *float64 { return &t.TepidHours }},
		{"heating_heat_kwh", "heat from the heat pump for heating", "kWh", 0, Neither, true, false, func(t *Totals) *float64 { return &t.HeatingHeatKWh }},
		{"credited_heat_kwh", "hot water's losses that heated rooms", "kWh", 0, Neither, true, false, func(t *Totals) *float64 { return &t.CreditedKWh }},
		{"unwanted_heat_kwh", "hot water's losses that nobody wanted indoors", "kWh", 0, Less, true, false, func(t *Totals) *float64 { return &t.SummerGainKWh }},
		{"heating_starts_per_year", "compressor starts for heating a year", "", 0, Less, true, false, func(t *Totals) *float64 { return &t.HeatingStarts }},
		{"heating_defrosts_per_year", "defrosts in heating runs a year", "", 0, Less, true, false, func(t *Totals) *float64 { return &t.HeatingDefrosts }},
		{"heating_interrupted_hours", "heating kept waiting by hot water", "h", 0, Less, true, false, func(t *Totals) *float64 { return &t.InterruptedHours }},
		{"longest_heating_gap_minutes", "longest wait of heating for hot water", "min", 0, Less, true, true, func(t *Totals) *float64 { return &t.LongestGapMin }},
		{"worst_room_dip_k", "largest fall of the room temperature", "K", 2, Less, true, true, func(t *Totals) *float64 { return &t.WorstDipK }},
		{"showers_per_year", "showers a year", "", 0, Neither, true, false, func(t *Totals) *float64 { return &t.Showers }},
		{"failing_showers_per_year", "showers that fail a year", "", 1, Less, true, false, func(t *Totals) *float64 { return &t.FailingShowers }},
		{"baths_per_year", "baths a year", "", 0, Neither, true, false, func(t *Totals) *float64 { return &t.Baths }},
		{"failing_baths_per_year", "baths that fail a year", "", 1, Less, true, false, func(t *Totals) *float64 { return &t.FailingBaths }},
		{"tap_draws_per_year", "tap draws a year", "", 0, Neither, true, false, func(t *Totals) *float64 { return &t.TapDraws }},
		{"failing_tap_draws_per_year", "tap draws that fail a year", "", 0, Less, true, false, func(t *Totals) *float64 { return &t.FailingTaps }},
		{"too_cold_minutes_per_year", "minutes of too cold shower a year", "min", 0, Less, true, false, func(t *Totals) *float64 { return &t.TooColdMinutes }},
		{"wait_minutes_per_year", "minutes of waiting for hot water a year", "min", 0, Less, true, false, func(t *Totals) *float64 { return &t.WaitMinutes }},
		{"days_with_a_failing_shower", "days with a failing shower a year", "", 1, Less, true, false, func(t *Totals) *float64 { return &t.BadDays }},
		{"worst_day_failing_showers", "most failing showers in one day", "", 1, Less, true, true, func(t *Totals) *float64 { return &t.WorstDay }},
		{"longest_bad_spell_days", "most such days in a row", "", 1, Less, true, true, func(t *Totals) *float64 { return &t.LongestSpell }},
		{"cost_per_year", "cost of electricity a year", "money", 0, Less, true, false, func(t *Totals) *float64 { return &t.CostPerYear }},
		{"carbon_kg_per_year", "carbon of that electricity, CO2 equivalent", "kg", 0, Less, true, false, func(t *Totals) *float64 { return &t.CarbonKg }},
		{"floor_area_m2", "floor area lost, clearances included", "m2", 2, Less, false, false, func(t *Totals) *float64 { return &t.FloorAreaM2 }},
		{"space_l", "cupboard space taken", "l", 0, Less, false, false, func(t *Totals) *float64 { return &t.SpaceL }},
	}
}
