// Package tracefile writes the first simulated year of both options down step by
// step, as CSV, for whoever wants to see how a figure came about.
package tracefile

import (
	"context"
	"io"

	"dhwcompare/compare"
	"dhwcompare/compare/household"
	"dhwcompare/compare/plant"
)

// Header is the first line of a trace. Times are standard time. A row of the kind
// "minute" ends at its time: temperatures and heat-pump state are those of that
// moment, powers are means of the minute. A row of the kind "draw" stands for
// one step of one draw-off, which ends at its time; its powers are means of the
// step. The first four powers are for hot water.
const Header = "option,row,time_s,date,clock,outdoor_c,mains_c,draw,outlet,waiting,flow_l_per_min,wanted_c,delivered_c," +
	"bottom_c,middle_c,top_c,heat_pump,heat_w,compressor_w,pump_w,immersion_w,house_heat_w,house_compressor_w"

// Write lives the case's first year through both options, one after the other,
// and writes each minute and each step of each draw-off as it comes.
func Write(ctx context.Context, c *compare.Case, w io.Writer) error {
	world, err := c.World(0)
	if err != nil {
		return err
	}
	if _, err := io.WriteString(w, Header+"\n"); err != nil {
		return err
	}
	outlets := household.Outlets(c.Household.Bathrooms)
	for _, side := range []compare.Side{compare.SideCompact, compare.SideCylinder} {
		p, err := c.Plant(side)
		if err != nil {
			return err
		}
		if err := follow(ctx, p, world, newTracer(w, side.String(), outlets)); err != nil {
			return err
		}
	}
	return nil
}

// follow marches a plant through the year and stops it when a row cannot be
// written.
func follow(ctx context.Context, p *plant.Plant, world compare.World, t *tracer) error {
	ctx, cancel := context.WithCancelCause(ctx)
	defer cancel(nil)
	t.failed = cancel
	if err := compare.Live(ctx, p, world, plant.Recorder{Ledger: plant.NewLedger(), Trace: t.sample}); err != nil {
		return context.Cause(ctx)
	}
	return t.flush()
}
