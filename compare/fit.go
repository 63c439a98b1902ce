package compare

import (
	"strings"

	"dhwcompare/compare/space"
)

// Fit says whether an option fits the room that the case states.
type Fit struct {
	Fits   bool       `json:"fits"`
	Turned bool       `json:"turned"` // it stands a quarter turn about, facing a side wall
	Blocks []FitBlock `json:"blocks"` // what keeps it out; empty if it fits
	Text   string     `json:"text"`
}

// FitBlock is one thing that keeps an option out.
type FitBlock struct {
	Limit   string  `json:"limit"` // width, depth, height, door width or door height
	Item    string  `json:"item"`  // that does not pass the door; empty for the whole arrangement
	NeedMM  float64 `json:"need_mm"`
	HaveMM  float64 `json:"have_mm"`
	ShortMM float64 `json:"short_mm"`
}

// unlimitedMM stands for a dimension that is not stated.
const unlimitedMM = 20_000

// fit tries an arrangement in the room of the case; nil if none is stated.
func (r *Room) fit(taken space.Footprint) (*Fit, error) {
	if !r.stated() {
		return nil, nil
	}
	room := space.Room{
		WidthMM: r.WidthMM, DepthMM: r.DepthMM, HeightMM: r.HeightMM,
		DoorWidthMM: r.DoorWidthMM, DoorHeightMM: r.DoorHeightMM, FrontFreeMM: r.FrontFreeMM,
	}
	for _, d := range []*float64{&room.WidthMM, &room.DepthMM, &room.HeightMM} {
		if *d == 0 {
			*d = unlimitedMM
		}
	}
	answer, err := space.Fit(taken, room)
	if err != nil {
		return nil, err
	}
	f := &Fit{Fits: answer.Fits, Turned: answer.Turned, Blocks: []FitBlock{}}
	var texts []string
	for _, b := range answer.Blocks {
		f.Blocks = append(f.Blocks, FitBlock{string(b.Limit), b.Item, b.NeedMM, b.HaveMM, b.ShortMM()})
		texts = append(texts, b.String())
	}
	f.Text = f.words(texts)
	return f, nil
}

func (f *Fit) words(blocks []string) string {
	switch {
	case !f.Fits:
		return "does not fit (" + strings.Join(blocks, "; ") + ")"
	case f.Turned:
		return "fits, turned to face a side wall"
	default:
		return "fits"
	}
}

// fits reports whether nothing keeps the option out of the room, as far as one is
// stated.
func (o *Option) fits() bool { return o.Fit == nil || o.Fit.Fits }
