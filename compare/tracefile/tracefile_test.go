package tracefile

import (
	"bufio"
	"context"
	"encoding/csv"
	"errors"
	"io"
	"math"
	"strconv"
	"testing"

	"dhwcompare/compare"
	"dhwcompare/compare/calendar"
	"dhwcompare/compare/plant"
)

// flat is an invented flat for one.
func flat() *compare.Case {
	c := compare.Default()
	c.Household.People = 1
	c.Climate.OutdoorC = [12]float64{4, 5, 7, 9, 12, 15, 17, 17, 14, 11, 7, 5}
	c.Compact.Immersion = compare.Immersion{PowerKW: 3, Height: 0.6, BoostBelowC: 45, BoostK: 2}
	c.Cylinder.Immersion = compare.Immersion{PowerKW: 3, Height: 0.6, BoostBelowC: 45, BoostK: 2}
	return &c
}

// table is a trace as a reader sees it.
type table struct {
	column map[string]int
	rows   *csv.Reader
}

func read(t *testing.T, from io.Reader) *table {
	t.Helper()
	r := csv.NewReader(from)
	r.ReuseRecord = true
	header, err := r.Read()
	if err != nil {
		t.Fatal(err)
	}
	columns := map[string]int{}
	for i, name := range header {
		columns[name] = i
	}
	return &table{columns, r}
}

func number(t *testing.T, text string) float64 {
	t.Helper()
	v, err := strconv.ParseFloat(text, 64)
	if err != nil {
		t.Fatal(err)
	}
	return v
}

// summary is what the rows of one option add up to.
type summary struct {
	minutes, draws, outOfOrder, tooWarm int
	lastS, kWh, immersionKWh            float64
}

// TestTraceTellsTheSameAsTheLedger adds the trace up and compares it with the
// facts that the results rest on.
func TestTraceTellsTheSameAsTheLedger(t *testing.T) {
	c := flat()
	reader, writer := io.Pipe()
	go func() { writer.CloseWithError(Write(t.Context(), c, writer)) }()
	sums := map[string]*summary{}
	table := read(t, bufio.NewReaderSize(reader, 1<<16))
	for {
		row, err := table.rows.Read()
		if errors.Is(err, io.EOF) {
			break
		}
		if err != nil {
			t.Fatal(err)
		}
		option := row[table.column["option"]]
		if sums[option] == nil {
			sums[option] = &summary{}
		}
		sums[option].add(t, table, row)
	}
	for _, side := range []compare.Side{compare.SideCompact, compare.SideCylinder} {
		s := sums[side.String()]
		if s == nil {
			t.Fatalf("the %v is missing", side)
		}
		s.check(t, c, side)
	}
}

func (s *summary) add(t *testing.T, table *table, row []string) {
	at := func(name string) string { return row[table.column[name]] }
	now := number(t, at("time_s"))
	const halfHundredth = 0.005 // to which times are written
	if now < s.lastS-2*halfHundredth {
		s.outOfOrder++
	}
	s.lastS = now
	if at("row") == "draw" {
		s.draws++
		// The mixer is set to the water at the start of a step and holds still
		// while that water warms; a draw-off unmixed would be 10 K too warm.
		const mixerK = 1
		if number(t, at("delivered_c")) > number(t, at("wanted_c"))+mixerK && at("waiting") == "no" {
			s.tooWarm++
		}
		return
	}
	s.minutes++
	const kWhPerWattMinute = 1. / 60 / 1000
	s.kWh += (number(t, at("compressor_w")) + number(t, at("pump_w"))) * kWhPerWattMinute
	s.immersionKWh += number(t, at("immersion_w")) * kWhPerWattMinute
}

func (s *summary) check(t *testing.T, c *compare.Case, side compare.Side) {
	world, err := c.World(0)
	if err != nil {
		t.Fatal(err)
	}
	p, err := c.Plant(side)
	if err != nil {
		t.Fatal(err)
	}
	ledger := plant.NewLedger()
	if err := compare.Live(t.Context(), p, world, plant.Recorder{Ledger: ledger}); err != nil {
		t.Fatal(err)
	}
	// Each of 525,600 powers is written to a tenth of a watt: 0.05 W of error
	// in each, if all fell the same way, would be 0.4 kWh; they do not.
	const toleranceKWh = 0.05
	if want := sum(ledger.HalfHourKWh[plant.HotWater]); math.Abs(s.kWh-want) > toleranceKWh {
		t.Errorf("%v: the trace holds %.3f kWh, the ledger %.3f", side, s.kWh, want)
	}
	if want := sum(ledger.HalfHourKWh[plant.ImmersionHeat]); want == 0 || math.Abs(s.immersionKWh-want) > toleranceKWh {
		t.Errorf("%v: the trace holds %.3f kWh of the immersion heater, the ledger %.3f", side, s.immersionKWh, want)
	}
	if s.minutes != calendar.YearS/60 || s.lastS != calendar.YearS {
		t.Errorf("%v: %d minutes up to %.2f s", side, s.minutes, s.lastS)
	}
	if s.draws < len(ledger.Outcomes) {
		t.Errorf("%v: %d rows for %d draw-offs", side, s.draws, len(ledger.Outcomes))
	}
	if s.outOfOrder > 0 || s.tooWarm > 0 {
		t.Errorf("%v: %d rows out of order, %d warmer than wanted", side, s.outOfOrder, s.tooWarm)
	}
}

func sum(values []float64) float64 {
	total := 0.0
	for _, v := range values {
		total += v
	}
	return total
}

// TestWriteStopsWithItsWriter checks that a full disk ends the simulation.
func TestWriteStopsWithItsWriter(t *testing.T) {
	for name, room := range map[string]int{"header": 0, "rows": 1 << 18} {
		t.Run(name, func(t *testing.T) {
			w := &smallDisk{room: room}
			if err := Write(t.Context(), flat(), w); !errors.Is(err, errFull) {
				t.Errorf("error is %v", err)
			}
			if w.refused != 1 {
				t.Errorf("%d writes after the disk was full", w.refused)
			}
		})
	}
}

func TestWriteStopsWithItsContext(t *testing.T) {
	ctx, cancel := context.WithCancel(t.Context())
	cancel()
	if err := Write(ctx, flat(), io.Discard); !errors.Is(err, context.Canceled) {
		t.Errorf("error is %v", err)
	}
}

var errFull = errors.New("the disk is full")

type smallDisk struct{ room, refused int }

func (d *smallDisk) Write(p []byte) (int, error) {
	if len(p) > d.room {
		d.refused++
		return 0, errFull
	}
	d.room -= len(p)
	return len(p), nil
}

func TestMoment(t *testing.T) {
	for at, want := range map[float64][2]string{
		0:                               {"01-01", "00:00:00"},
		59.99:                           {"01-01", "00:00:59"},
		31*calendar.DayS + 3661:         {"02-01", "01:01:01"},
		364*calendar.DayS + 86399:       {"12-31", "23:59:59"},
		calendar.YearS:                  {"01-01", "00:00:00"},
		58*calendar.DayS + 23*3600 + 59: {"02-28", "23:00:59"},
	} {
		if date, clock := moment(at); date != want[0] || clock != want[1] {
			t.Errorf("moment(%g) = %s %s, want %s", at, date, clock, want)
		}
	}
}
