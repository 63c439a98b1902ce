package casefile

import (
	"math"
	"slices"

	"dhwcompare/compare"
	"dhwcompare/compare/coil"
	"dhwcompare/compare/space"
)

type (
	store    = compare.CompactStore
	cylinder = compare.Cylinder
	body     = compare.Body
)

// Sections of the options.
const (
	storeSection    = "compact_store"
	cylinderSection = "cylinder"
)

const genericSizes = "middle of generic ranges, from memory"

func compactKeys() []field[compare.Case] {
	bodyOf := func(s *store) *body { return &s.Body }
	fields := within("", bodyOf, volumeKey("heating water and coil together", 20, 300))
	fields = append(fields, heightKey((*store).InsideHeightM, func(s *store) *compare.Auto { return &s.HeightM }))
	fields = append(fields, within("", bodyOf, bodyKeys(space.DefaultCompact)...)...)
	fields = append(fields, storeCoilKeys()...)
	rest := within("", bodyOf, besideCoilKeys()...)
	rest = append(rest, within("control", func(s *store) *compare.Control { return &s.Control }, controlKeys()...)...)
	storeOf := func(c *compare.Case) *store { return &c.Compact }
	return slices.Concat(within(storeSection, storeOf, fields...), volumiserKeys(storeSection, compare.SideCompact), within(storeSection, storeOf, rest...))
}

func cylinderKeys() []field[compare.Case] {
	bodyOf := func(s *cylinder) *body { return &s.Body }
	fields := within("", bodyOf, volumeKey("hot water held", 60, 450))
	fields = append(fields, heightKey((*cylinder).InsideHeightM, func(s *cylinder) *compare.Auto { return &s.HeightM }))
	fields = append(fields, within("", bodyOf, bodyKeys(space.DefaultCylinder)...)...)
	fields = append(fields, indirectCoilKeys()...)
	rest := within("", bodyOf, besideCoilKeys()...)
	rest = append(rest, within("control", func(s *cylinder) *compare.Control { return &s.Control }, controlKeys()...)...)
	cylinderOf := func(c *compare.Case) *cylinder { return &c.Cylinder }
	return slices.Concat(within(cylinderSection, cylinderOf, fields...), volumiserKeys(cylinderSection, compare.SideCylinder), within(cylinderSection, cylinderOf, rest...))
}

func volumeKey(help string, low, high float64) field[body] {
	return number("volume_l", "l", low, high, func(b *body) *float64 { return &b.VolumeL }, practice, help).common()
}

func heightKey[T any](follow func(*T) float64, at func(*T) *compare.Auto) field[T] {
	return auto("height_m", "m", 0.2, 3, at, follow, []string{"volume_l"}, "usual inside diameter, from memory", "inside height")
}

// bodyKeys are what both vessels have, but volume and height. Sizes gives generic
// outer dimensions from litres.
func bodyKeys(sizes func(litres float64) (space.Item, error)) []field[body] {
	outside := func(of func(space.Item) float64) func(*body) float64 {
		return func(b *body) float64 {
			item, err := sizes(b.VolumeL)
			if err != nil {
				return math.NaN() // the check of dimensions asks for them then
			}
			return of(item)
		}
	}
	volume := []string{"volume_l"}
	return []field[body]{
		auto("standing_loss_w", "W", 5, 400, func(b *body) *compare.Auto { return &b.LossW }, (*body).StandingLossW, volume,
			"upper end of energy class B, Regulation (EU) 812/2013, from memory", "standing loss at 45 K above the room").common(),
		number("conductivity_w_per_mk", "W/mK", 0.3, 10, func(b *body) *float64 { return &b.ConductivityWPerMK }, memory,
			"effective conductivity along the height: water, wall and slow mixing"),
		number("inlet_mixing_share", shareUnit, 0, 0.9, func(b *body) *float64 { return &b.InletMixingShare }, practice,
			"share of the volume that the inlet stirs"),
		count("layers", 5, 200, func(b *body) *int { return &b.Layers }, ourRule, "layers of the calculation"),
		auto("width_mm", "mm", 100, 3000, func(b *body) *compare.Auto { return &b.WidthMM },
			outside(func(i space.Item) float64 { return i.WidthMM }), volume, genericSizes, "outer width, insulation included").common(),
		auto("depth_mm", "mm", 100, 3000, func(b *body) *compare.Auto { return &b.DepthMM },
			outside(func(i space.Item) float64 { return i.DepthMM }), volume, genericSizes, "outer depth, insulation included").common(),
		auto("outside_height_mm", "mm", 100, 3500, func(b *body) *compare.Auto { return &b.OutsideHeightMM },
			outside(func(i space.Item) float64 { return i.HeightMM }), volume, genericSizes, "outer height, insulation included").common(),
		number("clear_side_mm", "mm", 0, 2000, func(b *body) *float64 { return &b.SideClearMM }, memory, "free space kept on each side"),
		number("clear_front_mm", "mm", 0, 2000, func(b *body) *float64 { return &b.FrontClearMM }, memory, "free space kept in front for service"),
		number("floor_share", shareUnit, 0, 1, func(b *body) *float64 { return &b.FloorShare }, practice, "share of its floor that is lost to other use: 1 with a cupboard to itself, about 0.5 under a worktop that stays in use, 0 in a loft"),
		number("clear_above_mm", "mm", 0, 2000, func(b *body) *float64 { return &b.AboveClearMM }, memory, "free space kept above for pipes"),
		flag("own_pump", func(b *body) *bool { return &b.OwnPump }, practice, "whether a pump of its own stands beside the vessel"),
	}
}

// besideCoilKeys are what else can heat a vessel, and when it has to.
func besideCoilKeys() []field[body] {
	return append(within("immersion", func(b *body) *compare.Immersion { return &b.Immersion }, immersionKeys()...),
		within("hygiene", func(b *body) *compare.Hygiene { return &b.Hygiene }, hygieneKeys()...)...)
}

func storeCoilKeys() []field[store] {
	return []field[store]{
		number("coil_length_m", "m", 5, 100, func(s *store) *float64 { return &s.CoilLengthM }, practice,
			"length of the coil, corrugated stainless tube of nominal size 25 mm").common(),
		auto("coil_ua_w_per_k", "W/K", 100, 10000, func(s *store) *compare.Auto { return &s.CoilUAWPerK }, coilUA,
			[]string{"coil_length_m", "fouling_m2k_per_w", "coil_ua_flow_l_per_min"},
			"films, wall and fouling in series, shown for a store at 50 °C and mains at 10 °C",
			"heat transfer of the whole coil at the flow of coil_ua_flow_l_per_min"),
		number("coil_ua_flow_l_per_min", "l/min", 2, 20, func(s *store) *float64 { return &s.CoilUAFlow }, practice,
			"flow at which coil_ua_w_per_k is stated"),
		auto("coil_water_l", "l", 0.5, 100, func(s *store) *compare.Auto { return &s.CoilWaterL }, (*store).CoilContentL,
			[]string{"coil_length_m"}, "bore of 25 mm, from memory", "mains water in the coil"),
		auto("coil_displaced_l", "l", 0.5, 200, func(s *store) *compare.Auto { return &s.CoilBodyL }, (*store).CoilDisplacedL,
			[]string{"coil_length_m"}, "31 mm over the crests, from memory", "what the coil, its water included, takes from the heating water"),
		number("fouling_m2k_per_w", "m²K/W", 0, 0.002, func(s *store) *float64 { return &s.FoulingM2KW }, memory,
			"fouling of the coil; 0.0004 with hard water").idleIf(statedUA),
		flag("in_defrost_circuit", func(s *store) *bool { return &s.InDefrostCircuit }, practice,
			"whether defrosts of heating take their heat from the store; its water then counts as heating water").common(),
	}
}

func statedUA(s *store) string {
	if s.CoilUAWPerK == nil {
		return ""
	}
	return "compact_store.coil_ua_w_per_k includes it"
}

// coilUA gives the heat transfer of the coil at the stated flow, W/K, in a store
// at 50 and with mains at 10 deg C.
func coilUA(s *store) float64 {
	const storeC, mainsC = 50, 10
	return coil.UA(s.Coil(), storeC, mainsC, s.CoilUAFlow).UAWPerK
}

func indirectCoilKeys() []field[cylinder] {
	return []field[cylinder]{
		number("coil_area_m2", "m²", 0.2, 20, func(c *cylinder) *float64 { return &c.CoilAreaM2 }, practice, "area of the indirect coil").common(),
		number("coil_u_w_per_m2k", "W/m²K", 50, 2000, func(c *cylinder) *float64 { return &c.CoilUWPerM2 }, practice,
			"heat transfer of the clean coil, usually 350 to 450"),
		number("fouling_m2k_per_w", "m²K/W", 0, 0.002, func(c *cylinder) *float64 { return &c.FoulingM2KW }, memory,
			"fouling of the coil; 0.0004 with hard water").common(),
		number("coil_bottom_share", shareUnit, 0, 1, func(c *cylinder) *float64 { return &c.CoilBottom }, practice, "bottom of the coil as a share of the height"),
		number("coil_top_share", shareUnit, 0, 1, func(c *cylinder) *float64 { return &c.CoilTop }, practice, "top of the coil as a share of the height"),
	}
}
