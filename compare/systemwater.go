package compare

import (
	"fmt"
	"math"

	"dhwcompare/compare/wording"
)

// SystemWater is the heating water that stands open to the heat pump with one
// option: a defrost takes its heat from it, and a least run has to find room for
// its heat in it. Where there is too little, a volumiser makes up for it.
type SystemWater struct {
	LeastL     float64 `json:"least_l"`        // that the unit needs; 0: any
	LoopL      float64 `json:"loop_l"`         // in the unit and the pipes between it and the vessel
	HeatingL   float64 `json:"open_heating_l"` // in what no valve shuts off
	StoreL     float64 `json:"store_l"`        // in a store of the defrost circuit
	ShortL     float64 `json:"short_l"`        // what is missing
	VolumiserL float64 `json:"volumiser_l"`    // 0: none
	Stated     bool    `json:"volumiser_is_stated"`
	Text       string  `json:"text"` // why there is a volumiser, or none
}

// Heating water by design heat load, and the share of it that stays open where
// thermostatic valves shut the rest: practice, no source.
const (
	heatingLPerKW = 10.0
	openShare     = 0.5
)

// Volumisers come in steps, and none smaller than the least: practice, no source.
const (
	volumiserStepL  = 5.0
	leastVolumiserL = 10.0
	mostVolumiserL  = 100.0
)

// OpenHeatingL gives the heating water that no valve shuts off, litres.
func (d *Dwelling) OpenHeatingL() float64 {
	loadKW := d.HeatLossWPerK * (d.BaseC - d.DesignC) / wattsPerKW
	return or(d.OpenWaterL, openShare*heatingLPerKW*loadKW)
}

// HeatingWaterL gives the heating water in the store, litres.
func (s *CompactStore) HeatingWaterL() float64 { return math.Max(0, s.VolumeL-s.CoilDisplacedL()) }

// defrostsFromStore reports whether defrosts of heating take their heat from the
// option's vessel.
func (c *Case) defrostsFromStore(side Side) bool {
	return side == SideCompact && c.Compact.InDefrostCircuit && c.Dwelling.HeatLossWPerK > 0
}

// VolumiserL gives the litres of the option's volumiser: as stated, or else what
// heating is short of, in steps; 0: none.
func (c *Case) VolumiserL(side Side) float64 {
	return or(c.body(side).VolumiserL, volumiserFor(c.water(side).ShortL))
}

// volumiserFor is the next size of volumiser for what is missing.
func volumiserFor(shortL float64) float64 {
	if shortL <= 0 {
		return 0
	}
	steps := math.Ceil(shortL / volumiserStepL)
	return math.Min(math.Max(steps*volumiserStepL, leastVolumiserL), mostVolumiserL)
}

// water sums up the heating water. Without a house there is no heating to be
// defrosted, and hot water's own defrosts have the vessel to take from.
func (c *Case) water(side Side) SystemWater {
	if c.Dwelling.HeatLossWPerK == 0 {
		return SystemWater{}
	}
	w := SystemWater{LeastL: c.HeatPump.LeastWaterL, LoopL: c.Pipes.LoopWaterL(), HeatingL: c.Dwelling.OpenHeatingL()}
	if c.defrostsFromStore(side) {
		w.StoreL = c.Compact.HeatingWaterL()
	}
	w.ShortL = math.Max(0, w.LeastL-w.LoopL-w.HeatingL-w.StoreL)
	return w
}

// SystemWater gives the heating water of one option, with its volumiser and why
// there is one.
func (c *Case) SystemWater(side Side) SystemWater {
	w := c.water(side)
	w.VolumiserL, w.Stated = c.VolumiserL(side), c.body(side).VolumiserL != nil
	w.Text = w.words("the " + side.String())
	return w
}

// words says why whoever it is about has a volumiser, or none.
func (w *SystemWater) words(who string) string {
	switch {
	case w.Stated && w.VolumiserL > 0:
		return wording.Sprintf("%s has a volumiser of %.0f l because the case says so", who, w.VolumiserL)
	case w.Stated:
		return fmt.Sprintf("%s has no volumiser because the case says so", who)
	case w.LeastL == 0:
		return fmt.Sprintf("%s needs no volumiser: no least heating water is asked for", who)
	case w.VolumiserL > 0:
		return wording.Sprintf("%s needs a volumiser of %.0f l: %s", who, w.VolumiserL, w.balance())
	case w.StoreL > 0 && w.LoopL+w.HeatingL < w.LeastL:
		return fmt.Sprintf("%s serves as volumiser: %s; in return, defrosts of heating take their heat from it", who, w.balance())
	default:
		return fmt.Sprintf("%s needs no volumiser: %s", who, w.balance())
	}
}

// balance sets the water that stands open against what is needed.
func (w *SystemWater) balance() string {
	store := ""
	if w.StoreL > 0 {
		store = wording.Sprintf(", the store %.0f", w.StoreL)
	}
	return wording.Sprintf("defrosts and least runs need %.0f l of heating water, and %.0f l stand open to the heat pump (its loop %.0f, heating that no valve shuts off %.0f%s)",
		w.LeastL, w.LoopL+w.HeatingL+w.StoreL, w.LoopL, w.HeatingL, store)
}

// waterReasons say why an option has a volumiser, or none, where heating needs
// water at all.
func waterReasons(cmp *Comparison) []string {
	a, b := cmp.Options.Compact.SystemWater, cmp.Options.Cylinder.SystemWater
	if a.LeastL == 0 && a.VolumiserL == 0 && b.VolumiserL == 0 {
		return nil
	}
	first, second := a, b
	first.Text, second.Text = "", ""
	if first != second {
		return []string{fmt.Sprintf("Heating water: %s; %s.", a.Text, b.Text)}
	}
	if a.VolumiserL == 0 && !a.Stated && a.StoreL == 0 {
		return []string{fmt.Sprintf("Heating water: neither option needs a volumiser: %s.", a.balance())}
	}
	reason := "Heating water: " + a.words("each option")
	if a.VolumiserL > 0 && !a.Stated {
		reason += "; a compact store in the defrost circuit would do in its place"
	}
	return []string{reason + "."}
}
