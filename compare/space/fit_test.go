package space

import (
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// The vessel's envelope is 580 wide, 500 deep and 1750 high with 450 in front.
func TestFit(t *testing.T) {
	tests := []struct {
		name   string
		room   Room
		turned bool
		want   []string // what blocks
	}{
		{"exactly, with the hall in front", Room{WidthMM: 580, DepthMM: 500, HeightMM: 1750, FrontFreeMM: 450}, false, nil},
		{"exactly, all inside", Room{WidthMM: 580, DepthMM: 950, HeightMM: 1750}, false, nil},
		{"part of the front in the hall", Room{WidthMM: 580, DepthMM: 600, HeightMM: 1750, FrontFreeMM: 350}, false, nil},
		{"turned", Room{WidthMM: 950, DepthMM: 580, HeightMM: 1750}, true, nil},
		{"turned, the hall does not help", Room{WidthMM: 570, DepthMM: 580, HeightMM: 1750, FrontFreeMM: 450}, false,
			[]string{"width: needs 580 mm, has 570 mm, 10 mm short"}},
		{"too low", Room{WidthMM: 1000, DepthMM: 1000, HeightMM: 1700}, false,
			[]string{"height: needs 1750 mm, has 1700 mm, 50 mm short"}},
		{"depth", Room{WidthMM: 600, DepthMM: 600, HeightMM: 2000}, false,
			[]string{"depth: needs 950 mm, has 600 mm, 350 mm short"}},
		{"turned is the smaller obstacle", Room{WidthMM: 940, DepthMM: 600, HeightMM: 2000}, true,
			[]string{"width: needs 950 mm, has 940 mm, 10 mm short"}},
		{"door", Room{WidthMM: 1000, DepthMM: 1000, HeightMM: 2000, DoorWidthMM: 480, DoorHeightMM: 1450}, false,
			[]string{"door width, for the vessel: needs 500 mm, has 480 mm, 20 mm short", "door height, for the vessel: needs 1500 mm, has 1450 mm, 50 mm short"}},
		{"everything", Room{WidthMM: 400, DepthMM: 400, HeightMM: 400, DoorWidthMM: 400, DoorHeightMM: 400}, false,
			[]string{"width: needs 580", "depth: needs 950", "height: needs 1750", "door width", "door height"}},
	}
	f := measure(t, vessel())
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			got, err := Fit(f, tt.room)
			if err != nil {
				t.Fatal(err)
			}
			if got.Fits != (len(tt.want) == 0) || got.Turned != tt.turned || len(got.Blocks) != len(tt.want) {
				t.Fatalf("got %+v", got)
			}
			for i, want := range tt.want {
				if !strings.HasPrefix(got.Blocks[i].String(), want) {
					t.Errorf("got %q, want %q", got.Blocks[i], want)
				}
			}
		})
	}
}

// What stands in the row beside the vessel is named with the length that is too short,
// whichever way the row lies.
func TestABlockNamesWhatStandsBeside(t *testing.T) {
	f := measure(t, vessel(), tank(), fitting("valve", 150, 300))
	for _, room := range []Room{{WidthMM: 600, DepthMM: 900, HeightMM: 2000, FrontFreeMM: 500}, {WidthMM: 900, DepthMM: 600, HeightMM: 2000}} {
		got, err := Fit(f, room)
		if err != nil || len(got.Blocks) == 0 {
			t.Fatalf("got %+v, %v", got, err)
		}
		along := LimitWidth
		if got.Turned {
			along = LimitDepth
		}
		for _, b := range got.Blocks {
			if named := strings.Contains(b.String(), ", with the "+tank().Name+" beside it: needs"); named != (b.Limit == along) {
				t.Errorf("%+v: %s", room, b)
			}
		}
	}
}

// Only standing things must pass the door whole, and a narrow side may go ahead.
func TestDoorAndNarrowSide(t *testing.T) {
	box := Item{Name: "box", WidthMM: 900, DepthMM: 400, HeightMM: 800, WeightFullKg: 100}
	shelf := fitting("shelf", 700, 100)
	got, err := Fit(measure(t, box, shelf), Room{WidthMM: 1000, DepthMM: 500, HeightMM: 1000, DoorWidthMM: 450, DoorHeightMM: 900})
	if err != nil || !got.Fits {
		t.Errorf("got %+v, %v", got, err)
	}
}

func TestALargerRoomNeverBlocks(t *testing.T) {
	f := measure(t, vessel(), tank(), fitting("valve", 150, 300))
	size := rapid.Float64Range(300, 2500)
	rapid.Check(t, func(t *rapid.T) {
		room := Room{WidthMM: size.Draw(t, "width"), DepthMM: size.Draw(t, "depth"), HeightMM: size.Draw(t, "height"), DoorWidthMM: size.Draw(t, "door"), DoorHeightMM: size.Draw(t, "door height")}
		small, err := Fit(f, room)
		if err != nil {
			t.Fatal(err)
		}
		grow := rapid.Float64Range(0, 500)
		room.WidthMM += grow.Draw(t, "wider")
		room.DepthMM += grow.Draw(t, "deeper")
		room.HeightMM += grow.Draw(t, "higher")
		room.DoorWidthMM += grow.Draw(t, "wider door")
		room.FrontFreeMM += grow.Draw(t, "front")
		large, err := Fit(f, room)
		if err != nil {
			t.Fatal(err)
		}
		if small.Fits && !large.Fits {
			t.Fatalf("fits the small room, not the large: %v", large.Blocks)
		}
	})
}

func TestBadRoomsAreRefused(t *testing.T) {
	f := measure(t, vessel())
	if _, err := Fit(f, Room{WidthMM: 600, DepthMM: 600}); err == nil || !strings.Contains(err.Error(), "room: height_mm 0: must be from more than 0") {
		t.Errorf("a room without height: %v", err)
	}
	if _, err := Fit(f, Room{WidthMM: 600, DepthMM: 600, HeightMM: 2000, DoorWidthMM: -1}); err == nil {
		t.Error("a negative door is accepted")
	}
	if _, err := Fit(Footprint{}, Room{WidthMM: 600, DepthMM: 600, HeightMM: 2000}); err == nil {
		t.Error("an empty footprint fits")
	}
}
