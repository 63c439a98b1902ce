package heatpump

import "slices"

// grid is a rectangular table of largest output and full-output COP, each
// interpolated bilinearly; outside it the edge value holds.
type grid struct {
	outdoorC, waterC []float64 // ascending
	maxW, fullCOP    []float64 // row-major: outdoor row, leaving column
}

// cell is a place on an axis: share of the way from node to node+1.
type cell struct {
	node  int
	share float64
}

// locate finds x on an ascending axis of two nodes or more; outside, the
// nearest end. Axes are short, so a walk beats a bisection.
func locate(axis []float64, x float64) cell {
	last := len(axis) - 2
	node := 0
	for node < last && x >= axis[node+1] {
		node++
	}
	share := (x - axis[node]) / (axis[node+1] - axis[node])
	return cell{node, min(max(share, 0), 1)}
}

// newGrid sorts complete rows into a grid.
func newGrid(rows []Row) *grid {
	outdoorC, waterC := axes(rows)
	n := len(outdoorC) * len(waterC)
	g := &grid{outdoorC, waterC, make([]float64, n), make([]float64, n)}
	for _, r := range rows {
		i, _ := slices.BinarySearch(outdoorC, r.OutdoorC)
		j, _ := slices.BinarySearch(waterC, r.LeavingC)
		g.maxW[i*len(waterC)+j] = 1000 * r.MaxOutputKW
		g.fullCOP[i*len(waterC)+j] = r.FullCOP
	}
	return g
}

// axes gives the distinct outdoor and leaving temperatures, ascending.
func axes(rows []Row) (outdoorC, waterC []float64) {
	for _, r := range rows {
		outdoorC = append(outdoorC, r.OutdoorC)
		waterC = append(waterC, r.LeavingC)
	}
	slices.Sort(outdoorC)
	slices.Sort(waterC)
	return slices.Compact(outdoorC), slices.Compact(waterC)
}

func (g *grid) span() Range {
	return Range{
		OutdoorMinC: g.outdoorC[0], OutdoorMaxC: g.outdoorC[len(g.outdoorC)-1],
		LeavingMinC: g.waterC[0], LeavingMaxC: g.waterC[len(g.waterC)-1],
	}
}

// extended adds nodes beyond the edges, a margin away, by carrying on the
// outermost cells; so the margin costs nothing when a point is looked up.
func (g *grid) extended(outdoorMarginK, leavingMarginK float64) *grid {
	outdoorC, waterC := widened(g.outdoorC, outdoorMarginK), widened(g.waterC, leavingMarginK)
	e := &grid{outdoorC: outdoorC, waterC: waterC}
	for _, a := range outdoorC {
		for _, w := range waterC {
			i, j := carriedOn(g.outdoorC, a), carriedOn(g.waterC, w)
			e.maxW = append(e.maxW, g.between(g.maxW, i, j))
			e.fullCOP = append(e.fullCOP, g.between(g.fullCOP, i, j))
		}
	}
	return e
}

func widened(axis []float64, marginK float64) []float64 {
	if marginK == 0 {
		return axis
	}
	ends := []float64{axis[0] - marginK, axis[len(axis)-1] + marginK}
	return slices.Concat(ends[:1], axis, ends[1:])
}

// carriedOn is locate without the ends: shares below 0 and above 1 extrapolate.
func carriedOn(axis []float64, x float64) cell {
	c := locate(axis, x)
	c.share = (x - axis[c.node]) / (axis[c.node+1] - axis[c.node])
	return c
}

// at interpolates at a leaving temperature between two outdoor rows.
func (g *grid) at(values []float64, row cell, leavingC float64) float64 {
	return g.between(values, row, locate(g.waterC, leavingC))
}

func (g *grid) between(values []float64, row, column cell) float64 {
	left := g.atNode(values, row, column.node)
	right := g.atNode(values, row, column.node+1)
	return left + column.share*(right-left)
}

// atNode interpolates between outdoor rows at one leaving temperature of the grid.
func (g *grid) atNode(values []float64, row cell, column int) float64 {
	width := len(g.waterC)
	at := row.node*width + column
	return values[at] + row.share*(values[at+width]-values[at])
}

// leavingC solves capacityRate * (leaving - return) = share * maxOutput(leaving).
// Output is linear between columns, so the walk goes up to the first column
// whose water the output cannot reach and solves that stretch exactly; it
// holds for any table, also one whose output rises with leaving water.
func (g *grid) leavingC(row cell, share, returnC, capacityRateWPerK float64) float64 {
	first := g.waterC[0]
	leftW := share * g.atNode(g.maxW, row, 0)
	if belowC := returnC + leftW/capacityRateWPerK; belowC <= first {
		return belowC
	}
	for j := 1; j < len(g.waterC); j++ {
		fromC, toC := g.waterC[j-1], g.waterC[j]
		rightW := share * g.atNode(g.maxW, row, j)
		if capacityRateWPerK*(toC-returnC) >= rightW {
			slopeWPerK := (rightW - leftW) / (toC - fromC)
			return fromC + (leftW-capacityRateWPerK*(fromC-returnC))/(capacityRateWPerK-slopeWPerK)
		}
		leftW = rightW
	}
	return returnC + leftW/capacityRateWPerK
}
