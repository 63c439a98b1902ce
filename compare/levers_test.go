package compare_test

import (
	"encoding/json"
	"testing"

	"dhwcompare/compare"
	"dhwcompare/compare/casefile"
)

// TestStudiesKeepToTheCaseFile lets the case file judge every case that the search
// for sizes and the sensitivity can come up with, and the case that a search gives.
func TestStudiesKeepToTheCaseFile(t *testing.T) {
	for name, text := range map[string]string{
		"plain": "",
		"at the low end": `
household: {people: 1, shower_minutes: 0.5, shower_flow_l_per_min: 2}
compact_store: {volume_l: 50, coil_length_m: 5, standing_loss_w: 5}
cylinder: {standing_loss_w: 5, coil_u_w_per_m2k: 50, control: {setpoint_c: 44}}
heat_pump: {field_derate: 0.8, load_penalty: 0.02}
`,
		"at the high end": `
household: {people: 12, shower_minutes: 60, shower_flow_l_per_min: 30}
compact_store: {volume_l: 150, coil_length_m: 100, standing_loss_w: 400, control: {setpoint_c: 65}}
cylinder: {volume_l: 300, standing_loss_w: 400, coil_u_w_per_m2k: 2000, control: {setpoint_c: 65}}
heat_pump: {load_penalty: 0.12}
pipes: {indoor_loss_w_per_k: 20, outdoor_loss_w_per_k: 20}
`,
		"stated in detail": `
household: {people: 2, showers_per_day: 6, baths_per_day: 0.2, taps_per_day: 40, tap_l_per_day: 60}
compact_store: {coil_ua_w_per_k: 100, control: {month_setpoint_c: [60, 60, 60, 55, 50, 45, 45, 45, 50, 55, 60, 60]}}
cylinder: {immersion: {power_kw: 3, boost_below_c: 46}, control: {setpoint_c: 48}}
`,
	} {
		t.Run(name, func(t *testing.T) {
			c := caseOf(t, text)
			for what, changed := range compare.StudiedCases(c) {
				if err := casefile.Check(asInAFile(changed)); err != nil {
					t.Errorf("%s: %v", what, err)
				}
			}
		})
	}
}

// asInAFile leaves out a setpoint that the months replace: a file has it as a
// comment.
func asInAFile(c *compare.Case) *compare.Case {
	changed, standard := *c, compare.Default()
	if c.Compact.Control.MonthSetpointC != nil {
		changed.Compact.Control.SetpointC = standard.Compact.Control.SetpointC
	}
	if c.Cylinder.Control.MonthSetpointC != nil {
		changed.Cylinder.Control.SetpointC = standard.Cylinder.Control.SetpointC
	}
	return &changed
}

// caseOf loads a case that states a place and, unless the text does, two people.
func caseOf(t *testing.T, text string) *compare.Case {
	t.Helper()
	const place = `
climate: {outdoor_c: [4, 5, 7, 9, 12, 15, 17, 17, 14, 11, 7, 5], mains_c: [2, 8, 9, 12, 15, 17, 18, 30, 17, 14, 11, 9]}
`
	if text == "" {
		text = "household: {people: 2}\n"
	}
	c, _, err := casefile.Load("case.yaml", []byte(text+place), nil)
	if err != nil {
		t.Fatal(err)
	}
	return c
}

// TestBestCaseIsSound writes the case of the two winners and reads it again.
func TestBestCaseIsSound(t *testing.T) {
	c := caseOf(t, "")
	s := compare.Sizing{}
	s.Compact.Cheapest = &compare.Size{VolumeL: 60, SetpointC: 58, SummerC: 54, HysteresisK: 3, OutputCap: 0.7, ShowerLimit: 7}
	s.Cylinder.Cheapest = &compare.Size{VolumeL: 150, SetpointC: 52, SummerC: 52, HysteresisK: 6, OutputCap: 1}
	best, ok := s.Best(c)
	if !ok {
		t.Fatal("no best case")
	}
	read, _, err := casefile.Load("best.yaml", casefile.Write(best), nil)
	if err != nil {
		t.Fatal(err)
	}
	// A setpoint that the months replace is written as a comment.
	read.Compact.Control.SetpointC = best.Compact.Control.SetpointC
	a, errA := json.Marshal(best)
	b, errB := json.Marshal(read)
	if errA != nil || errB != nil || string(a) != string(b) {
		t.Errorf("written and read again:\n%s\n%s", a, b)
	}
}
