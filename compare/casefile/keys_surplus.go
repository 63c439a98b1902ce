package casefile

import (
	"dhwcompare/compare"
	"dhwcompare/compare/datafile"
)

func surplusKeys() []field[compare.Case] {
	files := fileKeys("file", "sha256", func(s *compare.Surplus) *datafile.File { return &s.File },
		func(s *compare.Surplus) { s.HalfHourKWh = nil },
		"the home's own surplus electricity, such as solar: CSV with the columns start_utc and surplus_kwh, a year of steps")
	return within("surplus", func(c *compare.Case) *compare.Surplus { return &c.Surplus },
		files[0], files[1],
		number("export_per_kwh", "currency/kWh", -highestRate, highestRate, func(s *compare.Surplus) *float64 { return &s.ExportPerKWh },
			"nothing is paid for exported electricity", "payment that is lost when the home's own surplus heats water").idleIf(noSurplus),
	)
}

func noSurplus(s *compare.Surplus) string {
	if s.File.Stated() || len(s.HalfHourKWh) > 0 {
		return ""
	}
	return "there is no surplus"
}
