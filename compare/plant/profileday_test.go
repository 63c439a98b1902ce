package plant

import (
	"testing"

	"dhwcompare/compare/calendar"
	"dhwcompare/compare/checkvalues"
	"dhwcompare/compare/household"
)

// At 62 C, where 220 litres meet every draw, profiles M and L give their energy of the
// day within 0.5 %.
func TestProfilesGiveTheirEnergyWhenAllIsMet(t *testing.T) {
	for _, row := range checkvalues.Published(t, "load_profile_totals.csv") {
		profile := row["profile"]
		if profile != "M" && profile != "L" {
			continue
		}
		l := ratedDays(t, rated(t, 62), profile, nil)
		wanted := total(l, func(m *Month) float64 { return m.Wanted })
		got := total(l, func(m *Month) float64 { return m.Delivered })
		near(t, "profile "+profile+", delivered of wanted", got, wanted, 1e-6) // a draw ends within a millionth of its heat
		near(t, "profile "+profile+", kWh a day", got/joulesPerKWh/certifiedDays, row.Number(t, "reference_kwh"), 0.005)
		t.Logf("profile %s: %.4f kWh a day", profile, got/joulesPerKWh/certifiedDays)
	}
}

// appendixJ is the energy content of hot water by month as SAP 10.2, appendix J, has it
// for a home with a bath (read in an open-source implementation, as are the worked
// values of sap_appendix_j_january.csv): litres a day at 52 C, of showers at 41 C and
// baths at 42 C mixed with mains water, times 4.18 (52 - Tc)/3600 kWh.
func appendixJ(people, mainsC float64, bathing, taps float64) (litresADay, kWhADay float64) {
	const hotC = household.HotSupplyC
	litresADay = bathing*(0.45*people+0.65)*6*7*(41-mainsC)/(hotC-mainsC) +
		bathing*(0.13*people+0.19)*73*(42-mainsC)/(hotC-mainsC) +
		taps*(9.8*people+14)
	return litresADay, 4.18 * litresADay * (hotC - mainsC) / 3600
}

// Monthly energy to the taps, from a cylinder that is hot enough for all, is within 5 %
// of appendix J's: that for the very litres of the month, and that of its own litres over
// a hundred years. Showers are taken at its 41 C here, not at 40 C. Month factors: Tables J5
// (bathing) and J2 (other), the same as in the household's defaults; mains: Table J1.
func TestMonthlyEnergyAgainstAppendixJ(t *testing.T) {
	const people, years = 2, 100
	bathing := [12]float64{1.035, 1.021, 1.007, 0.993, 0.979, 0.965, 0.965, 0.979, 0.993, 1.007, 1.021, 1.035}
	taps := [12]float64{1.10, 1.06, 1.02, 0.98, 0.94, 0.90, 0.90, 0.94, 0.98, 1.02, 1.06, 1.10}
	mainsC := [12]float64{8.0, 8.2, 9.3, 12.7, 14.6, 16.7, 18.4, 17.6, 16.6, 14.3, 11.1, 8.5}
	home := household.Defaults(people, true)
	home.ShowerC = 41

	var wanted, litres [12]float64 // kWh; hot litres at 52 C, of all years
	for year := range years {
		for _, d := range household.Draws(home, testYear(), mainsC, 1, year) {
			m := calendar.MonthOfDay(calendar.DayOf(d.StartS))
			amount := d.End.Amount
			if d.End.By == household.BySeconds {
				amount *= d.FlowLPerMin / secondsPerMinute
			}
			wanted[m] += amount * 4.18 * (d.WantC - mainsC[m]) / 3600
			litres[m] += amount * (d.WantC - mainsC[m]) / (household.HotSupplyC - mainsC[m])
		}
	}
	in := twoPeople()
	in.Draws = household.Draws(home, testYear(), mainsC, 1, 0)
	p := atTheStore(cylinderParams(t), 0)
	p.Control.SetpointC, p.Control.Allowed, p.Control.OutputCap = 62, Schedule{}, 1
	l := marched(t, New(p), 0, calendar.YearS, in, Override{})
	served := litresByMonth(in.Draws, mainsC)
	for m := range wanted {
		days := float64(calendar.DaysIn(m))
		litresADay, kWhADay := appendixJ(people, mainsC[m], bathing[m], taps[m])
		got := l.Months[m].Delivered / joulesPerKWh
		same := 4.18 * served[m] * (household.HotSupplyC - mainsC[m]) / 3600
		t.Logf("%s: delivered %.1f kWh, appendix J for the same litres %.1f (%+.1f %%); mean of %d years %.1f kWh and %.1f l a day, appendix J %.1f kWh and %.1f l",
			calendarMonth(m), got, same, 100*(got/same-1), years, wanted[m]/years, litres[m]/years/days, kWhADay*days, litresADay)
		near(t, calendarMonth(m)+", delivered", got, same, 0.05)
		near(t, calendarMonth(m)+", wanted", wanted[m]/years, kWhADay*days, 0.05)
		near(t, calendarMonth(m)+", litres", litres[m]/years/days, litresADay, 0.05)
	}
}

// litresByMonth gives the hot litres at 52 C of a year's draws.
func litresByMonth(draws []household.Draw, mainsC [12]float64) (litres [12]float64) {
	for _, d := range draws {
		m := calendar.MonthOfDay(calendar.DayOf(d.StartS))
		amount := d.End.Amount
		if d.End.By == household.BySeconds {
			amount *= d.FlowLPerMin / secondsPerMinute
		}
		litres[m] += amount * (d.WantC - mainsC[m]) / (household.HotSupplyC - mainsC[m])
	}
	return litres
}
