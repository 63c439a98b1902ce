package casefile

import "dhwcompare/compare"

func moneyKeys() []field[compare.Case] {
	return within("money", func(c *compare.Case) *compare.Money { return &c.Money },
		number("materiality_per_year", "per year", 0, 100000, func(m *compare.Money) *float64 { return &m.MaterialityPerYear }, practice,
			"a smaller difference in yearly cost is no real difference").common(),
	)
}

func serviceKeys() []field[compare.Case] {
	type service = compare.Service
	return within("service", func(c *compare.Case) *service { return &c.Service },
		number("cold_s", "s", 0, 600, func(s *service) *float64 { return &s.ColdSeconds }, practice,
			"how long a shower may be too cold before it has failed").common(),
		number("bath_patience_min", "min", 1, 120, func(s *service) *float64 { return &s.BathPatienceMin }, practice,
			"how long a bath may take to fill before it has failed"),
		number("failures_per_year", "per year", 0, 1000, func(s *service) *float64 { return &s.FailuresPerYear }, practice,
			"failing showers a year that are acceptable").common(),
		number("confidence_percent", "%", 50, 99.9, func(s *service) *float64 { return &s.ConfidencePercent }, practice,
			"confidence with which that must be met"),
	)
}
