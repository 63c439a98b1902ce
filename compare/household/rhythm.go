package household

import (
	"fmt"
	"strings"
)

// Rhythm says when in the day people shower and bathe. Taps keep their own hours
// whatever the rhythm.
type Rhythm uint8

// The rhythms of a home.
const (
	// MeasuredRhythm follows the measured hours of British homes, weekdays and
	// weekends apart.
	MeasuredRhythm Rhythm = iota
	// MorningRhythm takes four showers and baths in five before noon, each half of
	// the day keeping its measured shape.
	MorningRhythm
	// EveningRhythm takes four in five after noon, likewise.
	EveningRhythm
	// EvenRhythm spreads them evenly from 06:00 to 23:00.
	EvenRhythm
)

var rhythmNames = [...]string{"measured", "morning", "evening", "even"}

// String gives the name by which a case states the rhythm.
func (r Rhythm) String() string {
	if int(r) < len(rhythmNames) {
		return rhythmNames[r]
	}
	return fmt.Sprintf("rhythm(%d)", uint8(r))
}

// ParseRhythm reads the name of a rhythm.
func ParseRhythm(name string) (Rhythm, error) {
	for i, known := range rhythmNames {
		if name == known {
			return Rhythm(i), nil
		}
	}
	return 0, fmt.Errorf("rhythm %q is not known: use one of %s", name, strings.Join(rhythmNames[:], ", "))
}

// shape bends measured hours to the rhythm.
func (r Rhythm) shape(measured hourly) hourly {
	switch r {
	case MorningRhythm:
		return withMorning(measured, morningShare)
	case EveningRhythm:
		return withMorning(measured, 1-morningShare)
	case EvenRhythm:
		return even()
	default:
		return measured
	}
}

// withMorning scales the hours before and after noon so that the stated share
// falls before noon.
func withMorning(h hourly, share float64) hourly {
	const noon = hoursADay / 2
	var before, after float64
	for i, weight := range h {
		if i < noon {
			before += weight
		} else {
			after += weight
		}
	}
	for i := range h {
		if i < noon {
			h[i] *= share / before
		} else {
			h[i] *= (1 - share) / after
		}
	}
	return h
}

func even() hourly {
	var h hourly
	for i := evenFirstHour; i <= evenLastHour; i++ {
		h[i] = 1
	}
	return h
}
