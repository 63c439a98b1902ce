package household

import (
	"fmt"
	"strings"

	"dhwcompare/compare/calendar"
)

// RatingColdC is the temperature of the cold water in tests with a load profile,
// deg C.
const RatingColdC = 10.0

const joulesPerKWh = 3.6e6

// Profile gives a year in which each day repeats a published load profile, such
// as "M" (Regulation (EU) No 812/2013, Annex VII, Table 3). Its times are standard
// time all year, and Draw.Outlet counts as in Outlets(1).
//
// A draw of the table ends when its energy above the cold water, RatingColdC in
// the rating, has come out. The regulation states up to two temperatures: from Tm
// on the water counts, and Tp, where there is one, has to be reached in the course
// of the draw. Here WantC is Tp where there is one, else Tm, and MinC is Tm. So
// whoever judges a draw by the regulation must ask that its water reaches WantC,
// not only MinC: a draw whose Tm is 10 C can do no wrong by MinC alone. The flow
// is taken as the flow mixed to WantC at the outlet.
func Profile(name string) ([]Draw, error) {
	day, err := profileDay(name)
	if err != nil {
		return nil, err
	}
	draws := make([]Draw, 0, len(day)*calendar.Days)
	for i := range calendar.Days {
		for _, t := range day {
			d := t.draw()
			d.StartS += float64(i) * calendar.DayS
			draws = append(draws, d)
		}
	}
	return draws, nil
}

// ProfileNames lists the published load profiles, smallest first.
func ProfileNames() []string {
	names := make([]string, len(loadProfiles))
	for i, profile := range loadProfiles {
		names[i] = profile.name
	}
	return names
}

func profileDay(name string) ([]tapping, error) {
	for _, profile := range loadProfiles {
		if profile.name == name {
			return profile.tappings, nil
		}
	}
	return nil, fmt.Errorf("load profile %q is not known: use one of %s", name, strings.Join(ProfileNames(), ", "))
}

func (t tapping) draw() Draw {
	kind, outlet := t.purpose()
	return Draw{
		StartS:      float64(t.hour*calendar.HourS + t.minute*60),
		Outlet:      outlet,
		Kind:        kind,
		FlowLPerMin: t.flowLPerMin,
		WantC:       max(t.usefulC, t.peakC),
		MinC:        t.usefulC,
		End:         End{ByJoules, t.energyKWh * joulesPerKWh},
	}
}

// purpose gives the kind and the outlet of a draw, which the table does not state:
// 6 l/min at 40 C is taken as a shower, 10 to 16 l/min that must reach 40 C as a
// bath, the rest as taps, with the kitchen tap for what must reach 55 C (dish
// washing). The uses are those of EN 16147, from memory.
func (t tapping) purpose() (kind Kind, outlet int) {
	switch {
	case t.flowLPerMin == 6 && t.usefulC == 40:
		return Shower, 0
	case t.flowLPerMin >= 10 && t.flowLPerMin <= 16 && t.peakC == 40:
		return Bath, outletAt(AtBath, 1)
	case t.peakC == 55:
		return Tap, outletAt(AtKitchen, 1)
	default:
		return Tap, outletAt(AtBasin, 1)
	}
}
