package compare

// Money says what a difference is worth, in the currency of the case and in
// today's money: rates and growth are those beyond general inflation.
type Money struct {
	MaterialityPerYear  float64 // a smaller difference in cost is no real difference
	HorizonYears        int     // over which costs are counted, 1-60
	DiscountPercent     float64 // real discount rate, -5 to 20 % a year
	EnergyGrowthPercent float64 // growth of electricity prices beyond inflation, -10 to 15 % a year

	Compact  Outlay
	Cylinder Outlay

	FloorValuePerM2Year float64 // what a square metre of floor is worth a year, 0-1,000,000; 0: not stated
	FloorValueShare     float64 // of that, what a square metre of cupboard is worth, 0-1

	CarbonKgPerKWh     [12]float64 // of electricity by month, January first, 0-2 kg CO2e/kWh
	CarbonYearKgPerKWh float64     // one factor for all months in place of them, 0-2; 0: by month
}

// Outlay is what an option costs besides electricity. Both options have the same
// fields; amounts are 0-10,000,000.
type Outlay struct {
	Purchase           float64 // vessel with its fittings
	Installation       float64
	Volumiser          float64 // a tank for heating water, fitted, where the option needs one
	SafetyCheckPerYear float64 // inspection of the vessel's safety devices, often a condition of its warranty
	UpkeepPerYear      float64 // safety valve, expansion vessel, mixing valve
	DescalingPerYear   float64 // of coil or heater in hard water
	LifeYears          int     // after which purchase and installation are paid again, 1-60
}

// OutlayOf gives one option's outlay.
func (m *Money) OutlayOf(side Side) *Outlay {
	if side == SideCompact {
		return &m.Compact
	}
	return &m.Cylinder
}

// Capital is what is paid at the start, and again at the end of each life.
func (o *Outlay) Capital() float64 { return o.Purchase + o.Installation + o.Volumiser }

// ServicePerYear is what an option costs every year besides electricity.
func (o *Outlay) ServicePerYear() float64 {
	return o.SafetyCheckPerYear + o.UpkeepPerYear + o.DescalingPerYear
}

// CarbonByMonth gives the carbon factor of each month, kg CO2e/kWh.
func (m *Money) CarbonByMonth() [12]float64 {
	if m.CarbonYearKgPerKWh <= 0 {
		return m.CarbonKgPerKWh
	}
	var even [12]float64
	for i := range even {
		even[i] = m.CarbonYearKgPerKWh
	}
	return even
}

// Room is the place that the home has for an option, inner dimensions in mm,
// 0-20,000 each. What is 0 is not stated and limits nothing.
type Room struct {
	WidthMM, DepthMM, HeightMM float64
	DoorWidthMM, DoorHeightMM  float64 // opening through which the vessel is carried upright
	FrontFreeMM                float64 // free floor before the opening, which serves as space in front of the vessel
}

// stated reports whether any dimension of the room limits what fits.
func (r *Room) stated() bool {
	return r.WidthMM > 0 || r.DepthMM > 0 || r.HeightMM > 0 || r.DoorWidthMM > 0 || r.DoorHeightMM > 0
}

// Cheapest lets the windows of an option follow the first tariff: the cheapest
// hours of the day that still serve are found by simulation and then held, for
// the other tariffs too.
type Cheapest struct {
	Hours float64 // that hot water is wanted in, 0.5-24 h a day; 0: the windows are as stated
	// RaisedC, 35-75 C, is the setpoint in the cheapest hours of an option that may
	// heat at any time; 0: it may heat in them only.
	RaisedC float64
}
