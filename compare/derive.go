package compare

import (
	"math"

	"dhwcompare/climate"
	"dhwcompare/compare/calendar"
	"dhwcompare/compare/coil"
	"dhwcompare/compare/heatpump"
	"dhwcompare/compare/household"
)

// or gives a stated value, or else what it follows from.
func or(stated Auto, derived float64) float64 {
	if stated != nil {
		return *stated
	}
	return derived
}

// Showers gives the showers a day of all residents together.
func (h *Household) Showers() float64 {
	return or(h.ShowersPerDay, household.DefaultShowersPerDay(h.People, h.HasBath))
}

// Baths gives the baths a day of all residents together.
func (h *Household) Baths() float64 {
	return or(h.BathsPerDay, household.DefaultBathsPerDay(h.People, h.HasBath))
}

// TapLitres gives the hot litres a day, at 52 C, of all other uses.
func (h *Household) TapLitres() float64 {
	return or(h.TapLitresPerDay, household.DefaultTapLitresPerDay(h.People))
}

// Taps gives the number of tap draws a day.
func (h *Household) Taps() float64 {
	return or(h.TapsPerDay, household.DefaultTapsPerDay(h.People))
}

// Params gives the habits as the draw-off generator takes them.
func (h *Household) Params() household.Params {
	p := household.Defaults(h.People, h.HasBath)
	p.ShowersPerDay, p.BathsPerDay = h.Showers(), h.Baths()
	p.TapLitresPerDay, p.TapsPerDay = h.TapLitres(), h.Taps()
	p.ShowerMinutes, p.ShowerMinutesSpread = h.ShowerMinutes, h.ShowerMinutesSpread
	p.ShowerFlowLPerMin, p.ShowerFlowSpread = h.ShowerFlowLPerMin, h.ShowerFlowSpread
	p.ShowerC, p.ShowerMinC = h.ShowerC, h.ShowerMinC
	p.BathLitres, p.BathFlowLPerMin, p.BathC, p.BathMinC = h.BathLitres, h.BathFlowLPerMin, h.BathC, h.BathMinC
	p.TapFlowLPerMin, p.TapC, p.TapMinC = h.TapFlowLPerMin, h.TapC, h.TapMinC
	p.Bathrooms, p.BackToBackShare, p.BackToBackGapMinutes = h.Bathrooms, h.BackToBackShare, h.BackToBackGapMin
	p.Rhythm, p.Away, p.Guests = h.Rhythm, h.Away, h.Guests
	return p
}

// Mains gives the monthly mains temperatures, and whether they are estimated.
func (c *Climate) Mains() (mainsC [12]float64, estimated bool) {
	if c.MainsC != nil {
		return *c.MainsC, false
	}
	return climate.EstimateMains(c.OutdoorC), true
}

// Params gives the place as the weather generator takes it.
func (c *Climate) Params() climate.Params {
	mains, _ := c.Mains()
	return climate.Params{
		OutdoorC: c.OutdoorC, MainsC: mains, SDDailyMeanK: c.SDDailyMeanK, DailyRangeK: c.DailyRangeK,
		RHPercent: c.RHPercent, Persistence: c.Persistence, MainsSwingK: c.MainsSwingK, Outdoor: c.Outdoor,
	}
}

// Year gives the calendar of every simulated year.
func (c *Climate) Year() calendar.Year {
	if c.SummerTime {
		return calendar.European(c.FirstWeekday)
	}
	return calendar.WithoutSummerTime(c.FirstWeekday)
}

// KW gives the nominal output of the unit.
func (h *HeatPump) KW() float64 { return or(h.NominalKW, h.Size.NominalKW()) }

// Params gives the unit as the performance map takes it.
func (h *HeatPump) Params() heatpump.Params {
	p := heatpump.Defaults()
	p.Size, p.NominalKW, p.Table, p.MinimumShare = h.Size, h.KW(), h.Table, h.MinimumShare
	p.LoadPenalty, p.FieldDerate, p.HighestFlowC = h.LoadPenalty, h.FieldDerate, h.HighestFlowC
	p.Start = heatpump.Start{HeatTauS: h.HeatLagS, ElectricityTauS: h.ElectricityLagS}
	return p
}

// LoopWaterL gives the water between heat pump and vessel, litres.
func (p *Pipes) LoopWaterL() float64 {
	const litresPerM3, mmPerM = 1000, 1000
	bore := p.LoopBoreMM / mmPerM
	return p.UnitWaterL + math.Pi/4*bore*bore*p.LoopLengthM*litresPerM3
}

// StandingLossW gives the standing loss at 45 K above the room, W. Unless
// stated it is the upper end of energy class B, for either vessel.
func (b *Body) StandingLossW() float64 { return or(b.LossW, classBLossW(b.VolumeL)) }

// classBLossW is the upper end of energy class B, 12 + 5.93 V^0.4 (EU 812/2013
// Annex II Table 2, coefficients from memory).
func classBLossW(litres float64) float64 { return 12 + 5.93*math.Pow(litres, 0.4) }

// lossTestK is the difference at which a standing loss is declared (EN 12897,
// from memory).
const lossTestK = 45

func (b *Body) lossWPerK() float64 { return b.StandingLossW() / lossTestK }

// Inside diameters from which an inside height follows, m (from memory).
const (
	compactBoreM  = 0.40
	cylinderBoreM = 0.45
)

func heightM(litres, diameterM float64) float64 {
	const litresPerM3 = 1000
	return litres / litresPerM3 / (math.Pi / 4 * diameterM * diameterM)
}

// InsideHeightM gives the inside height of the store, m.
func (s *CompactStore) InsideHeightM() float64 {
	return or(s.HeightM, heightM(s.VolumeL, compactBoreM))
}

// InsideHeightM gives the inside height of the cylinder, m.
func (s *Cylinder) InsideHeightM() float64 {
	return or(s.HeightM, heightM(s.VolumeL, cylinderBoreM))
}

// Coil gives the geometry of the store's coil.
func (s *CompactStore) Coil() coil.Geometry {
	g := coil.Corrugated25(s.CoilLengthM)
	g.FoulingM2KPerW = s.FoulingM2KW
	return g
}

// CoilLaw gives the heat transfer of the store's coil.
func (s *CompactStore) CoilLaw() coil.FastLaw {
	if s.CoilUAWPerK != nil {
		const exponent = 0.43 // of the coil of 25 m, computed
		return coil.Stated(*s.CoilUAWPerK, s.CoilUAFlow, exponent)
	}
	return fittedLaws.of(s.Coil())
}

// CoilContentL gives the mains water in the coil, litres.
func (s *CompactStore) CoilContentL() float64 { return or(s.CoilWaterL, s.Coil().ContentLitres()) }

// CoilDisplacedL gives what the coil takes from the heating water, litres.
func (s *CompactStore) CoilDisplacedL() float64 {
	return or(s.CoilBodyL, s.Coil().DisplacedLitres())
}
