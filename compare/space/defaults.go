package space

// All figures of this file are generic ranges from memory, in the middle of which
// the defaults lie; they stand in for the sheet of a product until there is one.

// FloorCheckKN is the concentrated load above which a floor wants a check, kN:
// 2.0 kN for domestic floors in the British annex to EN 1991-1-1 (category A),
// from memory. Local rules and a qualified person decide.
const FloorCheckKN = 2.0

// DefaultFrontFreeMM is the free floor before a cupboard door, millimetres:
// a narrow landing; common practice, no source.
const DefaultFrontFreeMM = 600

// Clearances of a vessel, millimetres, from memory: 25-50 at the sides for
// fitting, 300-600 in front of immersion heater and valves, 200-300 above for
// pipes.
const (
	vesselSideMM  = 40
	vesselFrontMM = 450
	vesselAboveMM = 250
)

// kgPerL is the density of the stored water at about 50 C.
const kgPerL = 0.99

// size is a row of generic outer dimensions, low and high.
type size struct {
	litres                   float64
	diameterLow, diameterTop float64 // mm, insulation included
	heightLow, heightTop     float64 // mm
	emptyLow, emptyTop       float64 // kg
}

// cylinderSizes are generic ranges of stored-water cylinders, from memory.
func cylinderSizes() []size {
	return []size{
		{120, 475, 555, 900, 1150, 25, 45},
		{150, 475, 555, 1050, 1400, 28, 55},
		{180, 475, 555, 1250, 1600, 32, 60},
		{210, 475, 590, 1300, 1800, 35, 70},
		{250, 475, 600, 1450, 2050, 40, 80},
		{300, 550, 650, 1500, 2050, 45, 95},
	}
}

// compactSizes are generic ranges of compact stores, from memory.
func compactSizes() []size {
	return []size{
		{50, 400, 500, 550, 750, 18, 40},
		{80, 440, 550, 650, 900, 22, 50},
		{100, 460, 560, 750, 1050, 26, 60},
		{120, 480, 580, 850, 1150, 30, 65},
		{150, 500, 600, 950, 1300, 35, 75},
	}
}

// Expansion vessels. Sizes in litres are a common series, dimensions from memory.
type expansionSize struct{ litres, diameterMM, heightMM, emptyKg float64 }

func expansionSizes() []expansionSize {
	return []expansionSize{
		{8, 220, 300, 2},
		{12, 280, 310, 3},
		{18, 280, 400, 4},
		{25, 300, 480, 5},
		{35, 370, 480, 7},
		{50, 400, 600, 12},
	}
}

// Pressures are in bar gauge, shares without unit.
const (
	// Drinking water heated from 10 C to 95 C grows by 3.931 % (water tables);
	// 4 % covers a thermostat that fails.
	drinkingExpansion = 0.04
	// Precharge and end pressure of a mains-fed cylinder behind a pressure
	// reducer, from memory.
	drinkingPrechargeBar = 3.0
	drinkingEndBar       = 5.4
	// Heating water from 10 C to 65 C grows by 1.953 %; 2 % taken.
	heatingExpansion = 0.02
	// Precharge and end pressure of a heating circuit with a 3 bar safety valve,
	// from memory.
	heatingPrechargeBar = 1.0
	heatingEndBar       = 2.5
)

// Side clearance of small fittings, millimetres; common practice, no source.
const fittingSideMM = 10

// Small parts, from memory.
func temperingValve() Item {
	return Item{Name: "tempering valve", WidthMM: 150, DepthMM: 80, HeightMM: 150, ClearSideMM: fittingSideMM, WeightFullKg: 1, Above: true}
}

func dischargePipework() Item {
	return Item{Name: "discharge pipework", WidthMM: 100, DepthMM: 150, HeightMM: 300, ClearSideMM: fittingSideMM, WeightFullKg: 1, Above: true}
}

func pump() Item {
	return Item{Name: "pump", WidthMM: 150, DepthMM: 200, HeightMM: 180, ClearSideMM: fittingSideMM, WeightFullKg: 3, Above: true}
}

// A volumiser is a slim bare tank: inner diameter and insulation, from memory;
// steel weighs about 0.4 kg a litre. Up to 25 l, some 35 kg, it hangs on a wall:
// practice, no source.
const (
	volumiserInnerMM      = 270
	volumiserInsulationMM = 40
	volumiserKgPerL       = 0.4
	volumiserFrontMM      = 0 // nothing on it needs service
	volumiserAboveMM      = 150
	volumiserHangsL       = 25
)
