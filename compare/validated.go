package compare

import "dhwcompare/compare/wording"

// Between these the results are held against something measured or exact.
const (
	// COP of the certified medians that the performance map is held against, from
	// testdata/published/heatpump_certified_medians.csv.
	leastCertifiedCOP, mostCertifiedCOP = 2.28, 8.15
	// 90th percentile of certified packages with a cylinder, load profiles L and XL,
	// from testdata/published/rated_packages.csv.
	mostCertifiedEfficiency = 3.3
	// The first law closes to rounding; this is a thousand times what it ever left.
	mostResidual = 1e-6
)

// resultWarnings tells which results of an option lie outside what the calculation
// is held against.
func resultWarnings(o *Option) []Warning {
	var list []Warning
	if o.HeatPumpCOP > 0 && (o.HeatPumpCOP < leastCertifiedCOP || o.HeatPumpCOP > mostCertifiedCOP) {
		list = append(list, Warning{"heat_pump_cop", wording.Sprintf("%s: a COP of %.2f lies outside %.2f to %.2f, the certified points that the performance is held against", o.Name, o.HeatPumpCOP, leastCertifiedCOP, mostCertifiedCOP)})
	}
	if o.SystemEfficiency > mostCertifiedEfficiency {
		list = append(list, Warning{"system_efficiency", wording.Sprintf("%s: %.2f kWh of hot water for each kWh of electricity is more than nine in ten certified packages give (%.1f); check the inputs", o.Name, o.SystemEfficiency, mostCertifiedEfficiency)})
	}
	if o.FirstLawResidual > mostResidual {
		list = append(list, Warning{"first_law_residual", wording.Sprintf("%s: the heat balance leaves %.0e of the heat, more than rounding does; this is a defect of the program, do not use the results", o.Name, o.FirstLawResidual)})
	}
	return list
}
