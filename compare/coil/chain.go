package coil

import (
	"math"

	"dhwcompare/compare/water"
)

// tube holds what a metre of tube needs, in SI units.
type tube struct {
	boreM, outsideM float64
	boreOverCoil    float64
	insideFactor    float64
	insideM2PerM    float64
	outsideM2PerM   float64
	wallMKPerW      float64 // wall and fouling: resistance of one metre of tube
}

// perMetre works out what stays the same along the tube. The wall is taken as
// flat, on its mean area: within 0.1 % of the logarithmic form for these tubes,
// and right for corrugated tube, where that form has no meaning.
func (g Geometry) perMetre() tube {
	t := tube{
		boreM:        g.BoreMM / mmPerM,
		outsideM:     g.OutsideMM / mmPerM,
		boreOverCoil: g.boreOverCoil(),
		insideFactor: g.InsideFactor,
	}
	t.insideM2PerM = math.Pi * t.boreM * g.AreaFactor
	t.outsideM2PerM = math.Pi * t.outsideM * g.AreaFactor
	meanM2PerM := (t.insideM2PerM + t.outsideM2PerM) / 2
	t.wallMKPerW = g.WallMM/mmPerM/(g.WallConductivityWPerMK*meanM2PerM) + g.FoulingM2KPerW/t.outsideM2PerM
	return t
}

// reynolds is that of a flow in litres a minute metered cold at meteredC, where
// the water has warmed to tC.
func (t tube) reynolds(flowLPerMin, meteredC, tC float64) float64 {
	kgPerS := flowLPerMin / 60 * water.KgPerLitre(meteredC)
	return 4 * kgPerS / (math.Pi * t.boreM * water.ViscosityPaS(tC))
}

// insideWPerM2K is the inside film coefficient at the Reynolds number re.
func (t tube) insideWPerM2K(re, tC float64) float64 {
	nusselt := InsideNusselt(re, water.Prandtl(tC), t.boreOverCoil)
	return t.insideFactor * nusselt * water.ConductivityWPerMK(tC) / t.boreM
}

// The wall temperature is found when a further turn moves it by less than this
// share of its difference to the store.
const (
	wallTolerance = 1e-10
	wallTurns     = 100
)

// link is the state of the chain at one place on the tube.
type link struct {
	uaWPerMK       float64 // per metre of tube
	outsideWPerM2K float64
}

// solve finds the chain between tube water at tubeC with the inside resistance
// given (m K/W) and a store at storeC. The outside film depends on the wall it
// heats: substituting it again and again closes in on the answer, since the film
// goes with a power below 1/3 of the difference.
func (t tube) solve(insideMKPerW, tubeC, storeC float64) link {
	inner := insideMKPerW + t.wallMKPerW
	diffK := (storeC - tubeC) / 2
	var h float64
	for range wallTurns {
		h = outsideWPerM2K(storeC, diffK, t.outsideM)
		outer := 1 / (h * t.outsideM2PerM)
		next := (storeC - tubeC) * outer / (inner + outer)
		done := math.Abs(next-diffK) <= wallTolerance*math.Abs(next)
		diffK = next
		if done {
			break
		}
	}
	return link{uaWPerMK: 1 / (inner + 1/(h*t.outsideM2PerM)), outsideWPerM2K: h}
}
