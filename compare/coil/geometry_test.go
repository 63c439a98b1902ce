package coil

import (
	"math"
	"strings"
	"testing"
)

// 25 m of nominal 25 mm corrugated tube: 12 litres inside, 19 displaced, 3.41 m2.
func TestVolumesAndArea(t *testing.T) {
	g := Corrugated25(25)
	for _, c := range []struct {
		name      string
		got, want float64
	}{
		{"content", g.ContentLitres(), math.Pi / 4 * 0.025 * 0.025 * 25000},
		{"displaced", g.DisplacedLitres(), math.Pi / 4 * 0.031 * 0.031 * 25000},
		{"content of the trade", math.Round(g.ContentLitres()), 12},
		{"displaced of the trade", math.Round(g.DisplacedLitres()), 19},
		{"area", outsideAreaM2(g), math.Pi * 0.031 * 25 * 1.4},
	} {
		if !near(c.got, c.want, 1e-12) {
			t.Errorf("%s: %g, want %g", c.name, c.got, c.want)
		}
	}
}

func TestCheckAcceptsTheUsualCoils(t *testing.T) {
	for _, letter := range testLetters {
		if err := testCoil(letter).Check(); err != nil {
			t.Errorf("coil %s: %v", letter, err)
		}
	}
}

func TestCheckNamesEveryFault(t *testing.T) {
	for key, spoil := range map[string]func(*Geometry){
		"length_m":                   func(g *Geometry) { g.LengthM = 0 },
		"bore_mm":                    func(g *Geometry) { g.BoreMM = 7 },
		"outside_mm":                 func(g *Geometry) { g.OutsideMM = 90 },
		"wall_mm":                    func(g *Geometry) { g.WallMM = math.NaN() },
		"coil_diameter_m":            func(g *Geometry) { g.CoilDiameterM = 2 },
		"area_factor":                func(g *Geometry) { g.AreaFactor = 0.9 },
		"wall_conductivity_w_per_mk": func(g *Geometry) { g.WallConductivityWPerMK = math.Inf(1) },
		"inside_factor":              func(g *Geometry) { g.InsideFactor = 0 },
		"fouling_m2k_per_w":          func(g *Geometry) { g.FoulingM2KPerW = -1e-4 },
		"two walls":                  func(g *Geometry) { g.WallMM = 4 },
		"wider windings":             func(g *Geometry) { g.CoilDiameterM = 0.15 },
	} {
		g := Corrugated25(25)
		spoil(&g)
		err := g.Check()
		if err == nil || !strings.Contains(err.Error(), key) {
			t.Errorf("%s: error %v does not name it", key, err)
		}
	}
	if err := (Geometry{}).Check(); err == nil || strings.Count(err.Error(), "\n") < 6 {
		t.Errorf("an empty geometry has many faults, reported: %v", err)
	}
}
