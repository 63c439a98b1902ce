package coil

// The flows at which a table holds a law: every quarter litre a minute. Between
// them a straight line is within 0.1 %.
const (
	tableSteps      = int(lawHighLPerMin-lawLowLPerMin) * tablePerLPerMin
	tablePerLPerMin = 4
)

// Table is a [FastLaw] laid out for the inner loop of a simulation: the same
// values without logarithm or exponential. It is made by [FastLaw.Table].
type Table struct {
	at         [tableSteps + 1]tableEntry
	referenceC float64
}

type tableEntry struct{ uaWPerK, slopePerK float64 }

// Table lays the law out over its range of flows.
func (l FastLaw) Table() *Table {
	t := &Table{referenceC: l.ReferenceStoreC}
	for i := range t.at {
		x := logFlow(lawLowLPerMin + float64(i)/tablePerLPerMin)
		t.at[i] = tableEntry{uaWPerK: l.atReference(x), slopePerK: l.slopePerK(x)}
	}
	return t
}

// UA is [FastLaw.UA], to 0.1 %.
func (t *Table) UA(flowLPerMin, storeC float64) float64 {
	place := (min(max(flowLPerMin, lawLowLPerMin), lawHighLPerMin) - lawLowLPerMin) * tablePerLPerMin
	i := max(0, min(int(place), tableSteps-1)) // what is not a number stays one, without a panic
	low, high, share := &t.at[i], &t.at[i+1], place-float64(i)
	ua := low.uaWPerK + share*(high.uaWPerK-low.uaWPerK)
	slope := low.slopePerK + share*(high.slopePerK-low.slopePerK)
	return ua * max(1+slope*(storeC-t.referenceC), leastWarmth)
}
