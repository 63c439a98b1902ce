package main

import (
	"context"

	"github.com/spf13/cobra"

	"dhwcompare/compare"
	"dhwcompare/compare/casefile"
	"dhwcompare/compare/report"
)

// studyCommands make the commands that look into one question each.
func (p *program) studyCommands() []*cobra.Command {
	return []*cobra.Command{
		p.studyCommand(sizeStudy()), p.studyCommand(sensitivityStudy()), p.studyCommand(drawoffStudy()), p.studyCommand(settingsStudy()),
	}
}

func sizeStudy() *study {
	return &study{
		name: "size", prints: "the sizes",
		short: "Find the best compact store and the best cylinder for a case",
		long: `size looks for the sizes and settings of each option that keep the service rule: it
tries volumes, setpoints by season, hysteresis, output caps and, where nothing else
serves, flow limiters, within what heat pump, controller and room allow. Settings are
screened on few years, and every size that is reported has been confirmed on all.
The folder holds sizing.json and best.yaml, the case with the two winners in place.`,
		look: func(ctx context.Context, w *work) (err error) {
			w.doc.Sizing, err = compare.SizeBoth(ctx, w.solved, w.workers, w.advance)
			return err
		},
		part: func(doc *compare.Document) any { return doc.Sizing },
		file: "sizing.json",
		more: func(w *work) []output {
			best, ok := w.doc.Sizing.Best(w.doc.Case)
			if !ok {
				return nil
			}
			return []output{{"best.yaml", func() ([]byte, error) { return casefile.Write(best), nil }}}
		},
		show: report.Sizes,
	}
}

func sensitivityStudy() *study {
	return &study{
		name: "sensitivity", prints: "the sensitivity",
		short: "Find out which uncertain inputs move the decision",
		long: `sensitivity moves each uncertain input of a case to a low and a high value, alone,
and says how the difference in cost and the failing showers move, and at which value
the verdict turns. Each value is simulated for all years of the case, for fewer may
give another verdict; --years 5 is quicker for a first look.
The folder holds sensitivity.json.`,
		look: func(ctx context.Context, w *work) (err error) {
			w.doc.Sensitivity, err = compare.Sensitivities(ctx, w.solved, w.solved.Years, w.workers, w.advance)
			return err
		},
		part: func(doc *compare.Document) any { return doc.Sensitivity },
		file: "sensitivity.json",
		show: report.Tornado,
	}
}

func drawoffStudy() *study {
	pause := &value{name: "pause", placeholder: "MIN", example: "5", check: numberOf("pause", "household.back_to_back_gap_min")}
	return &study{
		name: "drawoff", prints: "the draw-off tests", extra: pause,
		extraHelp: "minutes between two showers back to back, in place of the case's",
		short:     "Time how long a shower lasts, month by month",
		long: `drawoff runs timed tests of both options from a charged vessel: how long a shower
lasts by month, flow and state of the heat pump, how soon a second one can follow,
how fast a bath fills, how long the vessel takes to recover.
The folder holds drawoff.json.`,
		look: func(ctx context.Context, w *work) (err error) {
			minutes := w.solved.Household.BackToBackGapMin
			if pause.given {
				minutes = pause.decimal()
			}
			w.doc.Draws, err = compare.Drawoffs(ctx, w.solved, minutes)
			return err
		},
		part: func(doc *compare.Document) any { return doc.Draws },
		file: "drawoff.json",
		show: report.Drawoffs,
	}
}

func settingsStudy() *study {
	return &study{
		name: "settings", prints: "the settings",
		short: "Show what each setting of the compact store buys, and what to set",
		long: `settings climbs from an uncommissioned compact store to the settings of the case, one
change at a time, and lists what an installer has to set and check.
The folder holds settings.json.`,
		look: func(ctx context.Context, w *work) (err error) {
			w.doc.Settings, err = compare.SettingsLadder(ctx, w.solved, w.solved.Years, w.workers)
			return err
		},
		part: func(doc *compare.Document) any { return doc.Settings },
		file: "settings.json",
		show: report.Ladder,
	}
}
