// Package vessel holds the two stratified bodies of water that the comparison
// sets against each other: the compact store (heating water, charged directly,
// mains water heated in an immersed coil) and the cylinder (hot water drawn from
// the top, heated by an indirect coil).
//
// Both divide their height into equal layers, counted from the bottom. Layers
// are numerics and mixing is physics: water moves along the height without
// numerical spreading (see advance), and what does mix is stated by an effective
// conductivity and by the share of the volume that an inlet jet stirs.
//
// Heat is counted from 0 deg C with a constant specific heat; mass is constant.
package vessel

// Vessel is a stratified body of water between a heat pump and the taps.
type Vessel interface {
	// StepLimitS gives the longest step, in seconds, that the vessel can take at
	// these flows (kg/s) and move by whole layers.
	StepLimitS(drawKgPerS, primaryKgPerS float64) float64
	// OutletC gives the temperature at which drawn water leaves now.
	OutletC() float64
	// ReturnLine gives the mean primary return temperature of a step as slope*flow +
	// intercept, from the layers as they are now; a step of no length gives the
	// return of this moment.
	ReturnLine(primaryKgPerS, dtS float64) (slope, interceptC float64)
	// Step marches the vessel.
	Step(f *Flows) Result
	// AtC gives the temperature at a height, as a share of the vessel's height.
	AtC(height float64) float64
	// NearC is the mean of the layer at that height: quicker, and within a layer of it.
	NearC(height float64) float64
	// AboveJPerK gives the heat capacity of the layer at a height and of all above it,
	// J/K: what an element there warms.
	AboveJPerK(height float64) float64
	// HeatJ gives the heat held, in joules above 0 deg C.
	HeatJ() float64
	// Fill sets the whole vessel to one temperature.
	Fill(tempC float64)
	// Snapshot copies out all that the vessel remembers, Restore brings it back.
	Snapshot() []float64
	Restore(temps []float64)
}

// Flows is what crosses a vessel's boundary during one step.
type Flows struct {
	DtS           float64 // length of the step, s, above zero
	DrawKgPerS    float64 // mains water in, hot water out
	MainsC        float64 // temperature of that mains water
	PrimaryKgPerS float64 // heating water from the heat pump
	FlowInC       float64 // mean temperature at which it arrives over the step
	RoomC         float64 // air around the vessel
	ImmersionW    float64 // electric heat into the layer at ImmersionHeight
	// ImmersionHeight is a share of the vessel's height.
	ImmersionHeight float64
}

// Result is what a step gave.
type Result struct {
	DrawOutC   float64 // mean temperature of the drawn water
	PrimaryInJ float64 // heat that the primary water left behind
	LossJ      float64 // heat lost to the room
}

var (
	_ Vessel = (*Compact)(nil)
	_ Vessel = (*Cylinder)(nil)
)
