package vessel

const (
	// kgPerLCold is the density of mains water, kg/l, at 10 deg C (IAPWS-95).
	kgPerLCold       = 0.9997
	secondsPerMinute = 60
)
