package plant

import (
	"encoding/csv"
	"flag"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"runtime"
	"strconv"
	"strings"
	"sync"
	"testing"

	"dhwcompare/compare/calendar"
	"dhwcompare/compare/household"
	"dhwcompare/compare/vessel"
)

var update = flag.Bool("update", false, "live through the fine reference anew and store it (minutes)")

// The reference: the home of two people in five paired years, at a step of 1 s and
// with at least four times the layers.
const (
	referenceYears = 5
	compactFinely  = 80 // layers
	cylinderFinely = 192
)

func referenceFile() string {
	return filepath.Join("..", "..", "testdata", "reference", "plant_fine_steps.csv")
}

// fine gives the plant of an option at 1 s and fine layers.
func fine(t testing.TB, name string) Params {
	t.Helper()
	if name == "compact" {
		p, v := compactParams(t), compactStore()
		v.Layers = compactFinely
		p.Vessel, p.pace = vessel.NewCompact(v), throughout(1)
		return p
	}
	p, v := cylinderParams(t), tallCylinder()
	v.Layers = cylinderFinely
	p.Vessel, p.pace = vessel.NewCylinder(v), throughout(1)
	return p
}

// figures are what the reference keeps of a month.
type figures struct {
	electricityKWh, deliveredKWh float64
	showers, failing             int
}

func figuresOf(m *Month) figures {
	s := &m.Draws[household.Shower]
	return figures{m.Electricity() / joulesPerKWh, m.Delivered / joulesPerKWh, s.Count, s.Failed}
}

func (f *figures) add(g figures) {
	f.electricityKWh += g.electricityKWh
	f.deliveredKWh += g.deliveredKWh
	f.showers += g.showers
	f.failing += g.failing
}

// place is one month of one option.
type place struct {
	option      string
	year, month int // counted from 0 and from 1
}

// readReference reads the stored months.
func readReference(t testing.TB) map[place]figures {
	t.Helper()
	file, err := os.Open(referenceFile())
	if err != nil {
		t.Fatalf("%v: store it with -update", err)
	}
	defer file.Close()
	r := csv.NewReader(file)
	r.Comment = '#'
	rows, err := r.ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	stored := map[place]figures{}
	for _, row := range rows[1:] {
		n := make([]float64, len(row))
		for i := 1; i < len(row); i++ {
			if n[i], err = strconv.ParseFloat(row[i], 64); err != nil {
				t.Fatal(err)
			}
		}
		stored[place{row[0], int(n[1]), int(n[2])}] = figures{n[3], n[4], int(n[5]), int(n[6])}
	}
	return stored
}

// writeReference stores five years of both options.
func writeReference(t *testing.T) {
	t.Helper()
	var b strings.Builder
	b.WriteString("# source: own reference, this engine at a step of 1 s and at least four times the layers; regenerate with: go test ./compare/plant -run OwnReference -update\n")
	b.WriteString("option,year,month,electricity_kwh,delivered_kwh,showers,failing_showers\n")
	for _, o := range options() {
		years := ledgers(t, func() Params { return fine(t, o.name) })
		for year, l := range years {
			for i := range l.Months {
				f := figuresOf(&l.Months[i])
				fmt.Fprintf(&b, "%s,%d,%d,%.6f,%.6f,%d,%d\n", o.name, year, i+1, f.electricityKWh, f.deliveredKWh, f.showers, f.failing)
			}
		}
	}
	if err := os.MkdirAll(filepath.Dir(referenceFile()), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(referenceFile(), []byte(b.String()), 0o644); err != nil {
		t.Fatal(err)
	}
}

// ledgers lives through the years side by side.
func ledgers(t *testing.T, params func() Params) [referenceYears]*Ledger {
	t.Helper()
	var years [referenceYears]*Ledger
	free := make(chan struct{}, runtime.GOMAXPROCS(0))
	var all sync.WaitGroup
	for year := range years {
		p := params()
		all.Go(func() {
			free <- struct{}{}
			defer func() { <-free }()
			years[year] = NewLedger()
			if err := New(p).Run(t.Context(), 0, calendar.YearS, twoPeopleIn(year), Override{}, Recorder{Ledger: years[year]}); err != nil {
				t.Error(err)
			}
		})
	}
	all.Wait()
	return years
}

// The stored reference is what the engine gives today: January of the first year is
// lived through again. Only another processor's rounding may tell them apart, and a
// shower that hangs on it. If this fails after a change of the physics, store the
// reference anew.
func TestOwnReferenceIsOfThisEngine(t *testing.T) {
	if *update {
		writeReference(t)
	}
	if testing.Short() {
		t.Skip("a month at a step of a second")
	}
	const january = 31 * calendar.DayS
	stored := readReference(t)
	for _, o := range options() {
		l := marched(t, New(fine(t, o.name)), 0, january, twoPeopleIn(0), Override{})
		got, want := figuresOf(&l.Months[0]), stored[place{o.name, 0, 1}]
		near(t, o.name+", electricity", got.electricityKWh, want.electricityKWh, 1e-3)
		near(t, o.name+", delivered", got.deliveredKWh, want.deliveredKWh, 1e-3)
		if got.showers != want.showers || math.Abs(float64(got.failing-want.failing)) > 1 {
			t.Errorf("%s: %d of %d showers fail, stored %d of %d", o.name, got.failing, got.showers, want.failing, want.showers)
		}
	}
}

// lived are both sides of a year: at the plant's own steps and layers, and fine.
type lived struct{ own, fine figures }

// againstReference gives the years of an option beside their references.
func againstReference(t *testing.T, o option) [referenceYears]lived {
	t.Helper()
	stored := readReference(t)
	var years [referenceYears]lived
	for year, l := range ledgers(t, func() Params { return o.params(t) }) {
		for i := range l.Months {
			years[year].own.add(figuresOf(&l.Months[i]))
			years[year].fine.add(stored[place{o.name, year, i + 1}])
		}
	}
	return years
}

// At its own steps and layers a year's electricity is within 0.3 % of the fine
// reference, each year of five.
func TestElectricityAgainstOwnReference(t *testing.T) {
	if testing.Short() {
		t.Skip("ten years")
	}
	for _, o := range options() {
		for year, y := range againstReference(t, o) {
			t.Logf("%s, year %d: %.2f kWh, fine %.2f (%+.2f %%)", o.name, year, y.own.electricityKWh, y.fine.electricityKWh,
				100*(y.own.electricityKWh/y.fine.electricityKWh-1))
			near(t, o.name+", electricity", y.own.electricityKWh, y.fine.electricityKWh, 0.003)
		}
	}
}
