package casefile

import (
	"fmt"

	"dhwcompare/compare"
)

func checkStore(r *reader, c *compare.Case) {
	s := &c.Compact
	o := &option{"compact_store.", compare.SideCompact, c, &s.Body, &s.Control}
	r.checkOption(o)
	const largestShare = 0.7 // a coil that leaves less heating water is a slip
	displaced, water := o.key("coil_displaced_l"), o.key("coil_water_l")
	if s.CoilDisplacedL() > largestShare*s.VolumeL {
		r.clash(fmt.Sprintf("is %s l of compact_store.volume_l %s, allowed up to %s of it: make the coil shorter (compact_store.coil_length_m) or the store larger",
			rounded(s.CoilDisplacedL()), plain(s.VolumeL), plain(largestShare)), displaced, o.key("coil_length_m"), o.key("volume_l"))
	}
	if s.CoilContentL() > s.CoilDisplacedL() {
		r.clash(fmt.Sprintf("is %s l, more than the whole coil takes by %s, %s l: check both", rounded(s.CoilContentL()), displaced, rounded(s.CoilDisplacedL())),
			water, displaced)
	}
}

func checkCylinder(r *reader, c *compare.Case) {
	s := &c.Cylinder
	o := &option{"cylinder.", compare.SideCylinder, c, &s.Body, &s.Control}
	r.checkOption(o)
	if s.CoilTop <= s.CoilBottom {
		r.clash(fmt.Sprintf("is %s, not above cylinder.coil_bottom_share, which is %s: swap them", plain(s.CoilTop), plain(s.CoilBottom)),
			o.key("coil_top_share"), o.key("coil_bottom_share"))
	}
}

func (r *reader) checkOption(o *option) {
	r.checkControl(o)
	r.checkSize(o)
	r.checkHygiene(o)
	r.checkBoost(o)
}

// checkSize looks for dimensions that contradict the volume.
func (r *reader) checkSize(o *option) {
	b := o.body
	volume, width, depth, height := o.key("volume_l"), o.key("width_mm"), o.key("depth_mm"), o.key("outside_height_mm")
	things, err := o.c.Things(o.side)
	if err != nil {
		r.clash(fmt.Sprintf("is %s l, for which no usual dimensions are known: state %s, %s and %s", plain(b.VolumeL), width, depth, height),
			volume, width, depth, height)
		return
	}
	const mm3PerL, mmPerM = 1e6, 1000
	t := things[0]
	if boxL := t.WidthMM * t.DepthMM * t.HeightMM / mm3PerL; boxL < b.VolumeL {
		r.clash(fmt.Sprintf("is %s l, more than %s, %s and %s enclose, %s l: check the dimensions", plain(b.VolumeL), width, depth, height, rounded(boxL)),
			volume, width, depth, height)
	}
	if b.HeightM != nil && b.OutsideHeightMM != nil && *b.HeightM*mmPerM >= *b.OutsideHeightMM {
		r.clash(fmt.Sprintf("is %s m inside, not below %s, which is %s mm: check both", plain(*b.HeightM), height, plain(*b.OutsideHeightMM)),
			o.key("height_m"), height)
	}
}

// headroomK is how close the heat pump's water brings a vessel to its highest
// flow temperature in a hot spell: the engine's rule.
const headroomK = 8

// checkHygiene asks whether anything can make the hot spell hot.
func (r *reader) checkHygiene(o *option) {
	h, u := &o.body.Hygiene, &o.c.HeatPump
	if h.EveryDays == 0 || o.body.Immersion.PowerKW > 0 || h.TargetC <= u.HighestFlowC-headroomK {
		return
	}
	r.clash(fmt.Sprintf("is %s °C, but the heat pump reaches heat_pump.highest_flow_c %s less %d K and %s is 0: lower it, or add an immersion heater",
		plain(h.TargetC), plain(u.HighestFlowC), headroomK, o.key("immersion.power_kw")),
		o.key("hygiene.target_c"), o.key("immersion.power_kw"), "heat_pump.highest_flow_c", o.key("hygiene.every_days"))
}

// checkBoost asks whether the immersion heater leaves work to the heat pump.
func (r *reader) checkBoost(o *option) {
	i, t := &o.body.Immersion, o.lowest()
	if i.PowerKW == 0 || i.BoostBelowC < t.tempC {
		return
	}
	r.clash(fmt.Sprintf("is %s °C, not below %s, which is %s °C, so the immersion heater would do all the work: lower it",
		plain(i.BoostBelowC), t.key, plain(t.tempC)), o.key("immersion.boost_below_c"), t.key)
}
