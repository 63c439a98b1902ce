package heatpump_test

import (
	"math"
	"strings"
	"testing"

	"dhwcompare/compare/heatpump"

	"pgregory.net/rapid"
)

// flow17 is the capacity rate of 17 litres a minute of water, W/K, from
// rounded properties: 17/60 kg/s times 4180 J/kgK.
const flow17 = 17.0 / 60 * 4180

func TestGenericMapIsMonotonic(t *testing.T) {
	for _, class := range []string{"5", "8"} {
		u := classUnit(t, class)
		for outdoorC := -20.0; outdoorC < 35; outdoorC++ {
			for leavingC := 20.0; leavingC < 70; leavingC++ {
				q, cop := u.MaxOutputW(outdoorC, leavingC), u.COP(outdoorC, leavingC, 0.7)
				if u.MaxOutputW(outdoorC+1, leavingC) < q || u.COP(outdoorC+1, leavingC, 0.7) < cop {
					t.Fatalf("class %s: warmer air than %g C at W%g is worse", class, outdoorC, leavingC)
				}
				if u.MaxOutputW(outdoorC, leavingC+1) >= q || u.COP(outdoorC, leavingC+1, 0.7) > cop {
					t.Fatalf("class %s: hotter water than %g C at A%g is better", class, leavingC, outdoorC)
				}
				if !(cop > 1 && cop < 10) {
					t.Fatalf("class %s: COP %g at A%g/W%g", class, cop, outdoorC, leavingC)
				}
			}
		}
	}
}

// tenths gives a number in a range in steps of a tenth, which shrinks well.
func tenths(lo, hi int) *rapid.Generator[float64] {
	return rapid.Map(rapid.IntRange(10*lo, 10*hi), func(i int) float64 { return float64(i) / 10 })
}

type question struct{ outdoorC, returnC, rate, shareCap, targetC float64 }

func drawQuestion(t *rapid.T) question {
	return question{
		outdoorC: tenths(-35, 45).Draw(t, "outdoor"),
		returnC:  tenths(5, 75).Draw(t, "return"),
		rate:     tenths(150, 1600).Draw(t, "rate"),
		shareCap: float64(rapid.IntRange(0, 100).Draw(t, "cap")) / 100,
		targetC:  tenths(30, 80).Draw(t, "target"),
	}
}

// checkPoint holds for any unit: the equation is solved, and exactly one of
// the limits binds.
func checkPoint(t *rapid.T, u *heatpump.Unit, q question) {
	p := u.At(q.outdoorC, q.returnC, q.rate, q.shareCap, q.targetC)
	maxW, minW := u.MaxOutputW(q.outdoorC, p.LeavingC), u.MinOutputW(q.outdoorC, p.LeavingC)
	limitC := min(q.targetC, u.HighestFlowC())
	const hair = 1e-9 // rounding of temperatures near 100 C and rates near 1000 W/K, relative
	equal := func(what string, got, want float64) {
		if !(math.Abs(got-want) <= hair*math.Max(1, math.Abs(want))) {
			t.Fatalf("%s: got %.15g, want %.15g\n%+v\n%+v", what, got, want, q, p)
		}
	}
	equal("leaving water", p.LeavingC, q.returnC+p.OutputW/q.rate)
	equal("share", p.Share, p.OutputW/maxW)
	equal("COP", p.COP, u.COP(q.outdoorC, p.LeavingC, p.Share))
	equal("electricity", p.ElectricityW*p.COP, p.OutputW)
	switch {
	case p.AtMinimum:
		equal("smallest output", p.OutputW, minW)
		equal("overshoot", p.OvershootK, max(0, p.LeavingC-limitC))
		return
	case p.LeavingC < limitC:
		equal("largest allowed output", p.OutputW, q.shareCap*maxW)
	default:
		equal("leaving water at its limit", p.LeavingC, limitC)
	}
	if p.OvershootK != 0 || p.OutputW < minW*(1-hair) || p.OutputW > q.shareCap*maxW*(1+hair) {
		t.Fatalf("limits broken\n%+v\n%+v", q, p)
	}
}

func TestPointSolvesItsEquationAndRespectsItsLimits(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := heatpump.Defaults()
		p.NominalKW = tenths(3, 16).Draw(t, "nominal")
		p.HighestFlowC = tenths(45, 80).Draw(t, "highest")
		if rapid.Bool().Draw(t, "medium") {
			p.Size = heatpump.Medium
		}
		u, err := heatpump.New(p)
		if err != nil {
			t.Fatal(err)
		}
		checkPoint(t, u, drawQuestion(t))
	})
}

// By hand, small unit at A20: output with water at 45 C is 6.4+0.144*13 =
// 8.272 kW. Return 50 C, 1000 W/K: Q = 8272*(1-0.015)/(1+0.003*8.272) =
// 7950.6 W, leaving 57.951 C.
func TestClosedFormByHand(t *testing.T) {
	u := newUnit(t, heatpump.Defaults())
	q := 8272 * 0.985 / (1 + 0.003*8.272)
	p := u.At(20, 50, 1000, 1, 65)
	near(t, "output", p.OutputW, q, 1e-6)
	near(t, "leaving", p.LeavingC, 50+q/1000, 1e-9)
	near(t, "share", p.Share, 1, 1e-12)
}

func TestLimitsBindInTurn(t *testing.T) {
	u := newUnit(t, heatpump.Defaults())
	cases := map[string]struct {
		returnC, shareCap, targetC float64
		leavingC, overshootK       float64
		atMinimum                  bool
	}{
		// A7: 6.4 kW at 45 C; half of it into 800 W/K from 41 C: 3.2 kW*(1-0.003*(W-45)), W = 45 exactly.
		"capped":            {41, 0.5, 60, 45, 0, false},
		"turned down":       {50, 1, 54, 54, 0, false},
		"highest flow":      {66, 1, 80, 70, 0, false},
		"at minimum":        {52.5, 1, 54, 55, 1, true}, // 2 kW into 800 W/K: 2.5 K
		"cap under minimum": {41, 0.1, 60, 43.5, 0, true},
		"return over limit": {72, 1, 80, 74.5, 4.5, true},
	}
	for name, c := range cases {
		t.Run(name, func(t *testing.T) {
			p := u.At(7, c.returnC, 800, c.shareCap, c.targetC)
			near(t, "leaving", p.LeavingC, c.leavingC, 1e-9)
			near(t, "overshoot", p.OvershootK, c.overshootK, 1e-9)
			if p.AtMinimum != c.atMinimum {
				t.Errorf("at minimum: got %v, want %v", p.AtMinimum, c.atMinimum)
			}
		})
	}
}

func TestSharesAboveOneCountAsOne(t *testing.T) {
	u := newUnit(t, heatpump.Defaults())
	if got, want := u.At(7, 45, flow17, 1.5, 60), u.At(7, 45, flow17, 1, 60); got != want {
		t.Errorf("got %+v, want %+v", got, want)
	}
	near(t, "COP", u.COP(7, 55, 1.2), u.COP(7, 55, 1), 0)
}

func TestNoFlowNoOutput(t *testing.T) {
	u := newUnit(t, heatpump.Defaults())
	for _, rate := range []float64{0, -1, math.NaN()} {
		if got, want := u.At(7, 40, rate, 1, 55), (heatpump.Point{LeavingC: 40}); got != want {
			t.Errorf("rate %g: got %+v, want %+v", rate, got, want)
		}
	}
}

func TestScaleDerateAndLoadPenalty(t *testing.T) {
	base := newUnit(t, heatpump.Defaults())
	p := heatpump.Defaults()
	p.NominalKW, p.FieldDerate, p.LoadPenalty = 10, 0.85, 0.12
	u := newUnit(t, p)
	near(t, "max output", u.MaxOutputW(2, 55), 2*base.MaxOutputW(2, 55), 1e-9)
	near(t, "min output", u.MinOutputW(2, 55), 2*base.MinOutputW(2, 55), 1e-9)
	near(t, "COP at half", u.COP(2, 55, 0.5), 0.85*base.COP(2, 55, 0.5), 1e-12)
	near(t, "COP at full", u.COP(2, 55, 1), 0.85*base.COP(2, 55, 0.5)*0.44/0.56, 1e-12)
	near(t, "COP at three quarters", u.COP(2, 55, 0.75), 0.85*base.COP(2, 55, 0.5)*0.50/0.56, 1e-12)
}

func TestGenericMapIsHeldFarOut(t *testing.T) {
	u := newUnit(t, heatpump.Defaults())
	near(t, "output at -40 C", u.MaxOutputW(-40, 55), u.MaxOutputW(-25, 55), 0)
	near(t, "COP at 50 C", u.COP(50, 60, 1), u.COP(40, 60, 1), 0)
	near(t, "COP without lift", u.COP(25, 20, 1), u.COP(25, 37, 1), 0)
}

func TestExtrapolationFlags(t *testing.T) {
	u := newUnit(t, heatpump.Defaults())
	cases := []struct {
		outdoorC, returnC, targetC float64
		want                       string
	}{
		{7, 45, 55, "none"},
		{12, 50, 55, "none"},
		{-10, 22, 24, "none"},
		{-10.1, 45, 55, "colder air"},
		{20, 45, 55, "warmer air"},
		{7, 55, 60, "hotter water"},
		{20, 60, 65, "warmer air, hotter water"},
		{-26, 60, 62.5, "colder air, hotter water, held at limits"},
		{20, 20, 25, "warmer air, held at limits"},
		{13, 20, 25, "warmer air"}, // the smallest lift itself
		{10, 18, 23, "cooler water"},
	}
	for _, c := range cases {
		if got := u.At(c.outdoorC, c.returnC, flow17, 1, c.targetC).Extrapolated.String(); got != c.want {
			t.Errorf("A%g return %g target %g: got %q, want %q", c.outdoorC, c.returnC, c.targetC, got, c.want)
		}
	}
}

func TestPointAllocatesNothing(t *testing.T) {
	for name, u := range map[string]*heatpump.Unit{
		"generic": newUnit(t, heatpump.Defaults()),
		"table":   newUnit(t, withTable(planeRows())),
	} {
		if n := testing.AllocsPerRun(100, func() { u.At(8, 52, flow17, 1, 65) }); n != 0 {
			t.Errorf("%s: %g allocations", name, n)
		}
	}
}

func TestValidateReportsEveryProblem(t *testing.T) {
	p := heatpump.Defaults()
	p.Size, p.LoadPenalty, p.FieldDerate, p.Start.ElectricityTauS = "huge", 0.5, math.NaN(), 61
	var fields []string
	for _, problem := range p.Validate() {
		fields = append(fields, problem.Field)
	}
	got := strings.Join(fields, " ")
	want := "LoadPenalty FieldDerate Start.ElectricityTauS Start.ElectricityTauS Size"
	if got != want {
		t.Errorf("fields: got %s, want %s", got, want)
	}
	_, err := heatpump.New(p)
	if err == nil {
		t.Fatal("no error")
	}
	first, _, _ := strings.Cut(err.Error(), "\n")
	if want := "heat pump: LoadPenalty is 0.5, allowed is 0.02 to 0.12: use 0.07 unless a part-load test says otherwise"; first != want {
		t.Errorf("first line: got %q, want %q", first, want)
	}
}

func TestDefaultsLieWithinTheirLimits(t *testing.T) {
	for _, p := range []heatpump.Params{heatpump.Defaults(), withTable(planeRows())} {
		if problems := p.Validate(); len(problems) > 0 {
			t.Errorf("%v", problems)
		}
	}
}

// The figures that the map rests on, each read off where it alone counts.
func TestConstantsOfTheGenericMap(t *testing.T) {
	for _, c := range []struct {
		size                                                  heatpump.Size
		at7W, coldW, ceilingW, least7W, leastColdW, leastHotW float64
	}{
		{heatpump.Small, 6400, 6400 - 144*32, 9000, 2000, 1000, 2000 + 40*33},
		{heatpump.Medium, 8800, 8800 - 200*32, 12400, 3000, 3000 - 50*32, 3000 + 50*33},
	} {
		p := heatpump.Defaults()
		p.Size, p.NominalKW = c.size, c.size.NominalKW()
		u := newUnit(t, p)
		const exact = 1e-9 // W
		near(t, "most at 7 C", u.MaxOutputW(7, 45), c.at7W, exact)
		near(t, "most at -25 C", u.MaxOutputW(-25, 45), c.coldW, exact)
		near(t, "most beyond -25 C", u.MaxOutputW(-30, 45), c.coldW, exact)
		near(t, "most of all", u.MaxOutputW(40, 45), c.ceilingW, exact)
		near(t, "least at 7 C", u.MinOutputW(7, 45), c.least7W, exact)
		near(t, "least at -25 C", u.MinOutputW(-25, 45), c.leastColdW, exact)
		near(t, "least at 40 C", u.MinOutputW(40, 45), c.leastHotW, exact)
		near(t, "least beyond 40 C", u.MinOutputW(45, 45), c.leastHotW, exact)
	}
	p := heatpump.Defaults()
	p.Size, p.NominalKW = heatpump.Medium, 3 // so small that the floor counts
	near(t, "floor", newUnit(t, p).MinOutputW(-25, 45), 1400*3/8.0, 1e-9)
}

// Next to no flow still takes the smallest output, however hot the water gets.
func TestNextToNoFlow(t *testing.T) {
	p := newUnit(t, heatpump.Defaults()).At(7, 40, 0.5, 1, 55)
	near(t, "output", p.OutputW, 2000, 1e-9)
	near(t, "leaving", p.LeavingC, 40+2000/0.5, 1e-9)
}

// Each figure may have the values at the ends of its range, and none beyond.
func TestRangesOfTheFigures(t *testing.T) {
	for _, c := range []struct {
		field    string
		table    bool
		at       func(p *heatpump.Params) *float64
		min, max float64
	}{
		{"NominalKW", false, func(p *heatpump.Params) *float64 { return &p.NominalKW }, 3, 16},
		{"LoadPenalty", false, func(p *heatpump.Params) *float64 { return &p.LoadPenalty }, 0.02, 0.12},
		{"FieldDerate", false, func(p *heatpump.Params) *float64 { return &p.FieldDerate }, 0.8, 1},
		{"HighestFlowC", false, func(p *heatpump.Params) *float64 { return &p.HighestFlowC }, 45, 80},
		{"Start.HeatTauS", false, func(p *heatpump.Params) *float64 { return &p.Start.HeatTauS }, 30, 120},
		{"Start.ElectricityTauS", false, func(p *heatpump.Params) *float64 { return &p.Start.ElectricityTauS }, 0, 60},
		{"MinimumShare", true, func(p *heatpump.Params) *float64 { return &p.MinimumShare }, 0.1, 1},
		{"OutdoorMarginK", true, func(p *heatpump.Params) *float64 { return &p.OutdoorMarginK }, 0, 10},
		{"LeavingMarginK", true, func(p *heatpump.Params) *float64 { return &p.LeavingMarginK }, 0, 10},
	} {
		const hair = 1e-6
		for value, sound := range map[float64]bool{c.min: true, c.max: true, c.min - hair: false, c.max + hair: false} {
			p := heatpump.Defaults()
			if c.table {
				level := func(by float64) func(_, _ float64) float64 { return func(_, _ float64) float64 { return by } }
				p = withTable(rowsOf([]float64{0, 10}, []float64{45, 55}, level(6), level(3)))
			}
			*c.at(&p) = value
			problems := p.Validate()
			if sound != (len(problems) == 0) || !sound && problems[0].Field != c.field {
				t.Errorf("%s of %g: %v", c.field, value, problems)
			}
		}
	}
}

// Independent points show the work in one call; in a chain each call waits for
// the leaving water of the one before, which shows its delay.
func BenchmarkUnitAt(b *testing.B) {
	b.ReportAllocs()
	for _, m := range []struct {
		name   string
		params heatpump.Params
	}{
		{"generic", heatpump.Defaults()},
		{"table", withTable(sampledRows(b, 5))},
	} {
		u := newUnit(b, m.params)
		b.Run(m.name+"/independent", func(b *testing.B) {
			returnC := 40.0
			for b.Loop() {
				u.At(8, returnC, flow17, 1, 65)
				returnC += 1e-7
			}
		})
		b.Run(m.name+"/chained", func(b *testing.B) {
			returnC := 40.0
			for b.Loop() {
				returnC = u.At(8, returnC, flow17, 1, 65).LeavingC - 7
			}
		})
	}
}
