// Package household turns people and their habits into a year of hot-water
// draw-offs, or repeats a published load profile through the year.
//
// A draw-off says what the people want: a flow, a temperature and when they have
// had enough. It never says how hot the water in the vessel is; that is for the
// plant to find out, and so both options meet exactly the same wishes.
package household

// Kind says what a draw-off is for.
type Kind uint8

// The kinds of draw-off.
const (
	Shower Kind = iota
	Bath
	Tap
)

// String names the kind as it appears in results.
func (k Kind) String() string {
	switch k {
	case Shower:
		return "shower"
	case Bath:
		return "bath"
	default:
		return "tap"
	}
}

// EndBy says what ends a draw-off.
type EndBy uint8

// The ways in which a draw-off ends.
const (
	BySeconds EndBy = iota // after a time at the outlet, in seconds
	ByLitres               // when this many litres have come out, mixed
	ByJoules               // when this much heat above mains has come out
)

// End is the condition that ends a draw-off, counted after the cooled water of
// the dead leg has been flushed.
type End struct {
	By     EndBy
	Amount float64 // seconds, litres or joules, as By says
}

// Draw is one draw-off as the people in the home want it. The hot share of its
// flow is never fixed beforehand: it follows from the water that the vessel has.
type Draw struct {
	StartS      float64 // seconds of standard time since the start of the year
	Outlet      int     // index of the outlet, see Params.Outlets
	Kind        Kind
	Person      int     // who draws, counted from 0; guests come after the residents
	QueuePos    int     // 0 for a shower on its own, 1 for the next behind it, and so on
	FlowLPerMin float64 // mixed flow at the outlet that is wanted
	WantC       float64 // mixed temperature that is wanted
	MinC        float64 // lowest mixed temperature that is acceptable
	End         End
}
