package workbook

import (
	"fmt"

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
type spreadRef struct{ mean, se, low, high, p05, p95 term }

// riskRow is one line of the tables.
type riskRow struct {
	key, words, unit, format string
	better                   compare.Better
	foreign                  bool // the words hold a text that somebody else wrote
}

// Columns of the tables: words, unit, and from meanCol the spread.
const (
	meanCol  = 3
	riskCols = 9
)

func (b *book) writeRisk() {
	s := b.sheet(riskName)
	b.risk = &riskRefs{rows: map[string][3]spreadRef{}}
	s.head("Risk: spread over the simulated years", "Spread of "+b.doc.Case.WhatVaries()+", not all that is uncertain. Intervals of the mean shrink as years are added; percentiles of years do not.")
	s.riskHead()
	rows := append(b.figureRows(), b.tariffRows()...)
	at := place{1, 6}
	for _, side := range []int{differenceBlock, 0, 1} {
		at = s.riskBlock(side, capital(blockName(side)), rows, at)
	}
	for side := range sideOrder() {
		at = s.riskBlock(side, "Failing showers by month: "+blockName(side), failingRows(), at)
	}
	for _, write := range b.months.later {
		write()
	}
	s.widths(48, 9, 12, 12, 12, 12, 12, 12, 13)
	s.lay(page{portrait: true, freeze: place{meanCol, 5}, titleRows: 2, last: place{riskCols, at.row - 2}})
}

// riskHead writes what all spreads share.
func (s *sheet) riskHead() {
	r, in := s.book.risk, s.book.inputs
	years := s.book.everyYear("electricity_kwh").spans[0]
	s.text(place{1, 3}, label, "Number of years")
	r.years = s.named("Years_simulated", place{meanCol, 3}, s.live(place{meanCol, 3}, style{derived, formatWhole}, call("COUNT", float64(len(years.values)), years.text)))
	s.text(place{1, 4}, label, "Student's quantile for the interval of a mean")
	r.student = s.named("Student_quantile", place{meanCol, 4}, s.live(place{meanCol, 4}, style{derived, "0.000"}, student(in.level, r.years)))
}

// student is the two-sided quantile of Student's distribution; 0 for one year,
// which has no interval.
func student(level, years term) term {
	return studentTails(minus(one(), level), (1+level.num())/2, years)
}

// studentTails is the quantile that leaves a share in both tails together.
func studentTails(outside term, below float64, years term) term {
	quantile, n := 0.0, years.num()
	if n > 1 {
		quantile = distuv.StudentsT{Sigma: 1, Nu: n - 1}.Quantile(below)
	}
	t := call("TINV", quantile, outside.text, minus(years, one()).text)
	return choose(compared(years, ">", one(), n > 1), t, zero())
}

func (b *book) figureRows() []riskRow {
	var rows []riskRow
	for _, f := range compare.Figures() {
		if f.Varies {
			rows = append(rows, riskRow{key: f.Name, words: labelOf(f), unit: b.unitOf(f), format: decimals(max(f.Decimals, 1)), better: f.Better})
		}
	}
	return rows
}

func (b *book) tariffRows() []riskRow {
	var rows []riskRow
	for i, t := range b.comparison().Tariffs {
		rows = append(rows, riskRow{key: costKey(i), words: fmt.Sprintf("Cost on tariff %d: %s", i+1, t.Name), foreign: true,
			unit: b.comparison().Currency, format: formatTwo, better: compare.Less})
	}
	return rows
}

func failingRows() []riskRow {
	var rows []riskRow
	for m := range calendar.MonthsInAYear {
		rows = append(rows, riskRow{key: failKey(m), words: calendar.ShortMonth(m), format: formatTwo, better: compare.Less})
	}
	return rows
}

// riskBlock writes the spreads of an option, or of the difference.
func (s *sheet) riskBlock(side int, name string, rows []riskRow, at place) place {
	s.text(at, heading, name)
	heads := []string{"Figure", "Unit", "Mean", "Standard error of the mean", "90 % interval of the mean, low", "90 % interval of the mean, high", "5th percentile of years", "95th percentile of years"}
	if side == differenceBlock {
		heads = append(heads, "Share of years: compact store better")
	}
	s.tops(at.down(1), 44, heads...)
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
	s.textAs(p, r.foreign, r.words)
	s.text(p.right(1), unit, r.unit)
	values := s.book.everyYear(r.key).spans[side]
	v, low := compare.SpreadOf(values.values), s.book.inputs.lowPercentile
	st := style{derived, r.format}
	if side == differenceBlock {
		st.format = signed(r.format)
	}
	var ref spreadRef
	p = place{meanCol, p.row}
	ref.mean = s.live(p, st, call("AVERAGE", v.Mean, values.text))
	ref.se = s.live(p.right(1), style{derived, r.format}, standardError(values, v.SE, s.book.risk.years))
	half := times(ref.se, s.book.risk.student)
	ref.low = s.live(p.right(2), st, minus(ref.mean, half))
	ref.high = s.live(p.right(3), st, plus(ref.mean, half))
	ref.p05 = s.live(p.right(4), st, call("PERCENTILE", v.P05, values.text, low.text))
	ref.p95 = s.live(p.right(5), st, call("PERCENTILE", v.P95, values.text, minus(one(), low).text))
	if side == differenceBlock && r.better != compare.Neither {
		s.live(p.right(6), style{derived, formatPercent}, shareBetter(values, r.better))
	}
	return ref
}

// standardError of the mean; of one year it is 0, as nothing is known of it.
func standardError(values span, se float64, years term) term {
	deviation := "STDEV"
	if len(values.values) < 2 {
		deviation = "STDEVP"
	}
	return term{text: deviation + "(" + values.text + ")/SQRT(" + years.text + ")", value: se}
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
	text := fmt.Sprintf("AVERAGE(COUNTIF(%[1]s,%[2]s),COUNTIF(%[1]s,%[3]s))/COUNT(%[1]s)", values.text, beyond, atLeast)
	return term{text: text, value: count / float64(len(values.values))}
}
