package charts

import (
	"math"
	"testing"

	"dhwcompare/compare"
	"dhwcompare/compare/calendar"
)

// home is a comparison of an invented home, made by formula and not by simulation,
// so that these tests are quick and keep to the drawing: the compact store uses
// half as much again, starts four times as often and fails in winter.
func home(t testing.TB) *compare.Comparison {
	t.Helper()
	cmp := &compare.Comparison{Title: "Example home", Currency: "GBP", Years: 20}
	cmp.Options.Compact = option(90, 6, 4)
	cmp.Options.Cylinder = option(60, 1.5, 0.5)
	a, b := &cmp.Options.Compact, &cmp.Options.Cylinder
	a.MinutesPerRun, b.MinutesPerRun = 18, 69
	a.FloorAreaM2, b.FloorAreaM2, a.SpaceL, b.SpaceL = 0.494, 0.528, 373, 684
	a.SpaceItems = []compare.SpaceItem{
		{Name: "compact store", WidthMM: 510, DepthMM: 510, HeightMM: 900},
		{Name: "expansion vessel 8 l", WidthMM: 220, DepthMM: 220, HeightMM: 300, Hangs: true},
		{Name: "tempering valve", WidthMM: 150, DepthMM: 80, HeightMM: 150, Hangs: true},
	}
	b.SpaceItems = []compare.SpaceItem{
		{Name: "cylinder", WidthMM: 532, DepthMM: 532, HeightMM: 1550},
		{Name: "discharge pipework", WidthMM: 100, DepthMM: 150, HeightMM: 300, Hangs: true},
	}
	gap := a.ElectricityKWh - b.ElectricityKWh
	cmp.Difference.ElectricityKWh, cmp.Difference.CostPerYear = gap, 0.25*gap
	a.WholeHouseKWh, b.WholeHouseKWh = a.ElectricityKWh+2300, b.ElectricityKWh+2310
	cmp.Difference.WholeHouseKWh = a.WholeHouseKWh - b.WholeHouseKWh
	cmp.Difference.Spread = map[string]compare.DifferenceSpread{
		"electricity_kwh": spread(gap-12, gap+12), "whole_house_electricity_kwh": spread(gap-22, gap+2),
	}
	cmp.ByCause = byCause(cmp.Difference.WholeHouseKWh)
	cmp.Verdict.Cost = compare.CostCylinderLess
	cmp.Tariffs = []compare.TariffCost{tariff("flat", 0.25, cmp), tariff("two-rate", 0.21, cmp)}
	cmp.Shown = compare.Shown{Year: 1, WinterDay: compare.Day{
		Day: 21, MeanC: -1.2, Compact: day(58, 9, true), Cylinder: day(48, 2, false),
	}, SummerDay: compare.Day{
		Day: 190, MeanC: 17.4, Compact: day(58, 7, false), Cylinder: day(48, 1, false),
	}}
	heated(&cmp.Shown.WinterDay.Compact, 19.6)
	heated(&cmp.Shown.WinterDay.Cylinder, 19.1)
	for i, kWh := range []float64{a.ElectricityKWh, b.ElectricityKWh} {
		cmp.Profiles[i] = profile(kWh, 14+i)
	}
	return cmp
}

// winter is 1 at the turn of the year and 0 in its middle.
func winter(month int) float64 { return (1 + math.Cos(2*math.Pi*float64(month)/12)) / 2 }

// option makes the year of one option from its least kWh a month, its starts a day
// and its failing showers in January.
func option(leastKWh, startsPerDay, failing float64) compare.Option {
	var o compare.Option
	o.StartsPerDay = startsPerDay
	for m := range o.Months {
		month := &o.Months[m]
		month.Month, month.Changeovers = m+1, 30*startsPerDay*winter(m)
		o.Changeovers += month.Changeovers
		month.ElectricityKWh = leastKWh * (1 + 0.6*winter(m))
		month.StartsPerDay = startsPerDay * (1 + 0.2*winter(m))
		month.FailingShowers = failing * winter(m)
		o.ElectricityKWh += month.ElectricityKWh
		o.FailingShowers += month.FailingShowers
		o.FailuresByMonth[m] = compare.Spread{Mean: month.FailingShowers, P05: 0.4 * month.FailingShowers, P95: 1.9 * month.FailingShowers}
	}
	o.ShowerTime = showers(40, 38, 4000, 12*failing)
	shares := []float64{0.6, 0.1, 0.1, 0.1, 0, 0.05, 0, 0.03, 0.02, 0}
	for i, cause := range compare.CauseList() {
		*cause.Of(&o.ElectricityByCause) = shares[i%len(shares)] * o.ElectricityKWh
	}
	return o
}

// showers run too cold for so many minutes of the year and as warm as wanted for all
// others but a few.
func showers(wantC, leastC, minutes, tooCold float64) compare.ShowerTime {
	t := compare.ShowerTime{WantC: wantC, LeastC: leastC, Minutes: minutes}
	const below = 10.0
	for c := leastC - below; c <= wantC; c++ {
		colder := tooCold * math.Pow(max(c-leastC+below, 0)/below, 3)
		t.Colder = append(t.Colder, compare.TimeColder{C: c, Minutes: colder, Share: colder / minutes})
	}
	t.Colder = append(t.Colder, compare.TimeColder{C: wantC + 0.1, Minutes: minutes, Share: 1})
	return t
}

func tariff(name string, rate float64, cmp *compare.Comparison) compare.TariffCost {
	t := compare.TariffCost{Name: name}
	for _, side := range bothSides() {
		t.Of(side).Cost = rate * cmp.Options.Of(side).ElectricityKWh
	}
	t.Difference = t.Compact.Cost - t.Cylinder.Cost
	t.DifferenceOver = spread(t.Difference-4, t.Difference+5)
	return t
}

// day is a saw of so many runs below a setpoint, with a shower in each.
func day(setpointC, runs float64, fails bool) compare.DayTrace {
	var d compare.DayTrace
	const points = 288
	for i := 1; i <= points; i++ {
		at := float64(i) / points
		_, phase := math.Modf(at * runs)
		p := compare.DayPoint{Hour: 24 * at, TopC: setpointC - 3*phase, MiddleC: setpointC - 8*phase, BottomC: setpointC - 35*phase}
		if phase < 0.2 {
			p.ElectricW = 1800
		}
		d.Points = append(d.Points, p)
	}
	for i := range 8 {
		d.Draws = append(d.Draws, compare.DayDraw{Hour: 6 + 2*float64(i), Minutes: 8, Litres: float64(4 + 8*i), Failed: fails && i == 7})
	}
	return d
}

// heated lets the heat pump heat the house when it makes no hot water, from a room
// that falls to its lowest in the middle of the day, with a defrost in each hour.
func heated(d *compare.DayTrace, lowestC float64) {
	for i := range d.Points {
		p := &d.Points[i]
		p.RoomC = 20 - (20-lowestC)*math.Sin(math.Pi*p.Hour/24)
		_, part := math.Modf(p.Hour)
		switch {
		case p.ElectricW > 0:
			p.HeatW = 5000
		case part < 0.1:
			p.HouseW, p.Defrosting = -3600, true
		default:
			p.HouseW = 3000 + 500*math.Cos(p.Hour/4)
		}
	}
}

// byCause divides a difference in parts of either sign, one of them too small to
// show.
func byCause(kWh float64) compare.DifferenceByCause {
	d := compare.DifferenceByCause{Years: 1, KWh: kWh}
	rest := kWh
	for _, p := range []struct {
		name, label string
		kWh         float64
	}{{"water_temperature", "hotter water from the heat pump", 210}, {"starts", "starting up", 40.4}, {"useful_losses", "losses that heat the house (a credit)", -61}, {"pump", "circulation pump", 0.2}} {
		d.Parts = append(d.Parts, compare.CauseOfDifference{Name: p.name, Label: p.label, KWh: p.kWh})
		rest -= p.kWh
	}
	d.Parts = append(d.Parts, compare.CauseOfDifference{Name: restName, Label: "all else, and what these do to each other", KWh: rest})
	return d
}

// profile spreads a year's kWh over the days, most of it around one half hour.
func profile(kWh float64, busiest int) []float64 {
	out := make([]float64, calendar.HalfHours)
	sum := 0.0
	for i := range out {
		away := math.Abs(float64(i%calendar.HalfHoursADay - busiest))
		out[i] = math.Exp(-away/6) * (1 + winter(calendar.MonthOfDay(i/calendar.HalfHoursADay)))
		sum += out[i]
	}
	for i := range out {
		out[i] *= kWh / sum
	}
	return out
}

func spread(low, high float64) compare.DifferenceSpread {
	return compare.DifferenceSpread{Spread: compare.Spread{Mean: (low + high) / 2, CILow: low, CIHigh: high}}
}

// all makes every chart.
func all(t testing.TB, cmp *compare.Comparison) []Chart {
	t.Helper()
	charts, err := All(cmp)
	if err != nil {
		t.Fatal(err)
	}
	return charts
}

// findChart gives the chart of a name.
func findChart(t testing.TB, charts []Chart, name string) *Chart {
	t.Helper()
	for i := range charts {
		if charts[i].Name == name {
			return &charts[i]
		}
	}
	t.Fatalf("no chart %s", name)
	return nil
}

// drawn makes every chart of a document.
func drawn(t testing.TB, doc *compare.Document) []Chart {
	t.Helper()
	charts, err := Of(doc)
	if err != nil {
		t.Fatal(err)
	}
	return charts
}

// everything is a document with all that can be drawn.
func everything(t testing.TB) *compare.Document {
	doc := tested(t)
	doc.Sizing, doc.Sensitivity = sized(t).Sizing, varied(t).Sensitivity
	return doc
}

// checkPicture holds a chart to what every chart must be.
func checkPicture(t *testing.T, c *Chart) {
	t.Helper()
	svg := svgOf(t, c)
	checkXML(t, c.Name, svg)
	if bad := notANumber.Find(svg); bad != nil {
		t.Errorf("%s holds %s", c.Name, bad)
	}
	checkLayout(t, c)
}
