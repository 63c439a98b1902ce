package water

const (
	// CpJPerKgK is the specific heat with which every heat balance is made, in
	// J/(kg K): the mean of 10 to 60 C from the enthalpy difference of IAPWS-95
	// (4182.6 from 10 to 60 C, 4182.4 from 10 to 55 C). One constant keeps the
	// first law exact; a single 5 K step at 10 C is 0.23 % off, any heating from
	// mains to 40 C or more 0.1 % at most.
	CpJPerKgK = 4182.0

	// VesselKgPerLitre is the density at which the contents of a vessel are
	// counted, in kg/l: water at 50 C (IAPWS-95). Between 35 and 65 C the true
	// density is within 0.8 % of it. A fixed mass keeps the heat balance of a
	// vessel exact; what expansion pushes out is not followed.
	VesselKgPerLitre = 0.9880

	// ShowerMarginK is how much warmer than the mixed water the hot side of a
	// thermostatic shower has to be, in K. From memory.
	ShowerMarginK = 5.0
)

// The range over which the property fits hold, in C.
const (
	minC = 0.0
	maxC = 100.0
)

const (
	secondsPerMinute = 60.0
	litresPerCubicM  = 1000.0
)
