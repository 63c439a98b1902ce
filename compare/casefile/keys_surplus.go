package casefile

import "dhwcompare/compare"

func surplusKeys() []field[compare.Case] {
	return within("surplus", func(c *compare.Case) *compare.Surplus { return &c.Surplus },
		number("export_per_kwh", "currency/kWh", -highestRate, highestRate, func(s *compare.Surplus) *float64 { return &s.ExportPerKWh },
			"nothing is paid for exported electricity", "payment that is lost when the home's own surplus heats water").idleIf(noSurplus),
	)
}

func noSurplus(s *compare.Surplus) string {
	if len(s.HalfHourKWh) > 0 {
		return ""
	}
	return "there is no surplus"
}
