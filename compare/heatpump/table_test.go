package heatpump_test

import (
	"math"
	"strings"
	"testing"

	"dhwcompare/compare/heatpump"

	"pgregory.net/rapid"
)

func withTable(rows []heatpump.Row) heatpump.Params {
	p := heatpump.Defaults()
	p.Table = rows
	return p
}

func planeOutputKW(outdoorC, leavingC float64) float64 { return 8 + 0.1*outdoorC - 0.02*leavingC }
func planeCOP(outdoorC, leavingC float64) float64      { return 6 + 0.05*outdoorC - 0.06*leavingC }

// rowsOf samples two surfaces on a grid, in an order that is not sorted.
func rowsOf(outdoorC, leavingC []float64, outputKW, cop func(a, w float64) float64) []heatpump.Row {
	var rows []heatpump.Row
	for i := range leavingC {
		w := leavingC[len(leavingC)-1-i]
		for _, a := range outdoorC {
			rows = append(rows, heatpump.Row{OutdoorC: a, LeavingC: w, MaxOutputKW: outputKW(a, w), FullCOP: cop(a, w)})
		}
	}
	return rows
}

func planeRows() []heatpump.Row {
	return rowsOf([]float64{-7, 2, 7, 20}, []float64{35, 45, 55, 65}, planeOutputKW, planeCOP)
}

// sampledRows samples the generic map over A -5..20, W 45..65.
func sampledRows(t testing.TB, stepK float64) []heatpump.Row {
	u := newUnit(t, heatpump.Defaults())
	var outdoorC, leavingC []float64
	for a := -5.0; a <= 20; a += stepK {
		outdoorC = append(outdoorC, a)
	}
	for w := 45.0; w <= 65; w += stepK {
		leavingC = append(leavingC, w)
	}
	return rowsOf(outdoorC, leavingC,
		func(a, w float64) float64 { return u.MaxOutputW(a, w) / 1000 },
		func(a, w float64) float64 { return u.COP(a, w, 1) })
}

// A plane has no curvature, so interpolation and the margin follow it exactly.
func TestTableIsExactOnPlanes(t *testing.T) {
	u := newUnit(t, withTable(planeRows()))
	for a := -12.0; a <= 25; a += 0.5 {
		for w := 30.0; w <= 70; w += 0.5 {
			near(t, "output", u.MaxOutputW(a, w), 1000*planeOutputKW(a, w), 1e-8)
			near(t, "COP", u.COP(a, w, 1), planeCOP(a, w), 1e-12)
		}
	}
	near(t, "smallest output", u.MinOutputW(7, 45), 0.30*u.MaxOutputW(7, 45), 1e-9)
	near(t, "half COP", u.COP(7, 45, 0.5), planeCOP(7, 45)*0.56/0.49, 1e-12)
}

func TestTableIsHeldBeyondItsMargin(t *testing.T) {
	u := newUnit(t, withTable(planeRows()))
	near(t, "output, cold and hot", u.MaxOutputW(-40, 90), u.MaxOutputW(-12, 70), 0)
	near(t, "COP, warm and cool", u.COP(45, 10, 1), u.COP(25, 30, 1), 0)
	p := withTable(planeRows())
	p.OutdoorMarginK, p.LeavingMarginK = 0, 0
	u = newUnit(t, p)
	near(t, "output without margin", u.MaxOutputW(-40, 90), 1000*planeOutputKW(-7, 65), 1e-8)
}

// Water that comes back hotter than the table goes is heated by the output of its last
// column.
func TestReturnBeyondTheTable(t *testing.T) {
	p := withTable(planeRows())
	p.HighestFlowC = 80
	got := newUnit(t, p).At(7, 71, 1000, 1, 79)
	near(t, "leaving", got.LeavingC, 71+planeOutputKW(7, 70), 1e-9)
	near(t, "output", got.OutputW, 1000*planeOutputKW(7, 70), 1e-6)
}

func TestTableFlags(t *testing.T) {
	u := newUnit(t, withTable(planeRows()))
	for _, c := range []struct {
		outdoorC, returnC, targetC float64
		want                       string
	}{
		{7, 45, 60, "none"},
		{22, 45, 60, "warmer air"},
		{22, 30, 33, "warmer air, cooler water"}, // the smallest lift belongs to the generic map
		{-9, 62, 68, "colder air, hotter water"},
		{-20, 45, 50, "colder air, held at limits"},
		{7, 22, 25, "cooler water, held at limits"},
	} {
		if got := u.At(c.outdoorC, c.returnC, flow17, 1, c.targetC).Extrapolated.String(); got != c.want {
			t.Errorf("A%g return %g: got %q, want %q", c.outdoorC, c.returnC, got, c.want)
		}
	}
}

// The capacity of the generic map is linear in each temperature here, so the
// table gives it back to rounding. Its COP is curved: linear interpolation
// errs by at most h^2/8 times the second derivative in each direction, and a
// grid twice as fine errs a quarter as much.
func TestTableSampledFromGenericMapAgrees(t *testing.T) {
	worst := func(stepK float64) float64 {
		table, generic := newUnit(t, withTable(sampledRows(t, stepK))), newUnit(t, heatpump.Defaults())
		worst := 0.0
		for a := -5.0; a <= 20; a += 0.625 {
			for w := 45.0; w <= 65; w += 0.625 {
				near(t, "output", table.MaxOutputW(a, w), generic.MaxOutputW(a, w), 1e-8)
				worst = max(worst, math.Abs(table.COP(a, w, 0.8)/generic.COP(a, w, 0.8)-1))
			}
		}
		return worst
	}
	coarse, fine := worst(5), worst(2.5)
	// COP ~ T/L with lift L >= 33 K: COP''/COP = 2/L^2, so 2 directions * 25/8 * 2/33^2 = 1.2 %, and as much again for the mixed term.
	near(t, "coarse grid", coarse, 0, 0.024)
	near(t, "order", coarse/fine, 4, 0.5)
}

func TestTablePointEqualsGenericPoint(t *testing.T) {
	table, generic := newUnit(t, withTable(sampledRows(t, 5))), newUnit(t, heatpump.Defaults())
	got, want := table.At(10, 48, flow17, 0.9, 65), generic.At(10, 48, flow17, 0.9, 65)
	near(t, "output", got.OutputW, want.OutputW, 1e-6)
	near(t, "leaving", got.LeavingC, want.LeavingC, 1e-9)
}

// Any table, also one whose output rises and falls with leaving water.
func TestTablePointSolvesItsEquation(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		outputKW := func(_, _ float64) float64 { return tenths(3, 12).Draw(t, "kW") }
		p := withTable(rowsOf([]float64{-7, 2, 7, 20}, []float64{35, 45, 50, 65}, outputKW, planeCOP))
		p.OutdoorMarginK, p.LeavingMarginK = 0, 0
		u, err := heatpump.New(p)
		if err != nil {
			t.Fatal(err)
		}
		q := drawQuestion(t)
		// At low flow a rising output can meet the line of the water at several points; 2 kW/K is steeper than any table here.
		q.rate = 2000 + q.rate
		checkPoint(t, u, q)
	})
}

func TestTableProblems(t *testing.T) {
	at := func(a, w, kw, cop float64) heatpump.Row {
		return heatpump.Row{OutdoorC: a, LeavingC: w, MaxOutputKW: kw, FullCOP: cop}
	}
	square := []heatpump.Row{at(2, 45, 6, 3.2), at(2, 55, 5.8, 2.6), at(7, 45, 7, 3.8), at(7, 55, 6.8, 3)}
	edit := func(i int, r heatpump.Row) []heatpump.Row {
		rows := append([]heatpump.Row(nil), square...)
		rows[i] = r
		return rows
	}
	for name, c := range map[string]struct {
		rows []heatpump.Row
		want string
	}{
		"missing row":    {square[:3], "has no row for outdoor 7 C with leaving 55 C"},
		"double row":     {append(square[:4:4], at(2, 45, 6, 3.2)), "has 2 rows for outdoor 2 C with leaving 45 C"},
		"one column":     {[]heatpump.Row{square[0], square[2]}, "has 2 outdoor and 1 leaving temperatures"},
		"one row":        {square[:2], "has 1 outdoor and 2 leaving temperatures"},
		"not a number":   {edit(1, at(2, 55, math.NaN(), 2.6)), "Table[1].MaxOutputKW is NaN"},
		"infinite":       {edit(1, at(math.Inf(-1), 55, 6, 2.6)), "Table[1].OutdoorC is -Inf"},
		"watts":          {edit(1, at(2, 55, 5800, 2.6)), "Table[1].MaxOutputKW is 5800, allowed is 0.5 to 50 kW"},
		"percent":        {edit(3, at(7, 55, 6.8, 300)), "Table[3].FullCOP is 300, allowed is 1 to 15"},
		"leaving":        {edit(3, at(7, 5, 6.8, 3)), "Table[3].LeavingC is 5"},
		"COP rises":      {edit(3, at(7, 55, 6.8, 3.9)), "has COP 3.9 at leaving 55 C, above COP 3.8 at leaving 45 C (outdoor 7 C)"},
		"margin too far": {edit(0, at(2, 45, 2, 3.2)), "falls to -6.90 kW and COP 2.00: make the margins smaller"},
	} {
		t.Run(name, func(t *testing.T) {
			_, err := heatpump.New(withTable(c.rows))
			if err == nil || !strings.Contains(err.Error(), c.want) {
				t.Errorf("got %v, want it to say %q", err, c.want)
			}
		})
	}
	for name, rows := range map[string][]heatpump.Row{"plain": square, "equal COP": edit(1, at(2, 55, 5.8, 3.2))} {
		if _, err := heatpump.New(withTable(rows)); err != nil {
			t.Errorf("%s: sound table refused: %v", name, err)
		}
	}
}

// A row may have the last value of each limit, and none beyond.
func TestTableRowsAtTheirLimits(t *testing.T) {
	rows := func(outdoorC, leavingC, kW, cop float64) []heatpump.Row {
		return rowsOf([]float64{0, outdoorC}, []float64{50, leavingC},
			func(_, _ float64) float64 { return kW }, func(_, _ float64) float64 { return cop })
	}
	for _, c := range []struct {
		field                       string
		outdoorC, leavingC, kW, cop float64
		beyond                      func(r *heatpump.Row)
	}{
		{"OutdoorC", -30, 40, 6, 3, func(r *heatpump.Row) { r.OutdoorC = -30.1 }},
		{"OutdoorC", 45, 40, 6, 3, func(r *heatpump.Row) { r.OutdoorC = 45.1 }},
		{"LeavingC", 10, 20, 6, 3, func(r *heatpump.Row) { r.LeavingC = 19.9 }},
		{"LeavingC", 10, 85, 6, 3, func(r *heatpump.Row) { r.LeavingC = 85.1 }},
		{"MaxOutputKW", 10, 40, 0.5, 3, func(r *heatpump.Row) { r.MaxOutputKW = 0.49 }},
		{"MaxOutputKW", 10, 40, 50, 3, func(r *heatpump.Row) { r.MaxOutputKW = 50.1 }},
		{"FullCOP", 10, 40, 6, 1, func(r *heatpump.Row) { r.FullCOP = 0.99 }},
		{"FullCOP", 10, 40, 6, 15, func(r *heatpump.Row) { r.FullCOP = 15.1 }},
	} {
		p := withTable(rows(c.outdoorC, c.leavingC, c.kW, c.cop))
		if problems := p.Validate(); len(problems) > 0 {
			t.Errorf("%s at its limit: %v", c.field, problems)
		}
		c.beyond(&p.Table[1])
		if problems := p.Validate(); len(problems) != 1 || problems[0].Field != "Table[1]."+c.field {
			t.Errorf("%s beyond its limit: %v", c.field, problems)
		}
	}
}

// Carried on by its margin a table may fall to little, and not to nothing.
func TestMarginMayFallToLittle(t *testing.T) {
	for _, c := range []struct {
		kW    float64 // at 55 C; 6 kW at 45 C, so that 65 C gives twice this less 6
		sound bool
	}{{3, false}, {3.00025, true}} {
		p := withTable(rowsOf([]float64{0, 10}, []float64{45, 55},
			func(_, w float64) float64 { return 6 + (w-45)/10*(c.kW-6) }, func(_, w float64) float64 { return 4 - (w-45)/10 }))
		p.OutdoorMarginK, p.LeavingMarginK = 0, 10
		if problems := p.Validate(); (len(problems) == 0) != c.sound {
			t.Errorf("%g kW at 55 C: %v", c.kW, problems)
		}
	}
}
