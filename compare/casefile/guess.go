package casefile

import (
	"fmt"
	"strings"
)

// conversion turns a number that was given in another unit into the unit asked.
type conversion struct {
	unit          string // as asked
	from          string // as it seems to be given
	scale, offset float64
	least         float64 // no number below this can be meant
}

// conversions are the slips of unit that are usual enough to be guessed. They are
// tried in order.
var conversions = [...]conversion{
	{"°C", "degrees Fahrenheit", 1 / 1.8, -32 / 1.8, 0},
	{"°C", "kelvin", 1, -273.15, 0},
	{"W", "kilowatts", 1000, 0, 0},
	{"kW", "watts", 1e-3, 0, 0},
	{"W/K", "kilowatts per kelvin", 1000, 0, 0},
	{"l/min", "litres a second", 60, 0, 0},
	{"l/min", "litres an hour", 1. / 60, 0, 0},
	{"l/min", "cubic metres an hour", 1000. / 60, 0, 0},
	{"l", "cubic metres", 1000, 0, 0},
	{"mm", "metres", 1000, 0, 0},
	{"mm", "centimetres", 10, 0, 0},
	{"m", "millimetres", 1e-3, 0, 0},
	{"m²", "square centimetres", 1e-4, 0, 0},
	{"bar", "kilopascals", 1e-2, 0, 0},
	{"kPa", "pascals", 1e-3, 0, 0},
	{"min", "seconds", 1. / 60, 0, 0},
	{"s", "minutes", 60, 0, 0},
	{"%", "a share of 1", 100, 0, 0},
	{shareUnit, "percent", 1e-2, 0, 2},
	{"kJ/K", "joules", 1e-3, 0, 0},
	{"kg/kWh", "grams", 1e-3, 0, 0},
	{"W", "kWh in 24 hours", 1000. / 24, 0, 0},
}

// guess says in which unit a refused number seems to be, if that makes it an
// allowed one; else nothing.
func guess(x float64, k *Key) string {
	for _, c := range conversions {
		if c.unit != k.Unit {
			continue
		}
		if y := x*c.scale + c.offset; y >= k.Min && y <= k.Max && x >= c.least {
			return fmt.Sprintf("it looks like %s: %s would be %s", c.from, plain(x), strings.TrimSuffix(rounded(y)+" "+k.Unit, " "+shareUnit))
		}
	}
	return ""
}
