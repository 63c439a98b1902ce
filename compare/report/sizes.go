package report

import (
	"fmt"
	"io"
	"strings"

	"dhwcompare/compare"
)

// Sizes writes the sizes of both options that serve, with the winners marked, and
// the winners head to head. No line is longer than 80 columns, the folder's name
// excepted.
func Sizes(w io.Writer, doc *compare.Document, folder string) error {
	s := doc.Sizing
	return study(w, doc, folder, func(p *page) {
		p.sizesOf("Compact store", doc, &s.Compact)
		p.gap()
		p.sizesOf("Cylinder", doc, &s.Cylinder)
		p.gap()
		p.legend(s)
		if s.HeadToHead == nil {
			p.text("There is no best against best: an option has no size that serves and fits.")
			return
		}
		p.text("Best against best: " + s.HeadToHead.Text)
	})
}

// legend explains the table of sizes, where there is one.
func (p *page) legend(s *compare.Sizing) {
	if len(s.Compact.Sizes)+len(s.Cylinder.Sizes) == 0 {
		return
	}
	p.text(fmt.Sprintf("S: smallest that serves. C: cheapest that serves. Both without an added limiter if any serves so. *: no other size is at least as good in cost, failures, space, runs and flow. "+
		"Setpoint in brackets: from April to October. Each size keeps the service rule over %s; %d settings were tried, on %s at first.",
		years(s.ConfirmYears), s.Tried, years(s.ScreenYears)))
	p.gap()
}

func (p *page) sizesOf(name string, doc *compare.Document, r *compare.SizingResult) {
	p.line(name)
	if len(r.Sizes) == 0 {
		p.text("None: " + r.Note + ".")
	} else {
		p.grid(sizeColumns(Plain(doc.Comparison.Currency)), sizeRows(r))
	}
	p.litres("Fail at every setting tried", r.Failing)
	p.litres("Too large for the room, with what stands beside", r.TooLarge)
}

func (p *page) litres(what string, list []float64) {
	if len(list) == 0 {
		return
	}
	texts := make([]string, len(list))
	for i, v := range list {
		texts[i] = fixed(v, 0)
	}
	p.text(fmt.Sprintf("%s: %s l.", what, strings.Join(texts, ", ")))
}

func sizeColumns(currency string) []column {
	return []column{
		{[2]string{"", "mark"}, 6, true}, {[2]string{"volume", "l"}, 7, false}, {[2]string{"setpoint", "C"}, 11, false},
		{[2]string{"hysteresis", "K"}, 12, false}, {[2]string{"output", "%"}, 8, false}, {[2]string{"limiter", "l/min"}, 8, false},
		{[2]string{"space", "l"}, 7, false}, {[2]string{"cost", cut(currency, 4) + "/a"}, 7, false},
		{[2]string{"fail", "/a"}, 6, false}, {[2]string{"runs", "/day"}, 6, false},
	}
}

func sizeRows(r *compare.SizingResult) [][]string {
	var rows [][]string
	for i := range r.Sizes {
		s := &r.Sizes[i]
		setpoint, limiter := fixed(s.SetpointC, 0), "none"
		if s.SummerC != s.SetpointC {
			setpoint += " (" + fixed(s.SummerC, 0) + ")"
		}
		if s.ShowerLimit > 0 {
			limiter = brief(s.ShowerLimit)
		}
		const percent = 100
		rows = append(rows, []string{
			marks(r, s), fixed(s.VolumeL, 0), setpoint, brief(s.HysteresisK), fixed(s.OutputCap*percent, 0), limiter,
			fixed(s.SpaceL, 0), fixed(s.Trial.Cost, 0), fixed(s.Trial.Failing.Mean, 1), fixed(s.Trial.RunsADay, 1),
		})
	}
	return rows
}

func marks(r *compare.SizingResult, s *compare.Size) string {
	text := ""
	for _, mark := range []struct {
		sign string
		is   bool
	}{{"S", s == r.Smallest}, {"C", s == r.Cheapest}, {"*", s.NonDominated}} {
		if mark.is {
			text += mark.sign
		}
	}
	return text
}
