package compare

import (
	"math"

	"dhwcompare/compare/calendar"
	"dhwcompare/compare/household"
	"dhwcompare/compare/plant"
)

// Risk says how often hot water falls short, when, and for whom.
type Risk struct {
	// Chances of more than so many failing showers in a year.
	Chances []Chance `json:"chances"`
	// WorstDay is the most failing showers in one day, LongestSpell the most days
	// in a row with one, each of a year.
	WorstDay     Spread `json:"worst_day_failing_showers"`
	LongestSpell Spread `json:"longest_bad_spell_days"`
	BadDays      Spread `json:"days_with_a_failing_shower"`
	// ByQueue and ByHour divide a year's failing showers by place in the queue
	// (0 is a shower on its own or the first) and by hour of the wall clock.
	ByQueue []QueueShare                        `json:"by_queue_position"`
	ByHour  [hoursADay]float64                  `json:"by_hour"`
	Showers [calendar.MonthsInAYear]ShowerMonth `json:"showers_by_month"`
	// Each lists the failing showers of all years one by one, the first so many;
	// LeftOff is how many more there were.
	Each    []FailedShower `json:"each_failing_shower"`
	LeftOff int            `json:"failing_showers_left_off"`
	Waits   []OutletWait   `json:"wait_by_outlet"`
}

const (
	hoursADay  = 24
	queueDepth = 4 // places in the queue that are told apart; the last holds all beyond
)

// Chance is the chance of more than a number of failing showers in a year, from
// the years simulated, with Wilson's interval.
type Chance struct {
	MoreThan float64 `json:"more_than"`
	Share    float64 `json:"share"`
	Low      float64 `json:"ci90_low"`
	High     float64 `json:"ci90_high"`
}

// QueueShare is how showers at one place in the queue fare.
type QueueShare struct {
	Position int     `json:"position"`
	Showers  float64 `json:"showers_per_year"`
	Failing  float64 `json:"failing_per_year"`
}

// ShowerMonth is a month's showers, of the mean year.
type ShowerMonth struct {
	Showers float64 `json:"showers"`
	Failing float64 `json:"failing"`
}

// wilson gives Wilson's score interval of a share of k out of n at the two-sided
// level of intervalLevel (Wilson 1927).
func wilson(k, n, z float64) (low, high float64) {
	p := k / n
	centre := p + z*z/(2*n)
	half := z * math.Sqrt(p*(1-p)/n+z*z/(4*n*n))
	scale := 1 + z*z/n
	return math.Max(0, (centre-half)/scale), math.Min(1, (centre+half)/scale)
}

// normalQuantile95 is the 95th percentile of the standard normal distribution:
// the ends of a two-sided interval of 90 %.
const normalQuantile95 = 1.6448536269514722

// chanceOf counts the years with more than a number of failing showers.
func chanceOf(failures []float64, moreThan float64) Chance {
	n, k := float64(len(failures)), 0.0
	for _, f := range failures {
		if f > moreThan {
			k++
		}
	}
	low, high := wilson(k, n, normalQuantile95)
	return Chance{MoreThan: moreThan, Share: k / n, Low: low, High: high}
}

// riskYear is what is kept of one year's failing showers.
type riskYear struct {
	months [calendar.MonthsInAYear]badDays
	queue  [queueDepth]QueueShare
	byHour [hoursADay]float64
}

// badDays are a month's days with a failing shower. A spell that began in the month
// before counts from there.
type badDays struct{ days, worst, longest float64 }

// riskOf goes through a year's outcomes.
func riskOf(outcomes []plant.Outcome, y calendar.Year) riskYear {
	var r riskYear
	var failing [calendar.Days]float64
	for i := range outcomes {
		o := &outcomes[i]
		if o.Draw.Kind != household.Shower {
			continue
		}
		place := min(o.Draw.QueuePos, queueDepth-1)
		r.queue[place].Showers++
		if !o.Failed {
			continue
		}
		r.queue[place].Failing++
		local := y.Local(o.Draw.StartS)
		day := calendar.DayOf(local)
		failing[calendar.WrapDay(day)]++
		r.byHour[int(hourOf(local, day))%hoursADay]++
	}
	r.days(&failing)
	return r
}

func (r *riskYear) days(failing *[calendar.Days]float64) {
	run := 0.0
	for day, n := range failing {
		if n == 0 {
			run = 0
			continue
		}
		run++
		m := &r.months[calendar.MonthOfDay(day)]
		m.days++
		m.longest = math.Max(m.longest, run)
		m.worst = math.Max(m.worst, n)
	}
}

// note adds bad days to a month's figures.
func (b *badDays) note(t *Totals) { t.BadDays, t.WorstDay, t.LongestSpell = b.days, b.worst, b.longest }

// risk makes the summary of one option.
func (k *collector) risk(side Side, s *Service) Risk {
	years := k.years[side]
	column := func(of func(*record) float64) []float64 {
		out := make([]float64, len(years))
		for i := range years {
			out[i] = of(&years[i])
		}
		return out
	}
	failures := column(func(r *record) float64 { return r.totals.FailingShowers })
	out := Risk{
		WorstDay:     SpreadOf(column(func(r *record) float64 { return r.totals.WorstDay })),
		LongestSpell: SpreadOf(column(func(r *record) float64 { return r.totals.LongestSpell })),
		BadDays:      SpreadOf(column(func(r *record) float64 { return r.totals.BadDays })),
		Each:         k.failed[side].first,
		LeftOff:      k.failed[side].leftOff,
		Waits:        k.outletWaits(side),
	}
	for _, more := range chanceLimits(s.FailuresPerYear) {
		out.Chances = append(out.Chances, chanceOf(failures, more))
	}
	out.ByQueue = make([]QueueShare, queueDepth)
	for i := range years {
		k.addRisk(&out, &years[i])
	}
	return out
}

// chanceLimits are the numbers of failing showers a year that chances are given
// for: none, the rule's, and more.
func chanceLimits(rule float64) []float64 {
	limits := []float64{0}
	for _, n := range []float64{rule, 5, 10, 25} {
		if n > limits[len(limits)-1] {
			limits = append(limits, n)
		}
	}
	return limits
}

func (k *collector) addRisk(out *Risk, r *record) {
	for p := range out.ByQueue {
		out.ByQueue[p].Position = p
		out.ByQueue[p].Showers += k.weight * r.risk.queue[p].Showers
		out.ByQueue[p].Failing += k.weight * r.risk.queue[p].Failing
	}
	for h := range out.ByHour {
		out.ByHour[h] += k.weight * r.risk.byHour[h]
	}
	for m := range out.Showers {
		out.Showers[m].Showers += k.weight * r.months[m].Showers
		out.Showers[m].Failing += k.weight * r.months[m].FailingShowers
	}
}
