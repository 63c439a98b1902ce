package tariffs

import (
	"fmt"

	"dhwcompare/compare/calendar"
)

// ownSurplus is electricity of one's own that would otherwise be exported.
type ownSurplus struct {
	label        string
	kWh          []float64 // by half hour
	exportPerKWh float64
}

// serve books what own surplus covers of a half hour and gives it back, kWh.
func (o *ownSurplus) serve(line *Line, i int, kWh float64) float64 {
	used := max(0, min(kWh, o.kWh[i]))
	line.KWh += used
	line.Cost += used * o.exportPerKWh
	return used
}

// WithSurplus gives the same rates with a last band of own surplus electricity
// (solar, as a rule), kWh available in each half hour. What a profile takes from
// it costs the export payment that is lost, money per kWh (zero where nothing is
// paid); the rest is bought at the tariff. The export payment carries no tax.
//
// Surplus is used first, whatever the price of bought electricity: behind one
// meter nothing else is possible. It is taken evenly within a half hour, so short
// peaks of power above the surplus, which buy some electricity even in a sunny
// half hour, are not seen and the saving is a little high.
func (r *Rates) WithSurplus(label string, halfHourKWh []float64, exportPerKWh float64) (*Rates, error) {
	if len(halfHourKWh) != calendar.HalfHours {
		return nil, fmt.Errorf("surplus %q has %d values: must have %d, one for each half hour of 365 days",
			label, len(halfHourKWh), calendar.HalfHours)
	}
	if !finite(exportPerKWh) {
		return nil, fmt.Errorf("surplus %q: export rate %g: must be a finite number", label, exportPerKWh)
	}
	for i, v := range halfHourKWh {
		if !finite(v) || v < 0 {
			return nil, fmt.Errorf("surplus %q, half hour %d: %g kWh: must be zero or more", label, i, v)
		}
	}
	with := *r
	with.own = &ownSurplus{label: label, kWh: append([]float64(nil), halfHourKWh...), exportPerKWh: exportPerKWh}
	return &with, nil
}
