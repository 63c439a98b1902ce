package compare

import (
	"context"

	"dhwcompare/climate"
	"dhwcompare/compare/calendar"
	"dhwcompare/compare/plant"
)

// Spell is a stretch of hard weather that both options live through several times,
// with the household's draw-offs of January: synthetic years are too mild to rest
// a verdict on.
type Spell struct {
	Name      string      `json:"name"`
	Days      int         `json:"days"`
	OutdoorC  float64     `json:"mean_outdoor_c"`
	MainsC    float64     `json:"mains_c"`
	RHPercent float64     `json:"humidity_percent"`
	Samples   int         `json:"samples"`
	Compact   SpellResult `json:"compact"`
	Cylinder  SpellResult `json:"cylinder"`
}

// Of gives one option's result.
func (s *Spell) Of(side Side) *SpellResult {
	if side == SideCompact {
		return &s.Compact
	}
	return &s.Cylinder
}

// HeatShort reports whether the house fell behind in most samples with an option.
func (s *Spell) HeatShort(side Side) bool { return 2*s.Of(side).FellBehind > s.Samples }

// SpellResult is one option's mean spell.
type SpellResult struct {
	Showers          float64 `json:"showers"`
	FailingShowers   float64 `json:"failing_showers"`
	UnmetKWh         float64 `json:"unmet_heat_kwh"`
	Defrosts         float64 `json:"defrosts"` // in all runs
	InterruptedHours float64 `json:"heating_interrupted_hours"`
	LongestGapMin    float64 `json:"longest_heating_gap_minutes"` // of all samples
	WorstDipK        float64 `json:"worst_room_dip_k"`            // of all samples
	WholeHouseKWh    float64 `json:"whole_house_electricity_kwh"`
	// CatchUpMin is the time after the spell until the house and the hot water are
	// back, mean of the samples that got there within two days; negative if none did.
	CatchUpMin float64 `json:"catch_up_minutes"`
	// FellBehind is the number of samples in which the house was colder at the end
	// of the spell than a day before, or never warm on its last day, by more than half a
	// kelvin: heat was short.
	FellBehind int `json:"samples_that_fell_behind"`
}

// The design cold spell and the humid day.
const (
	coldSpellDays    = 5
	coldSpellRH      = 90.0
	humidDayMeanC    = 0.0
	humidDayMainsC   = 5.0
	humidDayRH       = 95.0
	humidDaySwingK   = 4.0
	spellSamples     = 10
	spellFirstDay    = 12 // 13 January
	spellLeadDays    = 3
	spellRecoverDays = 2
)

// spellSearch lives through a cold spell at the case's design temperature with its
// coldest mains, and a day of freezing fog.
func (cmp *Comparison) spellSearch(ctx context.Context, c *Case, w *worlds) search {
	mains, _ := c.Climate.Mains()
	list := []Spell{
		{Name: "design cold spell", Days: coldSpellDays, OutdoorC: c.Dwelling.DesignC, MainsC: mains[c.coldestMains()], RHPercent: coldSpellRH, Samples: spellSamples},
		{Name: "cold humid day", Days: 1, OutdoorC: humidDayMeanC, MainsC: humidDayMainsC, RHPercent: humidDayRH, Samples: spellSamples},
	}
	var parts []func() error
	for i := range list {
		for side := range sides {
			parts = append(parts, func() error { return c.liveSpell(ctx, w, &list[i], side) })
		}
	}
	return search{parts: parts, whole: func() { cmp.Spells = list }}
}

func (c *Case) liveSpell(ctx context.Context, w *worlds, s *Spell, side Side) error {
	fresh, err := c.asStated(side).fresh()
	if err != nil {
		return err
	}
	sum := s.Of(side)
	caught := 0
	for sample := range s.Samples {
		world, err := w.of(c, sample)
		if err != nil {
			return err
		}
		r, err := s.sample(ctx, fresh.again(), world)
		if err != nil {
			return err
		}
		sum.addSample(&r, 1/float64(s.Samples))
		if r.CatchUpMin >= 0 {
			caught++
			sum.CatchUpMin += r.CatchUpMin
		}
	}
	sum.CatchUpMin = ratio(sum.CatchUpMin, float64(caught))
	if caught == 0 {
		sum.CatchUpMin = -1
	}
	return nil
}

// sample lives through one spell: days before it, the spell, and days after.
func (s *Spell) sample(ctx context.Context, p *plant.Plant, w World) (SpellResult, error) {
	weather := s.over(w.Weather)
	in := plant.Inputs{Weather: weather, Draws: w.Draws}
	const start = spellFirstDay * calendar.DayS
	end := start + float64(s.Days)*calendar.DayS
	if err := p.Run(ctx, start-spellLeadDays*calendar.DayS, start, in, plant.Override{}, plant.Recorder{}); err != nil {
		return SpellResult{}, err
	}
	l := &plant.Ledger{}
	var roomDayBefore, roomEnd, warmest float64 // warmest of the last day
	err := p.Run(ctx, start, end, in, plant.Override{}, plant.Recorder{Ledger: l, Trace: func(x *plant.Sample) {
		if x.T < end-calendar.DayS {
			roomDayBefore = x.RoomTempC
		}
		if x.T >= end-calendar.DayS {
			warmest = max(warmest, x.RoomTempC)
		}
		roomEnd = x.RoomTempC
	}})
	if err != nil {
		return SpellResult{}, err
	}
	r := spellResult(l)
	if s.Days > 1 && (roomEnd < roomDayBefore-0.5 || warmest < p.RoomSetC()-0.5) {
		r.FellBehind = 1
	}
	r.CatchUpMin, err = catchUp(ctx, p, in, end)
	return r, err
}

// over lays the spell over a year's weather. The days after it are those of the
// year.
func (s *Spell) over(w *climate.Series) *climate.Series {
	out := &climate.Series{
		OutdoorC: append([]float64(nil), w.OutdoorC...), RHPercent: append([]float64(nil), w.RHPercent...), MainsC: append([]float64(nil), w.MainsC...),
	}
	const hours = 24
	for day := spellFirstDay; day < spellFirstDay+s.Days; day++ {
		mean := 0.0
		for h := range hours {
			mean += w.OutdoorC[day*hours+h] / hours
		}
		for h := range hours {
			i := day*hours + h
			out.OutdoorC[i] = s.OutdoorC + s.swing(w.OutdoorC[i]-mean)
			out.RHPercent[i], out.MainsC[i] = s.RHPercent, s.MainsC
		}
	}
	return out
}

// swing keeps the day's own swing within that of a dull winter day.
func (s *Spell) swing(k float64) float64 {
	return min(max(k, -humidDaySwingK/2), humidDaySwingK/2)
}

func spellResult(l *plant.Ledger) SpellResult {
	m := &l.Months[0]
	return SpellResult{
		Showers: float64(m.Draws[0].Count), FailingShowers: float64(m.Draws[0].Failed),
		UnmetKWh: (m.Wanted - m.Delivered) / joulesPerKWh, Defrosts: float64(m.Defrosts + m.HeatingDefrosts),
		InterruptedHours: m.InterruptedS / calendar.HourS, LongestGapMin: m.LongestGapS / secondsPerMinute,
		WorstDipK: m.WorstDipK, WholeHouseKWh: (m.Electricity() + m.HouseElectricity()) / joulesPerKWh,
	}
}

func (r *SpellResult) addSample(o *SpellResult, weight float64) {
	r.Showers += weight * o.Showers
	r.FailingShowers += weight * o.FailingShowers
	r.UnmetKWh += weight * o.UnmetKWh
	r.Defrosts += weight * o.Defrosts
	r.InterruptedHours += weight * o.InterruptedHours
	r.WholeHouseKWh += weight * o.WholeHouseKWh
	r.LongestGapMin = max(r.LongestGapMin, o.LongestGapMin)
	r.WorstDipK = max(r.WorstDipK, o.WorstDipK)
	r.FellBehind += o.FellBehind
}

// catchUp times the days after the spell until rooms are back within a tenth of a
// kelvin and no hot water is being made; negative if that takes more than the
// days given.
func catchUp(ctx context.Context, p *plant.Plant, in plant.Inputs, from float64) (float64, error) {
	const closeK = 0.1
	minutes := -1.0
	err := runUntil(ctx, p, from, from+spellRecoverDays*calendar.DayS, in, plant.Override{}, func(s *plant.Sample) bool {
		back := !s.Running && s.RoomTempC >= p.RoomSetC()-closeK
		if back {
			minutes = (s.T - from) / secondsPerMinute
		}
		return back
	})
	return minutes, err
}
