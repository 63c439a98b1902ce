package workbook

import (
	"fmt"
	"time"

	"dhwcompare/compare"
	"dhwcompare/compare/calendar"

	"gonum.org/v1/gonum/stat/distuv"
)

// riskRefs are the spreads that other sheets refer to, by figure.
type riskRefs struct {
	student term // quantile for the interval of a mean
	years   term // number of years
	rows    map[string][3]spreadRef
}

// spreadRef is one spread as it stands on the sheet.
type spreadRef struct{ mean, se, low, high, p05, p95, better term }

// riskRow is one line of the tables.
type riskRow struct {
	key, label, unit, format string
	better                   compare.Better
	foreign                  bool
}

func (b *book) writeRisk() {
	s := b.sheet(riskName)
	b.risk = &riskRefs{rows: map[string][3]spreadRef{}}
	s.text(place{1, 1}, title, "Risk: spread over the simulated years")
	s.text(place{1, 2}, label, "Formulas over the sheet Each year. This is the spread of weather and habits, not the total uncertainty. Intervals shrink as years are added; percentiles do not.")
	s.riskHead()
	rows := append(b.figureRows(), b.tariffRows()...)
	at := place{1, 7}
	for side := range 3 {
		at = s.riskBlock(side, capital(blockName(side)), rows, at)
	}
	for side := range sideOrder() {
		at = s.riskBlock(side, "Failing showers by month: "+blockName(side), failingRows(), at)
	}
	s.writeFinding(&at)
	s.widths(46, 11, 13, 13, 13, 13, 13, 13, 14)
	s.lay(page{freeze: place{3, 5}, titleRows: 2, last: place{riskCols, at.row - 1}})
}

// riskCols is the last column of the tables.
const riskCols = 9

// riskHead writes what all spreads share.
func (s *sheet) riskHead() {
	r, in := s.book.risk, s.book.inputs
	cost := s.book.yearColumn("electricity_kwh").spans[0]
	s.text(place{1, 3}, label, "Number of years")
	years := s.live(place{2, 3}, style{derived, formatWhole}, call("COUNT", float64(len(cost.values)), cost.text))
	r.years = s.named("Years_simulated", place{2, 3}, years)
	s.text(place{1, 4}, label, "Student's quantile for the interval of a mean")
	r.student = s.named("Student_quantile", place{2, 4}, s.live(place{2, 4}, style{derived, formatTwo}, student(in.level, r.years)))
}

// one is the number 1 within a formula.
func one() term { return term{text: "1", value: 1.0} }

// student is the two-sided quantile of Student's distribution; 0 for one year,
// which has no interval.
func student(level, years term) term {
	n := years.num()
	quantile := 0.0
	if n > 1 {
		quantile = distuv.StudentsT{Sigma: 1, Nu: n - 1}.Quantile((1 + level.num()) / 2)
	}
	many := compared(years, ">", one(), n > 1)
	t := call("TINV", quantile, minus(one(), level).text, minus(years, one()).text)
	return choose(many, t, term{text: "0", value: 0.0})
}

func (b *book) figureRows() []riskRow {
	var rows []riskRow
	for _, f := range compare.Figures() {
		if !f.Varies {
			continue
		}
		unit := f.Unit
		if unit == "money" {
			unit = b.comparison().Currency
		}
		rows = append(rows, riskRow{key: f.Name, label: capital(f.Label), unit: unit, format: decimals(max(f.Decimals, 1)), better: f.Better})
	}
	return rows
}

func (b *book) tariffRows() []riskRow {
	var rows []riskRow
	for i, t := range b.comparison().Tariffs {
		rows = append(rows, riskRow{key: costKey(i), label: fmt.Sprintf("Cost on tariff %d: %s", i+1, t.Name), foreign: true,
			unit: b.comparison().Currency, format: formatTwo, better: compare.Less})
	}
	return rows
}

func failingRows() []riskRow {
	var rows []riskRow
	for m := range calendar.MonthsInAYear {
		rows = append(rows, riskRow{key: failKey(m), label: time.Month(m + 1).String(), format: formatTwo, better: compare.Less})
	}
	return rows
}

// riskBlock writes the spreads of an option, or of the difference.
func (s *sheet) riskBlock(side int, name string, rows []riskRow, at place) place {
	s.text(at, heading, name)
	heads := []string{"Figure", "Unit", "Mean", "Standard error of the mean", "90 % interval of the mean, low", "90 % interval of the mean, high", "5th percentile of years", "95th percentile of years"}
	if side == differenceBlock {
		heads = append(heads, "Share of years in which the compact store is better")
	}
	s.tops(at.down(1), 54, heads...)
	p := at.down(2)
	for _, r := range rows {
		refs := s.book.risk.rows[r.key]
		refs[side] = s.riskRow(side, r, p)
		s.book.risk.rows[r.key] = refs
		p = p.down(1)
	}
	return p.down(1)
}

func (s *sheet) riskRow(side int, r riskRow, p place) spreadRef {
	if r.foreign {
		s.foreign(p, r.label)
	} else {
		s.text(p, label, r.label)
	}
	s.text(p.right(1), label, r.unit)
	values := s.book.yearColumn(r.key).spans[side]
	v := compare.SpreadOf(values.values)
	st, free := style{derived, r.format}, style{derived, r.format}
	if side == differenceBlock {
		st.format = signed(r.format)
	}
	var ref spreadRef
	ref.mean = s.live(p.right(2), st, call("AVERAGE", v.Mean, values.text))
	ref.se = s.live(p.right(3), free, standardError(values, v.SE, s.book.risk.years))
	half := times(ref.se, s.book.risk.student)
	ref.low = s.live(p.right(4), st, minus(ref.mean, half))
	ref.high = s.live(p.right(5), st, plus(ref.mean, half))
	ref.p05 = s.live(p.right(6), st, call("PERCENTILE", v.P05, values.text, s.book.inputs.lowPercentile.text))
	ref.p95 = s.live(p.right(7), st, call("PERCENTILE", v.P95, values.text, minus(one(), s.book.inputs.lowPercentile).text))
	if side == differenceBlock && r.better != compare.Neither {
		ref.better = s.live(p.right(8), style{derived, formatPercent}, shareBetter(values, r.better))
	}
	return ref
}

// standardError of the mean; of one year it is 0, as nothing is known of it.
func standardError(values span, se float64, years term) term {
	deviation := "STDEV"
	if len(values.values) < 2 {
		deviation = "STDEVP"
	}
	t := call(deviation, 0.0, values.text)
	return term{text: t.text + "/SQRT(" + years.text + ")", value: se}
}

// shareBetter is the share of years in which the compact store is better; the
// mean of two counts, with and without ties, lets a tie count half.
func shareBetter(values span, better compare.Better) term {
	beyond, atLeast := `"<0"`, `"<=0"`
	if better == compare.More {
		beyond, atLeast = `">0"`, `">=0"`
	}
	count := 0.0
	for _, v := range values.values {
		switch {
		case v == 0:
			count += 0.5
		case (v < 0) == (better == compare.Less):
			count++
		}
	}
	return term{
		text:  fmt.Sprintf("AVERAGE(COUNTIF(%s,%s),COUNTIF(%s,%s))/COUNT(%s)", values.text, beyond, values.text, atLeast, values.text),
		value: count / float64(len(values.values)),
	}
}
