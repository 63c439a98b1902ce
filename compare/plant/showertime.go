package plant

// The classes of temperature by which the time of showers is booked.
const (
	coldestClassC = 15 // foot of the first
	classesPerK   = 10
	showerClasses = 35 * classesPerK
)

// ShowerTime is how long showers ran at what temperature of the water, in seconds by
// class, once the cooled water of the dead leg was out. The first class also holds
// what is colder, the last what is hotter.
type ShowerTime [showerClasses]float64

// ShowerClassC is the temperature at the foot of a class, which is the head of the
// class before.
func ShowerClassC(class int) float64 { return coldestClassC + float64(class)/classesPerK }

// add books a stretch in which the water goes straight from one temperature to
// another.
func (t *ShowerTime) add(seconds, fromC, toC float64) {
	low, high := min(fromC, toC), max(fromC, toC)
	first, last := showerClass(low), showerClass(high)
	if first == last {
		t[first] += seconds
		return
	}
	perK, from := seconds/(high-low), low
	for i := first; i < last; i++ {
		to := ShowerClassC(i + 1)
		t[i] += perK * max(to-from, 0)
		from = to
	}
	t[last] += perK * max(high-from, 0)
}

// showerClass is the class of a temperature. One that misses the foot of a class by
// rounding belongs to it: most water is mixed to a round temperature.
func showerClass(c float64) int {
	const crumbK = 1e-6
	return min(max(int((c-coldestClassC+crumbK)*classesPerK), 0), showerClasses-1)
}
