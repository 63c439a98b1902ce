// Package coil gives the heat transfer of tube coils that stand in a vessel of
// water: a coil that heats mains water on its way through a store, and the
// indirect coil that heats a cylinder.
//
// The full chain (inside film, wall, fouling, outside free convection) is
// marched along the tube by [UA]. [Fit] condenses it once into a [FastLaw] that
// a simulation can ask at every step. Heat is counted with the constant specific
// heat of package water. The package knows nothing of vessels: it is told the
// temperatures outside the tube.
package coil
