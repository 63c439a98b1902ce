package tariffs

import (
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"

	"dhwcompare/compare/calendar"
)

// hoursADay is the width of a schedule matrix.
const hoursADay = 24

// matrixFile holds the keys that are taken over from a file in the layout of the
// open utility rate database: rates by period, and for weekdays and weekends a
// matrix of 12 months by 24 hours with the number of the period.
type matrixFile struct {
	Name       string         `json:"name"`
	Structure  [][]matrixTier `json:"energyratestructure"`
	Weekday    [][]int        `json:"energyweekdayschedule"`
	Weekend    [][]int        `json:"energyweekendschedule"`
	Fixed      float64        `json:"fixedchargefirstmeter"`
	FixedUnits string         `json:"fixedchargeunits"`

	Items json.RawMessage `json:"items"`
	// Charges that a bill of this package does not know.
	Demand     json.RawMessage `json:"demandratestructure"`
	FlatDemand json.RawMessage `json:"flatdemandstructure"`
	Minimum    json.RawMessage `json:"mincharge"`
	FuelMonths json.RawMessage `json:"fueladjustmentsmonthly"`
}

type matrixTier struct {
	Rate float64 `json:"rate"`
	Adj  float64 `json:"adj"`
	Unit string  `json:"unit"`
}

// ReadMatrix imports a tariff from JSON in the layout of the open utility rate
// database: energyratestructure (price = rate + adj, one tier per period),
// energyweekdayschedule, energyweekendschedule and fixedchargefirstmeter with
// fixedchargeunits. The second result says what the layout cannot hold or what
// was left out; the prices are taken as tax included and in the currency of the
// case. file names the input in messages; an error lists all problems.
func ReadMatrix(r io.Reader, file string) (*Tariff, []string, error) {
	data, err := io.ReadAll(r)
	if err != nil {
		return nil, nil, fmt.Errorf("%s: reading stopped: %w", file, err)
	}
	var m matrixFile
	if err := json.Unmarshal(data, &m); err != nil {
		return nil, nil, fmt.Errorf("%s:%d: not the expected JSON: %s: give one tariff as one object", file, lineOf(data, err), jsonFault(err))
	}
	p := &matrixProblems{file: file}
	p.check(&m)
	if err := p.err(); err != nil {
		return nil, nil, err
	}
	if strings.TrimSpace(m.Name) == "" {
		m.Name = file
	}
	return m.tariff(), m.warnings(file), nil
}

// jsonFault words a JSON error without the names of types in this program.
func jsonFault(err error) string {
	var kind *json.UnmarshalTypeError
	switch {
	case errors.As(err, &kind) && kind.Field != "":
		return fmt.Sprintf("%s cannot be of the kind %s", kind.Field, kind.Value)
	case errors.As(err, &kind):
		return fmt.Sprintf("the file cannot be of the kind %s", kind.Value)
	default:
		return err.Error()
	}
}

// lineOf finds the line of a JSON error; 1 if the error has no place.
func lineOf(data []byte, err error) int {
	offset := int64(0)
	var syntax *json.SyntaxError
	var kind *json.UnmarshalTypeError
	switch {
	case errors.As(err, &syntax):
		offset = syntax.Offset
	case errors.As(err, &kind):
		offset = kind.Offset
	}
	offset = min(max(offset, 0), int64(len(data)))
	return 1 + strings.Count(string(data[:offset]), "\n")
}

func (m *matrixFile) tariff() *Tariff {
	t := &Tariff{Name: m.Name, PricesIncludeTax: true, StandingPerDay: m.Fixed * perDay(m.FixedUnits)}
	t.Bands = slices.Concat(m.bands(m.Weekday, Weekdays), m.bands(m.Weekend, Weekends))
	return t
}

// perDay turns a fixed charge into one per day of a 365-day year; zero for an
// unknown unit.
func perDay(unit string) float64 {
	switch strings.ToLower(strings.TrimPrefix(strings.TrimSpace(unit), "$/")) {
	case "day":
		return 1
	case "month":
		return float64(calendar.MonthsInAYear) / calendar.Days
	case "year":
		return 1.0 / calendar.Days
	default:
		return 0
	}
}

func (m *matrixFile) warnings(file string) []string {
	w := []string{
		file + ": the layout is hourly and knows no clock: band edges fall on whole hours of the local clock",
		file + ": the layout assumes US dollars; the figures are taken as the currency of the case, tax included unless the case says otherwise",
	}
	for _, c := range []struct {
		key string
		raw json.RawMessage
	}{
		{"demandratestructure", m.Demand},
		{"flatdemandstructure", m.FlatDemand},
		{"mincharge", m.Minimum},
		{"fueladjustmentsmonthly", m.FuelMonths},
	} {
		if charges(c.raw) {
			w = append(w, fmt.Sprintf("%s: %s is left out: only energy rates and the fixed charge are taken over", file, c.key))
		}
	}
	return w
}

// charges reports whether a key holds more than nothing.
func charges(raw json.RawMessage) bool {
	switch strings.TrimSpace(string(raw)) {
	case "", "null", "0", "0.0", "[]":
		return false
	default:
		return true
	}
}
