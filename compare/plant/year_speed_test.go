package plant

import (
	"context"
	"math"
	"runtime"
	"testing"
	"time"

	"dhwcompare/compare/calendar"
)

// BenchmarkYearBesideC is the year that testdata/speed/year.c lives through, with the
// processor's time of the quickest of all repeats and how far the year is from the
// fine reference: other work on the machine hardly touches these.
func BenchmarkYearBesideC(b *testing.B) {
	runtime.LockOSThread()
	defer runtime.UnlockOSThread()
	in, least := twoPeople(), time.Duration(math.MaxInt64)
	p, l := New(compactParams(b)), NewLedger()
	for b.Loop() {
		l.Reset()
		began := processorTime()
		if err := p.Run(context.Background(), 0, calendar.YearS, in, Override{}, Recorder{Ledger: l}); err != nil {
			b.Fatal(err)
		}
		least = min(least, processorTime()-began)
	}
	l.Reset() // the figures are those of a fresh plant, however often it was timed
	steps := 0
	counting := Recorder{Ledger: l, Trace: func(*Sample) { steps++ }}
	if err := New(compactParams(b)).Run(context.Background(), 0, calendar.YearS, in, Override{}, counting); err != nil {
		b.Fatal(err)
	}
	var own, fine figures
	stored := readReference(b)
	for i := range l.Months {
		own.add(figuresOf(&l.Months[i]))
		fine.add(stored[place{"compact", 0, i + 1}])
	}
	b.ReportMetric(float64(compactStore().Layers), "layers")
	b.ReportMetric(float64(steps), "steps")
	b.ReportMetric(float64(least.Nanoseconds()), "least-ns")
	b.ReportMetric(1000*own.electricityKWh, "Wh")
	b.ReportMetric(float64(own.failing), "failing")
	b.ReportMetric(1000*fine.electricityKWh, "fine-Wh")
	b.ReportMetric(float64(fine.failing), "fine-failing")
}
