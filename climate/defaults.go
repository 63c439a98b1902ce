package climate

// Default weather of a temperate maritime place.
//
// The monthly values are statistics of five public hourly weather files of
// British sites (London, Aberdeen, Oban, Edinburgh, Inverness; one year each),
// smoothed over the months with one yearly harmonic (standard deviation) or two
// (range, humidity). A continental place has wider ranges and larger deviations.
const (
	// defaultPersistence: the five files give 0.59-0.72 for the lag-1 correlation
	// of the daily mean; joined typical months and single years bias that down,
	// so 0.70 is a judgement. Sensible range 0.6-0.8.
	defaultPersistence = 0.70

	// maxPersistence keeps weather from outlasting a month, beyond which holding
	// the monthly mean has no meaning. Judgement.
	maxPersistence = 0.95

	// defaultMainsSwingK, K: the UK Home Energy Model's cold water feed, in the
	// government's published code.
	defaultMainsSwingK = 1.5
)

// Defaults gives the parts of Params that a person need not state: the day to
// day spread, daily range and humidity of a temperate maritime place, and the
// daily swing of mains water. OutdoorC and MainsC are left zero.
func Defaults() Params {
	return Params{
		SDDailyMeanK: Monthly{2.9, 2.8, 2.6, 2.4, 2.3, 2.2, 2.2, 2.3, 2.5, 2.7, 2.8, 2.9}, // K
		DailyRangeK:  Monthly{4.6, 5.6, 6.8, 7.7, 7.9, 7.9, 8.0, 8.2, 7.9, 7.0, 5.6, 4.6}, // K
		RHPercent:    Monthly{83, 80, 78, 76, 76, 76, 78, 79, 81, 82, 83, 84},             // percent
		Persistence:  defaultPersistence,
		MainsSwingK:  defaultMainsSwingK,
	}
}
