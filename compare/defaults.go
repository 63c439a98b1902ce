package compare

import (
	"time"

	"dhwcompare/climate"
	"dhwcompare/compare/coil"
	"dhwcompare/compare/heatpump"
	"dhwcompare/compare/household"
	"dhwcompare/compare/water"
	"dhwcompare/tariffs"
)

// Defaults of what belongs to no package below. "Practice" is common practice
// with no source; "memory" is from memory.
const (
	defaultYears        = 20
	defaultCurrency     = "GBP"
	defaultPeople       = 2.4  // mean British household, memory
	defaultRoomC        = 20.0 // C, practice
	defaultPumpW        = 45.0 // W, 30-60, practice
	defaultStandbyW     = 15.0 // W, 10-20, practice; certified median 13 W
	defaultStandbyShare = 0.25 // hot water's part of a year's standby, practice
	defaultMinRunMin    = 3.0  // min, 2-10, practice

	defaultHeatLoss     = 180.0 // W/K: 100-150 new, 200-300 older homes, memory
	defaultBaseC        = 15.5  // C, base of British degree-days
	defaultDesignC      = -3.0  // C, practice for southern Britain
	defaultCapacity     = 10.0  // kWh/K, practice
	defaultFlowDesignC  = 45.0  // C, practice
	defaultFlowBaseC    = 28.0  // C, practice
	defaultHeatingRun   = 20.0  // min, practice
	defaultHeatedShare  = 1.0   // vessel and pipes stand in the heated space
	defaultDefrostEvery = 50.0  // min of running at 0-2 C, judgement on published surveys
	defaultLeastWaterL  = 40.0  // l, 20-60, practice
	defaultDefrostMin   = 5.0   // min, 3-8, practice
	defaultDefrostKWh   = 0.3   // kWh, 0.15-0.5, estimate: 5 min at about 4 kW
	defaultValveS       = 15.0  // s, 5-60, practice
	defaultPriorityMin  = 120.0 // min, practice
	defaultLeastHystK   = 2.0   // K, practice
	defaultLargestSetC  = 65.0  // C, practice
	defaultImmersionKW  = 3.0   // kW, practice
	defaultBoostK       = 5.0   // K, practice
	defaultHygieneDays  = 7.0   // for a cylinder kept below 60 C, practice; a risk assessment decides
	defaultHygieneC     = 60.0  // C
	defaultHygieneMin   = 30.0  // min, 30-60, practice
	defaultHygieneStart = 13 * 60

	defaultUnitWaterL      = 2.5  // l, practice
	defaultLoopLengthM     = 16.0 // m, flow and return together, practice
	defaultLoopBoreMM      = 26.2 // mm, 28 mm copper tube (EN 1057, 0.9 mm wall)
	defaultLoopMetalKJPerK = 12.0 // kJ/K, practice
	defaultIndoorLoss      = 1.5  // W/K, half of 3 (1.5-8), practice
	defaultOutdoorLoss     = 1.5  // W/K, the other half
	defaultPrimaryLPerMin  = 17.0 // l/min, 10-20, practice

	defaultShowerLegL    = 1.0  // l, 7 m of 15 mm copper tube (0.145 l/m, EN 1057)
	defaultBathLegL      = 1.0  // l
	defaultKitchenLegL   = 0.8  // l
	defaultBasinLegL     = 0.5  // l
	defaultLegCoolingMin = 25.0 // min, insulated 15 mm pipe, practice

	defaultMainsFlow   = 15.0 // l/min, memory
	defaultDynamicBar  = 2.0  // bar, memory
	defaultCoilKPa     = 50.0 // kPa at 15 l/min, 15-80, memory
	defaultTemperingKP = 30.0 // kPa at 15 l/min, memory

	defaultSensorLagS   = 45.0 // s, 20-120, practice
	defaultConductivity = 1.2  // W/mK, 1.0-1.5: water 0.6 and a steel wall, memory
	defaultClearSideMM  = 50.0 // mm, memory
	defaultClearFrontMM = 300.0
	defaultClearAboveMM = 250.0

	defaultColdSeconds     = 30.0 // s below the least temperature, practice
	defaultBathPatienceMin = 20.0 // min, practice
	defaultFailuresPerYear = 2.0  // practice
	defaultConfidence      = 90.0 // percent, practice
	defaultUnitRate        = 0.2611
	defaultStandingADay    = 0.5719
	defaultNightRate       = 0.14
	defaultDayRate         = 0.34
)

// Default gives a case in which everything is filled but the home itself: its
// people and its outdoor temperatures have to be stated.
func Default() Case {
	return Case{
		Currency:  defaultCurrency,
		Seed:      1,
		Years:     defaultYears,
		Household: defaultHousehold(),
		Mains:     Mains{defaultMainsFlow, defaultDynamicBar, defaultCoilKPa, defaultTemperingKP},
		Climate:   defaultClimate(),
		Dwelling: Dwelling{
			RoomC: defaultRoomC, HeatLossWPerK: defaultHeatLoss, BaseC: defaultBaseC, DesignC: defaultDesignC,
			CapacityKWhPerK: defaultCapacity, FlowDesignC: defaultFlowDesignC, FlowBaseC: defaultFlowBaseC,
			HeatingRunMin: defaultHeatingRun, HeatedShare: defaultHeatedShare,
		},
		HeatPump: defaultHeatPump(),
		Pipes: Pipes{
			UnitWaterL: defaultUnitWaterL, LoopLengthM: defaultLoopLengthM, LoopBoreMM: defaultLoopBoreMM,
			LoopMetalKJPerK: defaultLoopMetalKJPerK, IndoorLossWPerK: defaultIndoorLoss, OutdoorLossWPerK: defaultOutdoorLoss,
			PrimaryLPerMin: defaultPrimaryLPerMin,
			ShowerLegL:     defaultShowerLegL, BathLegL: defaultBathLegL, KitchenLegL: defaultKitchenLegL, BasinLegL: defaultBasinLegL,
			LegCoolingMin: defaultLegCoolingMin,
		},
		Compact:  defaultCompact(),
		Cylinder: defaultCylinder(),
		Tariffs:  defaultTariffs(),
		Money:    defaultMoney(),
		Room:     defaultRoom(),
		Service: Service{
			ColdSeconds: defaultColdSeconds, BathPatienceMin: defaultBathPatienceMin,
			FailuresPerYear: defaultFailuresPerYear, ConfidencePercent: defaultConfidence,
		},
	}
}

func defaultHeatPump() HeatPump {
	unit := heatpump.Defaults()
	return HeatPump{
		Size: unit.Size, MinimumShare: unit.MinimumShare,
		LoadPenalty: unit.LoadPenalty, FieldDerate: unit.FieldDerate, HighestFlowC: unit.HighestFlowC,
		HeatLagS: unit.Start.HeatTauS, ElectricityLagS: unit.Start.ElectricityTauS,
		MinRunMin: defaultMinRunMin, PumpW: defaultPumpW, StandbyW: defaultStandbyW, StandbyShare: defaultStandbyShare,
		DefrostIntervalMin: defaultDefrostEvery, DefrostMin: defaultDefrostMin, DefrostHeatKWh: defaultDefrostKWh,
		ValveTravelS: defaultValveS, PriorityMin: defaultPriorityMin, LeastWaterL: defaultLeastWaterL,
		Limits: Limits{LeastHysteresisK: defaultLeastHystK, LargestSetpointC: defaultLargestSetC},
	}
}

func defaultHousehold() Household {
	h := household.Defaults(defaultPeople, true)
	return Household{
		People: defaultPeople, HasBath: true,
		ShowerMinutes: h.ShowerMinutes, ShowerMinutesSpread: h.ShowerMinutesSpread,
		ShowerFlowLPerMin: h.ShowerFlowLPerMin, ShowerFlowSpread: h.ShowerFlowSpread,
		ShowerC: h.ShowerC, ShowerMinC: h.ShowerMinC,
		BathLitres: h.BathLitres, BathFlowLPerMin: h.BathFlowLPerMin, BathC: h.BathC, BathMinC: h.BathMinC,
		TapFlowLPerMin: h.TapFlowLPerMin, TapC: h.TapC, TapMinC: h.TapMinC,
		Bathrooms: h.Bathrooms, BackToBackShare: h.BackToBackShare, BackToBackGapMin: h.BackToBackGapMinutes,
		Rhythm: h.Rhythm, ShowerMixerMargin: water.ShowerMarginK,
	}
}

func defaultClimate() Climate {
	c := climate.Defaults()
	return Climate{
		SDDailyMeanK: c.SDDailyMeanK, DailyRangeK: c.DailyRangeK, RHPercent: c.RHPercent,
		Persistence: c.Persistence, MainsSwingK: c.MainsSwingK,
		FirstWeekday: time.Thursday, SummerTime: true,
	}
}

func defaultBody(litres float64, layers int, inletShare float64) Body {
	return Body{
		Immersion: Immersion{Height: 0.3, BoostK: defaultBoostK},
		Hygiene:   Hygiene{TargetC: defaultHygieneC, HoldMin: defaultHygieneMin, StartMin: defaultHygieneStart},
		VolumeL:   litres, Layers: layers, InletMixingShare: inletShare, ConductivityWPerMK: defaultConductivity,
		FloorShare: 1, SideClearMM: defaultClearSideMM, FrontClearMM: defaultClearFrontMM, AboveClearMM: defaultClearAboveMM,
	}
}

// defaultCompact is a compact store as practice sets one up: hot, with a small
// hysteresis and the whole output of the heat pump.
func defaultCompact() CompactStore {
	return CompactStore{
		Body: defaultBody(100, 10, 0.2), // l; layers; share stirred by the flow, practice
		Control: Control{
			SetpointC: 58, HysteresisK: 3, SensorHeight: 0.5, SensorLagS: defaultSensorLagS,
			AntiCycleMin: 5, OutputCap: 1, FlowAboveK: 5, OvershootK: 3, // practice
		},
		CoilLengthM: 32, CoilUAFlow: 10, // m of tube; l/min: practice
		FoulingM2KW: coil.FoulingM2KPerW,
	}
}

// defaultCylinder is a cylinder as practice sets one up: cooler, reheated once a
// day or so at reduced output.
func defaultCylinder() Cylinder {
	body := defaultBody(210, 40, 0.15) // l; layers; share stirred by mains water, practice
	body.Immersion.PowerKW = defaultImmersionKW
	body.Hygiene.EveryDays = defaultHygieneDays
	return Cylinder{
		Body: body,
		Control: Control{
			SetpointC: 48, HysteresisK: 6, SensorHeight: 0.4, SensorLagS: defaultSensorLagS,
			AntiCycleMin: 10, OutputCap: 0.5, FlowAboveK: 5, OvershootK: 5, // practice
		},
		CoilAreaM2: coil.IndirectAreaM2, CoilUWPerM2: coil.IndirectCleanWPerM2K,
		FoulingM2KW: coil.FoulingM2KPerW, CoilBottom: 0.05, CoilTop: 0.6, // practice
	}
}

// defaultTariffs: the British price cap of July to September 2026 as the flat
// rate (read); two rates of about 14 and 34 pence with a fixed night of seven
// hours by a meter that keeps standard time (rates read for April 2025, hours
// illustrative).
func defaultTariffs() []tariffs.Tariff {
	night := tariffs.Window{StartMin: 30, EndMin: 7*60 + 30, Clock: tariffs.StandardClock}
	return []tariffs.Tariff{
		*tariffs.Flat("flat", defaultUnitRate, defaultStandingADay),
		*tariffs.TwoRate("two-rate", defaultNightRate, defaultDayRate, defaultStandingADay, night),
	}
}
