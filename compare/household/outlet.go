package household

import "fmt"

// Place says what sort of outlet it is; dead legs are usually stated by place.
type Place uint8

// The places where hot water is drawn.
const (
	AtShower Place = iota
	AtBath
	AtKitchen
	AtBasin
)

// String names the place as it appears in results.
func (p Place) String() string {
	switch p {
	case AtShower:
		return "shower"
	case AtBath:
		return "bath"
	case AtKitchen:
		return "kitchen tap"
	default:
		return "basin tap"
	}
}

// Outlet is one place of the home where hot water is drawn.
type Outlet struct {
	Place Place
	Name  string
}

// Outlets lists the outlets of a home in the order that Draw.Outlet counts
// them: one shower in each bathroom, then the bath, the kitchen tap and the basin
// tap. A home without a bath keeps the bath's place in the list and never draws
// from it.
func Outlets(bathrooms int) []Outlet {
	list := make([]Outlet, 0, bathrooms+3)
	for i := range bathrooms {
		name := AtShower.String()
		if bathrooms > 1 {
			name = fmt.Sprintf("%s %d", name, i+1)
		}
		list = append(list, Outlet{AtShower, name})
	}
	for _, place := range []Place{AtBath, AtKitchen, AtBasin} {
		list = append(list, Outlet{place, place.String()})
	}
	return list
}

// outletAt gives the index of the bath or of a tap; showers have the index of
// their bathroom.
func outletAt(place Place, bathrooms int) int {
	return bathrooms + int(place-AtBath)
}
