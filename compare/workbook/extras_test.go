package workbook

import (
	"slices"
	"strings"
	"testing"

	"dhwcompare/compare"
	"dhwcompare/compare/space"

	"github.com/xuri/excelize/v2"
)

// extraNames are the sheets that a document may have nothing for.
func extraNames() []string {
	return []string{whyName, drawoffsName, spellsName, alternativesName, settingsName, sizingName, sensitivityName, showersName}
}

func TestSheetsWithoutDataAreAbsent(t *testing.T) {
	doc := *baseDocument(t)
	bare := *doc.Comparison
	bare.ByCause, bare.Spells, bare.Alternatives = compare.DifferenceByCause{}, nil, nil
	for _, side := range sideOrder() {
		o := bare.Options.Of(side)
		o.EqualService, o.CheapestWindows, o.ShowerTime = compare.EqualService{}, nil, compare.ShowerTime{}
	}
	doc.Comparison, doc.Draws, doc.Settings, doc.Sizing, doc.Sensitivity = &bare, nil, nil, nil, nil
	with, without := open(t, baseBook(t)).GetSheetList(), open(t, written(t, &doc))
	for _, name := range extraNames() {
		if !slices.Contains(with, name) {
			t.Errorf("%s is absent though there is data", name)
		}
		if slices.Contains(without.GetSheetList(), name) {
			t.Errorf("%s stands though there is no data", name)
		}
	}
	if got := raw(t, without, summaryName, beside(t, without, summaryName, "Checks of this workbook", 2)); got != "all pass" {
		t.Errorf("the Summary says %q", got)
	}
}

func TestPartsThatMissTheDifferenceFail(t *testing.T) {
	doc := *baseDocument(t)
	wrong := *doc.Comparison
	wrong.ByCause.Parts = slices.Clone(wrong.ByCause.Parts)
	wrong.ByCause.Parts[1].KWh += 0.01
	doc.Comparison = &wrong
	f := open(t, written(t, &doc))
	if got := raw(t, f, whyName, beside(t, f, whyName, "Parts add up to the difference?", 2)); got != failWord {
		t.Errorf("the sheet says %q", got)
	}
	if got := raw(t, f, summaryName, beside(t, f, summaryName, "Checks of this workbook", 2)); got != "some FAIL" {
		t.Errorf("the Summary says %q", got)
	}
}

// rooms are places of which some take an option as it stands, some turned, some
// not at all, and some not through the door.
func rooms() []compare.Room {
	var list []compare.Room
	for _, width := range []float64{0, 500, 700, 900, 1400} {
		for _, depth := range []float64{0, 600, 850, 1300} {
			list = append(list, compare.Room{WidthMM: width, DepthMM: depth})
		}
	}
	return append(list, compare.Room{HeightMM: 1199}, compare.Room{HeightMM: 1200}, compare.Room{HeightMM: 2030}, compare.Room{DoorWidthMM: 509}, compare.Room{DoorWidthMM: 510},
		compare.Room{DoorWidthMM: 600, DoorHeightMM: 1000}, compare.Room{DoorHeightMM: 1550}, compare.Room{DepthMM: 600, FrontFreeMM: 250},
		compare.Room{DepthMM: 600, FrontFreeMM: 900})
}

func TestFitFollowsThePlace(t *testing.T) {
	seen := map[any]int{}
	for _, room := range rooms() {
		doc, c := *baseDocument(t), *baseDocument(t).Case
		c.Room, doc.Case = room, &c
		b := newBook(&doc)
		b.writeAssumptions()
		b.writeMonths()
		b.writeSpace()
		must(t, b.err)
		for side := range sideOrder() {
			got, want := b.space.fits[side].value, wantFit(t, &c, compare.Side(side))
			if seen[want]++; got != want {
				t.Errorf("%+v, %s: %v, want %v", room, blockName(side), got, want)
			}
		}
	}
	for _, answer := range []string{yesWord, noWord, noPlaceWord} {
		if seen[answer] < 2 {
			t.Errorf("%q is the answer %d times: the places prove nothing", answer, seen[answer])
		}
	}
}

// wantFit asks the package that arranges things.
func wantFit(t *testing.T, c *compare.Case, side compare.Side) string {
	t.Helper()
	if c.Room == (compare.Room{}) {
		return noPlaceWord
	}
	const unlimited = 20_000
	or := func(v float64) float64 {
		if v == 0 {
			return unlimited
		}
		return v
	}
	things, err := c.Things(side)
	must(t, err)
	taken, err := space.Measure(things)
	must(t, err)
	answer, err := space.Fit(taken, space.Room{WidthMM: or(c.Room.WidthMM), DepthMM: or(c.Room.DepthMM), HeightMM: or(c.Room.HeightMM),
		DoorWidthMM: c.Room.DoorWidthMM, DoorHeightMM: c.Room.DoorHeightMM, FrontFreeMM: c.Room.FrontFreeMM})
	must(t, err)
	if answer.Fits {
		return yesWord
	}
	return noWord
}

func TestWhatDoesNotFitIsNotRecommended(t *testing.T) {
	for _, c := range []struct {
		name    string
		heights float64
		want    compare.Recommendation
	}{
		{"neither goes in", 1000, compare.RecommendNeither},
		{"only the compact store goes in", 1900, compare.RecommendCompact},
	} {
		doc, changed, cmp := *baseDocument(t), *baseDocument(t).Case, *baseDocument(t).Comparison
		changed.Room = compare.Room{HeightMM: c.heights}
		changed.Service.FailuresPerYear = 1e6 // both serve
		doc.Case, doc.Comparison = &changed, &cmp
		b := newBook(&doc)
		b.fill()
		must(t, b.err)
		if got := b.finding.recommend.value; got != string(c.want) {
			t.Errorf("%s: take %v, want %v", c.name, got, c.want)
		}
	}
}

func TestOnlyCellsForTheSiteMayBeFilledIn(t *testing.T) {
	f := open(t, baseBook(t))
	const settings = 2 // in the fixture
	want := map[string]bool{}
	first := beside(t, f, settingsName, "In winter", winterCol+1)
	col, row, err := excelize.CellNameToCoordinates(first)
	must(t, err)
	want[first], want[place{col, row + 1}.String()] = true, true
	_, row, err = excelize.CellNameToCoordinates(beside(t, f, settingsName, "Option", 1))
	must(t, err)
	for i := range settings {
		want[place{siteLeftCol, row + 1 + i}.String()], want[place{siteLeftCol + 1, row + 1 + i}.String()] = true, true
	}
	for r := 1; r <= row+settings+2; r++ {
		for c := 1; c <= ladderCols; c++ {
			cell := place{c, r}.String()
			id, err := f.GetCellStyle(settingsName, cell)
			must(t, err)
			st, err := f.GetStyle(id)
			must(t, err)
			open := id != 0 && st.Protection != nil && !st.Protection.Locked
			if open != want[cell] {
				t.Errorf("%s may be changed: %v, want %v", cell, open, want[cell])
			}
			if open && raw(t, f, settingsName, cell) != "" {
				t.Errorf("%s is not empty", cell)
			}
		}
	}
}

func TestCountsOfShortShowers(t *testing.T) {
	// The household's shower of 6 min against 5, 5.25, ... 7.75 min at the largest flow
	// with the heat pump at full output: the first four months are shorter.
	f := open(t, baseBook(t))
	if got := raw(t, f, drawoffsName, beside(t, f, drawoffsName, "Months shorter than the shower", 4)); got != "4" {
		t.Errorf("%s months", got)
	}
}

func TestDifferencesShowTheirSign(t *testing.T) {
	for _, format := range []string{formatWhole, formatOne, formatTwo, formatRate, formatPercent, formatShare} {
		got := signed(format)
		if strings.Contains(got, "[>=]") || !strings.Contains(got, "+"+format) || !strings.Contains(got, "-"+format) {
			t.Errorf("%s: %s", format, got)
		}
	}
	if got := signed("@"); got != "@" {
		t.Errorf("text: %s", got)
	}
}

// An option without a volumiser has no price of one to change, and its money adds
// up all the same.
func TestVolumiserOfOneOptionOnly(t *testing.T) {
	c := british()
	c.Years, c.Compact.InDefrostCircuit = 1, true
	f := open(t, written(t, documentOf(t, c)))
	if got := raw(t, f, summaryName, beside(t, f, summaryName, "Checks of this workbook", 2)); got != "all pass" {
		t.Errorf("the Summary says %q", got)
	}
	names := map[string]bool{}
	for _, n := range f.GetDefinedName() {
		names[n.Name] = true
	}
	if names["Compact_volumiser"] || !names["Cylinder_volumiser"] {
		t.Error("the wrong option has a price of a volumiser")
	}
	if got := raw(t, f, spaceName, beside(t, f, spaceName, "In a store of the defrost circuit", 2)); got == "0" {
		t.Error("the store's heating water is not counted")
	}
}
