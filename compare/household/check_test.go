package household

import (
	"math"
	"strings"
	"testing"
)

func TestDefaultsAreLegal(t *testing.T) {
	for _, people := range []float64{1, 2.3, 12} {
		for _, hasBath := range []bool{true, false} {
			p := Defaults(people, hasBath)
			if err := p.Check(britishMainsC); err != nil {
				t.Errorf("%g people, bath %t: %v", people, hasBath, err)
			}
		}
	}
}

func TestCheckNamesWhatIsWrong(t *testing.T) {
	for _, c := range []struct {
		want   string
		change func(*Params)
	}{
		{"people: 0 is outside 1 to 12", func(p *Params) { p.People = 0 }},
		{"people: NaN", func(p *Params) { p.People = math.NaN() }},
		{"bathrooms: 0", func(p *Params) { p.Bathrooms = 0 }},
		{"showers a day: 7 is outside 0 to 6", func(p *Params) { p.ShowersPerDay = 7 }},
		{"lowest shower temperature: 41 is outside 30 to 40 C", func(p *Params) { p.ShowerMinC = 41 }},
		{"minutes of a shower: 0", func(p *Params) { p.ShowerMinutes = 0 }},
		{"baths a day: -1", func(p *Params) { p.BathsPerDay = -1 }},
		{"lowest bath temperature", func(p *Params) { p.BathMinC = 43 }},
		{"tap draws a day 0 and tap litres a day 33.6: state both", func(p *Params) { p.TapsPerDay = 0 }},
		{"tap draws a day: 51", func(p *Params) { p.TapsPerDay = 51 }},
		{"gap between showers back to back: 0", func(p *Params) { p.BackToBackGapMinutes = 0 }},
		{"rhythm 9", func(p *Params) { p.Rhythm = 9 }},
		{"days away: day 361 to day 5", func(p *Params) { p.Away = []DayRange{{360, 4}} }},
		{"days with guests: day 1 to day 366", func(p *Params) { p.Guests = []Stay{{DayRange{0, 365}, 1}} }},
		{"guests: 0 is below 1", func(p *Params) { p.Guests = []Stay{{DayRange{0, 3}, 0}} }},
		{"guests: 14 on day 3", func(p *Params) { p.Guests = []Stay{{DayRange{0, 3}, 7}, {DayRange{2, 5}, 7}} }},
	} {
		p := Defaults(2, true)
		c.change(&p)
		if err := p.Check(britishMainsC); err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("error %v does not say %q", err, c.want)
		}
	}
}

func TestCheckReportsAllAtOnce(t *testing.T) {
	p := Defaults(2, true)
	p.ShowerC, p.BathLitres = 60, 5
	mainsC := britishMainsC
	mainsC[6] = 45
	err := p.Check(mainsC)
	if err == nil {
		t.Fatal("no error")
	}
	for _, want := range []string{"shower temperature: 60", "litres of a bath: 5", "mains water of month 7: 45"} {
		if !strings.Contains(err.Error(), want) {
			t.Errorf("error does not say %q:\n%v", want, err)
		}
	}
}
