package space

import (
	"errors"
	"fmt"
	"strings"

	"dhwcompare/compare/wording"
)

// Room is the place that a person has for the equipment, inner dimensions.
type Room struct {
	WidthMM, DepthMM, HeightMM float64
	// DoorWidthMM and DoorHeightMM are the opening through which things are carried
	// upright; zero means that the whole front is open.
	DoorWidthMM, DoorHeightMM float64
	// FrontFreeMM is free floor before the opening (a landing, a hall) that can
	// serve as the space in front while the door is open.
	FrontFreeMM float64
}

// Limit names what can block a fit.
type Limit string

// The limits of a room, in the order in which they are tried.
const (
	LimitWidth      Limit = "width"
	LimitDepth      Limit = "depth"
	LimitHeight     Limit = "height"
	LimitDoorWidth  Limit = "door width"
	LimitDoorHeight Limit = "door height"
)

// Block is one thing that keeps an option out of a room.
type Block struct {
	Limit          Limit
	Item           string // the item that does not pass the door; empty for the whole
	Beside         string // what stands beside the vessel and is in the length needed
	NeedMM, HaveMM float64
}

// ShortMM is how many millimetres are missing.
func (b Block) ShortMM() float64 { return b.NeedMM - b.HaveMM }

// String says what blocks and by how much.
func (b Block) String() string {
	what := string(b.Limit)
	if b.Item != "" {
		what = fmt.Sprintf("%s, for the %s", b.Limit, b.Item)
	}
	if b.Beside != "" {
		what = fmt.Sprintf("%s, with the %s beside it", b.Limit, b.Beside)
	}
	return wording.Sprintf("%s: needs %.0f mm, has %.0f mm, %.0f mm short", what, b.NeedMM, b.HaveMM, b.ShortMM())
}

// Fitting is the answer to whether an option fits a room.
type Fitting struct {
	Fits bool
	// Turned says that the arrangement stands along the depth of the room, a
	// quarter turn about the vertical axis, and faces a side wall.
	Turned bool
	// Blocks is empty if it fits; else what blocks the better of both positions.
	Blocks []Block
}

// Fit tries an arrangement as it is and turned by a quarter about the vertical
// axis. As it is, its front faces the opening, and free floor before the opening
// counts as space in front; turned, it faces a side wall and needs all of it
// inside. Every standing item must pass the door upright, narrow side ahead.
//
// If neither position fits, the answer is the one with fewer things in the way,
// then the one with fewer millimetres missing, then the unturned one.
func Fit(f Footprint, r Room) (Fitting, error) {
	if err := r.check(); err != nil {
		return Fitting{}, err
	}
	if len(f.standing) == 0 {
		return Fitting{}, errors.New("an empty footprint has no fit: measure the items first")
	}
	door := doorBlocks(f.standing, r)
	inFront := max(0, f.FrontMM-r.FrontFreeMM)
	straight := append(f.inRow(LimitWidth, bodyBlocks(f.WidthMM, f.DepthMM+inFront, f.HeightMM, r)), door...)
	turned := append(f.inRow(LimitDepth, bodyBlocks(f.DepthMM+f.FrontMM, f.WidthMM, f.HeightMM, r)), door...)
	if better(turned, straight) {
		return Fitting{Fits: len(turned) == 0, Turned: true, Blocks: turned}, nil
	}
	return Fitting{Fits: len(straight) == 0, Blocks: straight}, nil
}

func (r *Room) check() error {
	for _, d := range []struct {
		name     string
		value    float64
		positive bool
	}{
		{"width_mm", r.WidthMM, true}, {"depth_mm", r.DepthMM, true}, {"height_mm", r.HeightMM, true},
		{"door width_mm", r.DoorWidthMM, false}, {"door height_mm", r.DoorHeightMM, false}, {"free front_mm", r.FrontFreeMM, false},
	} {
		if err := checkLength("room", d.name, d.value, d.positive); err != nil {
			return err
		}
	}
	return nil
}

func bodyBlocks(width, depth, height float64, r Room) []Block {
	var blocks []Block
	for _, b := range []Block{
		{Limit: LimitWidth, NeedMM: width, HaveMM: r.WidthMM},
		{Limit: LimitDepth, NeedMM: depth, HaveMM: r.DepthMM},
		{Limit: LimitHeight, NeedMM: height, HaveMM: r.HeightMM},
	} {
		if b.ShortMM() > 0 {
			blocks = append(blocks, b)
		}
	}
	return blocks
}

// inRow tells the block along the row what else stands in it: without that the
// length needed is a riddle.
func (f *Footprint) inRow(along Limit, blocks []Block) []Block {
	var names []string
	for _, i := range f.standing[1:] {
		names = append(names, i.Name)
	}
	for i := range blocks {
		if blocks[i].Limit == along {
			blocks[i].Beside = strings.Join(names, " and ")
		}
	}
	return blocks
}

func doorBlocks(standing []Item, r Room) []Block {
	var blocks []Block
	for _, i := range standing {
		for _, b := range []Block{
			{Limit: LimitDoorWidth, Item: i.Name, NeedMM: min(i.WidthMM, i.DepthMM), HaveMM: r.DoorWidthMM},
			{Limit: LimitDoorHeight, Item: i.Name, NeedMM: i.HeightMM, HaveMM: r.DoorHeightMM},
		} {
			if b.HaveMM > 0 && b.ShortMM() > 0 {
				blocks = append(blocks, b)
			}
		}
	}
	return blocks
}

// better reports whether one list of blocks is strictly the smaller obstacle.
func better(a, b []Block) bool {
	if len(a) != len(b) {
		return len(a) < len(b)
	}
	return shortfall(a) < shortfall(b)
}

func shortfall(blocks []Block) float64 {
	total := 0.0
	for _, b := range blocks {
		total += b.ShortMM()
	}
	return total
}
