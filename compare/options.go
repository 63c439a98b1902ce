package compare

import (
	"fmt"

	"dhwcompare/compare/calendar"
	"dhwcompare/compare/coil"
	"dhwcompare/compare/heatpump"
	"dhwcompare/compare/household"
	"dhwcompare/compare/plant"
	"dhwcompare/compare/vessel"
)

// Side is one of the two options.
type Side int

// The options, in the order in which they always appear.
const (
	SideCompact Side = iota
	SideCylinder
	sides
)

const (
	secondsPerMinute = 60
	minutesPerHour   = 60
)

// String gives the option's name.
func (s Side) String() string {
	if s == SideCompact {
		return "compact store"
	}
	return "cylinder"
}

// Plant makes a fresh plant of one option.
func (c *Case) Plant(side Side) (*plant.Plant, error) {
	p, err := c.plantParams(side)
	if err != nil {
		return nil, err
	}
	return plant.New(p), nil
}

func (c *Case) plantParams(side Side) (plant.Params, error) {
	unit, err := heatpump.New(c.HeatPump.Params())
	if err != nil {
		return plant.Params{}, err
	}
	control := c.control(side)
	allowed, err := schedule(control.Windows, c.Climate.Year())
	if err != nil {
		return plant.Params{}, fmt.Errorf("%v: %w", side, err)
	}
	raised, err := raisedSchedules(control.Raised, c.Climate.Year())
	if err != nil {
		return plant.Params{}, fmt.Errorf("%v: %w", side, err)
	}
	if control.OffWhenAway {
		allowed = allowed.Without(awaySpans(c.Household.Away, c.Climate.Year()))
	}
	body := c.body(side)
	return plant.Params{
		Vessel:    c.vessel(side),
		HeatPump:  unit,
		Start:     heatpump.Start{HeatTauS: c.HeatPump.HeatLagS, ElectricityTauS: c.HeatPump.ElectricityLagS},
		Loop:      c.loop(),
		Control:   c.plantControl(control, allowed, raised),
		Supply:    c.supply(side),
		Service:   plant.Service{ColdSeconds: c.Service.ColdSeconds, BathPatienceS: c.Service.BathPatienceMin * secondsPerMinute},
		Power:     c.power(),
		Frost:     c.frost(side),
		Immersion: body.Immersion.params(),
		Hygiene:   body.Hygiene.params(c.Climate.Year()),
		House:     c.house(side),
		RoomC:     c.Dwelling.RoomC,
	}, nil
}

func (c *Case) control(side Side) Control {
	if side == SideCompact {
		return c.Compact.Control
	}
	return c.Cylinder.Control
}

func schedule(windows []Window, y calendar.Year) (plant.Schedule, error) {
	spans := make([]plant.Window, len(windows))
	for i, w := range windows {
		spans[i] = plant.Window{FromS: float64(w.FromMin) * secondsPerMinute, ToS: float64(w.ToMin) * secondsPerMinute}
	}
	return plant.DailyWindows(spans, y)
}

func (c *Case) vessel(side Side) vessel.Vessel {
	if side == SideCompact {
		s := &c.Compact
		return vessel.NewCompact(vessel.CompactParams{
			VolumeL: s.VolumeL, HeightM: s.InsideHeightM(), Layers: s.Layers, LossWPerK: s.lossWPerK(),
			ConductivityWPerMK: s.ConductivityWPerMK, InletMixingShare: s.InletMixingShare,
			CoilWaterL: s.CoilContentL(), CoilDisplacedL: s.CoilDisplacedL(), CoilLaw: s.CoilLaw(),
			PrimaryShare: c.HeatPump.capacityShare(),
		})
	}
	s := &c.Cylinder
	return vessel.NewCylinder(vessel.CylinderParams{
		VolumeL: s.VolumeL, HeightM: s.InsideHeightM(), Layers: s.Layers, LossWPerK: s.lossWPerK(),
		ConductivityWPerMK: s.ConductivityWPerMK, InletMixingShare: s.InletMixingShare,
		CoilUAWPerK: coil.IndirectUA(s.CoilAreaM2, s.CoilUWPerM2, s.FoulingM2KW), CoilBottom: s.CoilBottom, CoilTop: s.CoilTop,
		PrimaryShare: c.HeatPump.capacityShare(),
	})
}

// supply gives what stands between vessel and taps. The compact store's coil
// lies in the way of the water; the cylinder's body does not count.
func (c *Case) supply(side Side) plant.Supply {
	drops := []float64{c.Mains.TemperingKPa}
	if side == SideCompact {
		drops = append(drops, c.Mains.CompactCoilKPa)
	}
	s := plant.Supply{
		LargestFlowLPerMin: coil.LargestFlow(c.Mains.LargestFlowLPerMin, c.Mains.DynamicBar, drops...),
		DeadLegCoolS:       c.Pipes.LegCoolingMin * secondsPerMinute,
		ShowerLimitLPerMin: c.control(side).ShowerLimit,
		TurnDownShare:      c.Household.TurnDownShare,
		PatienceS:          c.Household.PatienceMin * secondsPerMinute,
	}
	for _, o := range household.Outlets(c.Household.Bathrooms) {
		s.DeadLegsL = append(s.DeadLegsL, c.Pipes.legL(o.Place))
		margin := 0.0
		if o.Place == household.AtShower {
			margin = c.Household.ShowerMixerMargin
		}
		s.MixerMarginK = append(s.MixerMarginK, margin)
	}
	return s
}

func (p *Pipes) legL(place household.Place) float64 {
	switch place {
	case household.AtShower:
		return p.ShowerLegL
	case household.AtBath:
		return p.BathLegL
	case household.AtKitchen:
		return p.KitchenLegL
	default:
		return p.BasinLegL
	}
}
