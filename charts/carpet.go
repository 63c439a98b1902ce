package charts

import (
	"fmt"
	"slices"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"dhwcompare/compare"
	"dhwcompare/compare/calendar"
)

// carpetChart shows at which hours of the day and in which weeks of the year each
// option uses electricity: the darker, the more.
func carpetChart(cmp *compare.Comparison) Chart {
	k := carpets{}
	for _, side := range bothSides() {
		k.weeks[side] = weekly(cmp.Profiles[side])
	}
	title := "When electricity is used"
	alt := "No figures by half hour."
	if k.any() {
		a, b := busiest(cmp.Profiles[0]), busiest(cmp.Profiles[1])
		title = carpetTitle(a, b)
		alt = fmt.Sprintf("Two panels, hours of the day against weeks of the year, darker where more electricity is used. The busiest half hour of the mean day begins at %s with the compact store and at %s with the cylinder.", clock(a), clock(b))
	}
	return Chart{
		Name:     "electricity-by-half-hour",
		Title:    title,
		Alt:      alt,
		subtitle: "Electricity for hot water by half hour (winter time), mean of each week. The darker, the more.",
		caption:  meanYears(cmp),
		room:     k.room(),
		body:     k.draw,
	}
}

func carpetTitle(a, b int) string {
	if a == b {
		return fmt.Sprintf("Electricity use is highest around %s with either option", clock(a))
	}
	return fmt.Sprintf("Electricity use is highest around %s with the compact store, around %s with the cylinder", clock(a), clock(b))
}

// clock writes the start of a half hour of the day.
func clock(halfHour int) string { return fmt.Sprintf("%02d:%02d", halfHour/2, halfHour%2*30) }

// carpets are both options, in the same shades.
type carpets struct {
	weeks [2][]week
}

const carpetHeight = 190.0 // points

func (k *carpets) room() vg.Length {
	if k.any() {
		return carpetHeight
	}
	return emptyHeight
}

func (k *carpets) any() bool { return k.weeks[0] != nil && k.weeks[1] != nil }

// ordinary leaves out the highest values, which are few and would make all others
// pale.
const ordinary = 0.99

// high is the value below which the ordinary share of all half hours lies, W.
func (k *carpets) high() float64 {
	var all []float64
	for side := range k.weeks {
		for w := range k.weeks[side] {
			all = append(all, k.weeks[side][w][:]...)
		}
	}
	slices.Sort(all)
	return all[int(ordinary*float64(len(all)-1))]
}

func (k *carpets) draw(c draw.Canvas) {
	if !k.any() {
		empty(c, "no figures by half hour in this comparison")
		return
	}
	s := shadesUpTo(k.high())
	s.key(c)
	half := c.Size().X / 2
	for _, side := range bothSides() {
		panel := draw.Crop(c, half*vg.Length(side), -half*vg.Length(1-side), step(textSize)+keyGap, 0)
		if side == compare.SideCompact {
			panel.Max.X -= panelGap
		} else {
			panel.Min.X += panelGap
		}
		k.panel(panel, side, s)
	}
}

func (k *carpets) panel(c draw.Canvas, side compare.Side, s shades) {
	put(c, bold(words(textSize, textOf(side))), vg.Point{X: c.Min.X, Y: c.Max.Y}, side.String())
	p := newPlot()
	p.X.Min, p.X.Max = 0, weeksShown
	p.Y.Min, p.Y.Max = -calendar.HalfHoursADay, 0
	p.X.Tick.Marker, p.Y.Tick.Marker = quarterMarks(), sixHourMarks()
	p.Add(drawing(func(c draw.Canvas, p *plot.Plot) { k.cells(c, p, side, s) }))
	p.Draw(draw.Crop(c, 0, 0, 0, -step(textSize)-3))
}

// quarterMarks names the first month of each quarter at its first week.
func quarterMarks() marks {
	var out marks
	for month := 0; month < calendar.MonthsInAYear; month += 3 {
		week := (float64(calendar.MonthStartDay(month)) + float64(calendar.DaysIn(month))/2) / daysAWeek
		out = append(out, plot.Tick{Value: week, Label: calendar.MonthNames()[month][:3]})
	}
	return out
}

// sixHourMarks run from midnight at the top downwards.
func sixHourMarks() marks {
	var out marks
	for h := 0; h <= calendar.HalfHoursADay; h += 12 {
		out = append(out, plot.Tick{Value: -float64(h), Label: clock(h)})
	}
	return out
}

// cells fills, shade by shade, runs of half hours of a week that share it: one
// path a shade keeps the SVG small.
func (k *carpets) cells(c draw.Canvas, p *plot.Plot, side compare.Side, s shades) {
	x, y := p.Transforms(&c)
	paths := make([]vg.Path, len(s.colours()))
	for w := range k.weeks[side] {
		day := &k.weeks[side][w]
		from := 0
		for h := 1; h <= len(day); h++ {
			if h < len(day) && s.of(day[h]) == s.of(day[from]) {
				continue
			}
			rect := vg.Rectangle{
				Min: vg.Point{X: x(float64(w)), Y: y(-float64(h))},
				Max: vg.Point{X: x(float64(w + 1)), Y: y(-float64(from))},
			}
			shade := s.of(day[from])
			paths[shade] = append(paths[shade], rect.Path()...)
			from = h
		}
	}
	for i, colour := range s.colours() {
		if len(paths[i]) > 0 && i > 0 {
			c.SetColor(colour)
			c.Fill(paths[i])
		}
	}
	outline(c, line(rgb(mutedHex), gridWidth), c.Min.X, c.Min.Y, c.Max.X, c.Max.Y)
}
