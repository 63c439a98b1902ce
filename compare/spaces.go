package compare

import "dhwcompare/compare/space"

// Things lists what an option needs room for: the vessel, and what has to stand
// or hang beside it.
func (c *Case) Things(side Side) ([]space.Item, error) {
	vessel, err := c.vesselItem(side)
	if err != nil {
		return nil, err
	}
	var beside []space.Item
	if side == SideCompact {
		beside, err = space.BesideCompact(c.Compact.VolumeL)
	} else {
		beside, err = space.BesideCylinder(c.Cylinder.VolumeL)
	}
	if err != nil {
		return nil, err
	}
	more, err := c.beside(side)
	return append(append([]space.Item{vessel}, beside...), more...), err
}

// beside lists what heating and the case put beside the vessel.
func (c *Case) beside(side Side) ([]space.Item, error) {
	var items []space.Item
	if litres := c.VolumiserL(side); litres > 0 {
		volumiser, err := space.DefaultVolumiser(litres)
		if err != nil {
			return nil, err
		}
		items = append(items, volumiser)
	}
	if c.body(side).OwnPump {
		items = append(items, space.DefaultPump())
	}
	return items, nil
}

// fullKgPerL is the weight of a full vessel for each litre, its steel included:
// from memory, for sizes of which no generic weight is known.
const fullKgPerL = 1.35

// vesselItem gives the vessel's outer dimensions: as stated, or else generic ones
// for its volume.
func (c *Case) vesselItem(side Side) (space.Item, error) {
	b := c.body(side)
	generic := space.DefaultCylinder
	if side == SideCompact {
		generic = space.DefaultCompact
	}
	item, err := generic(b.VolumeL)
	if err != nil {
		if b.WidthMM == nil || b.DepthMM == nil || b.OutsideHeightMM == nil {
			return item, err
		}
		item = space.Item{Name: side.String(), WeightFullKg: fullKgPerL * b.VolumeL, WaterL: b.VolumeL}
	}
	item.WidthMM, item.DepthMM, item.HeightMM = or(b.WidthMM, item.WidthMM), or(b.DepthMM, item.DepthMM), or(b.OutsideHeightMM, item.HeightMM)
	item.ClearSideMM, item.ClearFrontMM, item.ClearAboveMM = b.SideClearMM, b.FrontClearMM, b.AboveClearMM
	return item, nil
}

// takeSpace measures what the option takes.
func (o *Option) takeSpace(c *Case, side Side) error {
	things, err := c.Things(side)
	if err != nil {
		return err
	}
	taken, err := space.Measure(things)
	if err != nil {
		return err
	}
	o.FloorShare = c.body(side).FloorShare
	o.FloorAreaM2, o.SpaceL = taken.FloorAreaM2*o.FloorShare, taken.CupboardL
	o.WeightFullKg, o.NeedsFloorCheck = taken.WeightFullKg, taken.NeedsFloorCheck()
	if o.Fit, err = c.Room.fit(taken); err != nil {
		return err
	}
	for _, t := range things {
		o.SpaceItems = append(o.SpaceItems, SpaceItem{Name: t.Name, WidthMM: t.WidthMM, DepthMM: t.DepthMM, HeightMM: t.HeightMM, Hangs: t.Above})
	}
	return nil
}
