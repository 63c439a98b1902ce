package casefile

import "strings"

// survey is what a visit to the home has to find out for a key: how to measure it
// there, and the result that it moves most.
type survey struct {
	key   string // dotted path
	how   string
	moves result
}

// result is what a figure of the survey moves, in words that people know.
type result string

// The results. A test holds each claim of surveys against simulated years of the
// demo.
const (
	movesShowers result = "showers that run cold"
	movesBaths   result = "baths that are not warm enough"
	movesWaiting result = "waiting for hot water at the outlets"
	movesFilling result = "the time that a bath takes to fill"
	movesCost    result = "the cost a year"
	movesFit     result = "whether an option fits"
)

// Litres in a metre of pipe, in words: bores of copper tube to EN 1057.
const litresPerMetre = "0.06 l a metre in 10 mm copper tube, 0.15 in 15 mm, 0.32 in 22 mm, 0.54 in 28 mm"

// surveys lists what a visit has to find out, in the order of the file. How to
// measure is common practice, no source.
func surveys() []survey {
	return []survey{
		{"household.showers_per_day", "Ask everybody, guests apart. A shower with an electric heater of its own draws no water from the store, so leave its showers out.", movesCost},
		{"household.shower_minutes", "Time a few showers from the first warm water to the last, those of the person who takes longest among them.", movesShowers},
		{"household.shower_flow_l_per_min", "Bucket test. Hold a bucket under the running shower, set as people set it, for a minute, or time how long ten litres take; ten litres in 100 seconds are 6 l/min.", movesShowers},
		{"household.bath_l", "Fill the bath as usual and time it, and time ten litres from the same taps into a bucket. Or measure the water; length x width x depth in decimetres are litres, less about 60 for whoever lies in it.", movesBaths},
		{"household.away", "Ask for the weeks in which nobody is at home. An item reads - {first_date: 3 Aug, last_date: 16 Aug}, on a line of its own below the key.", movesCost},
		{"household.guests", "Ask who comes, when and for how long; a full house in winter is the hardest week. An item reads - {first_date: 24 Dec, last_date: 2 Jan, people: 2}.", movesCost},
		{"mains.largest_flow_l_per_min", "Open the cold kitchen tap or an outside tap fully, with no other tap running, and time a bucket; ten litres in 40 seconds are 15 l/min.", movesFilling},
		{"mains.dynamic_pressure_bar", "Screw a pressure gauge to an outside tap or a washing machine's valve, open the cold kitchen tap fully and read it while the water runs, at the busiest hour of the street. Above about 1 bar it makes no difference.", movesFilling},
		{"dwelling.open_water_l", "Count the radiators or floor circuits that no thermostatic valve and no zone valve can shut; a radiator holds about 5 l for each kW of its rated output, a metre of 16 mm floor pipe 0.11 l. With too little, defrosts need a volumiser.", movesCost},
		{"pipes.loop_length_m", "Measure along the way that the pipes will take between the outdoor unit and the vessel, walls and floors included, and count flow and return.", movesCost},
		{"pipes.loop_bore_mm", "Read the outer size off the pipe or measure it with a caliper, and take twice the wall off; 20.2 is 22 mm copper tube, 26.2 is 28 mm.", movesCost},
		{"pipes.shower_leg_l", "Measure the pipe from the vessel to the shower and find its size, then multiply; " + litresPerMetre + ". Or run the hot side into a jug until it comes warm.", movesWaiting},
		{"pipes.bath_leg_l", "Measured in the same way.", movesWaiting},
		{"pipes.kitchen_leg_l", "Measured in the same way; the kitchen is drawn from most often.", movesWaiting},
		{"pipes.basin_leg_l", "Measured in the same way.", movesWaiting},
		{"compact_store.fouling_m2k_per_w", "Look the hardness of the water up with the water company, or dip a test strip. It feeds this key and cylinder.fouling_m2k_per_w, 0.0004 in hard water (from about 200 mg/l of calcium carbonate), and money.compact_store.descaling_per_year, 0 in soft.", movesCost},
		{"room.width_mm", "Measure at the narrowest place, skirting, pipes and door frame off.", movesFit},
		{"room.depth_mm", "From the back wall to the inside of the door, at the shallowest place.", movesFit},
		{"room.height_mm", "From the floor to the lowest shelf, pipe or slope that stays.", movesFit},
		{"room.door_width_mm", "The clear opening with the door open wide, at the narrowest door on the way in from outside.", movesFit},
		{"room.door_height_mm", "The clear opening of the lowest door on the way in.", movesFit},
	}
}

// surveyOf gives what a visit has to find out for a key.
func surveyOf(path string) (survey, bool) {
	for _, s := range surveys() {
		if s.key == path {
			return s, true
		}
	}
	return survey{}, false
}

// survey writes how to find out the value of the key that comes next.
func (w *writer) survey(s *survey, indent string) {
	text := "How to find out: " + s.how + " It moves " + string(s.moves) + " most."
	for _, l := range wrapped(text, pageWidth-len(indent)-len("# ")) {
		w.line(indent + "# " + l)
	}
}

// wrapped breaks a text into lines of at most so many bytes.
func wrapped(text string, width int) []string {
	var lines []string
	line := ""
	for _, word := range strings.Fields(text) {
		if line != "" && len(line)+1+len(word) > width {
			lines, line = append(lines, line), ""
		}
		line = strings.TrimPrefix(line+" "+word, " ")
	}
	return append(lines, line)
}
