package casefile

import "dhwcompare/compare"

func roomKeys() []field[compare.Case] {
	type room = compare.Room
	const least, most, unstated = 100, 20000, "not stated"
	side := func(path string, at func(*room) *float64, help string) field[room] {
		return number(path, "mm", least, most, at, "limits nothing until it is stated", help).orZero(unstated)
	}
	return within("room", func(c *compare.Case) *room { return &c.Room },
		side("width_mm", func(r *room) *float64 { return &r.WidthMM }, "inner width").common(),
		side("depth_mm", func(r *room) *float64 { return &r.DepthMM }, "inner depth").common(),
		side("height_mm", func(r *room) *float64 { return &r.HeightMM }, "inner height").common(),
		side("door_width_mm", func(r *room) *float64 { return &r.DoorWidthMM }, "width of the opening that a vessel passes upright"),
		side("door_height_mm", func(r *room) *float64 { return &r.DoorHeightMM }, "height of that opening"),
		number("front_free_mm", "mm", 50, most, func(r *room) *float64 { return &r.FrontFreeMM }, "a narrow landing; "+practice,
			"free floor before the opening, which serves as space in front").orZero("none"),
	)
}

func serviceKeys() []field[compare.Case] {
	type service = compare.Service
	return within("service", func(c *compare.Case) *service { return &c.Service },
		number("cold_s", "s", 0, 600, func(s *service) *float64 { return &s.ColdSeconds }, practice,
			"how long a shower may be too cold before it has failed").common(),
		number("bath_patience_min", "min", 1, 120, func(s *service) *float64 { return &s.BathPatienceMin }, practice,
			"how long a bath may take to fill before it has failed"),
		number("failures_per_year", "1/year", 0, 1000, func(s *service) *float64 { return &s.FailuresPerYear }, practice,
			"failing showers a year that are acceptable").common(),
		number("confidence_percent", "%", 50, 99.9, func(s *service) *float64 { return &s.ConfidencePercent }, practice,
			"confidence with which that must be met"),
	)
}
