package compare

import (
	"context"

	"dhwcompare/compare/plant"
	"dhwcompare/compare/wording"
)

// Settings is what each setting of the compact store's control buys, from an
// uncommissioned example to the values of the case, and the list of what an
// installer must set.
type Settings struct {
	Years int           `json:"years"`
	Steps []SettingStep `json:"steps"`
	List  []Commission  `json:"commissioning_list"`
}

// SettingStep is one state of the settings.
type SettingStep struct {
	Name      string  `json:"name"`
	Change    string  `json:"change"` // what is changed against the uncommissioned example
	WinterMin float64 `json:"winter_shower_minutes"`
	SummerMin float64 `json:"summer_shower_minutes"`
	Trial     Trial   `json:"trial"`
}

// Commission is one setting that an installer makes.
type Commission struct {
	Option  string `json:"option"`
	Setting string `json:"setting"`
	Value   string `json:"value"`
	Reason  string `json:"reason"`
}

// The uncommissioned example: common practice, no source.
const (
	rawSetpointC    = 50.0
	rawHysteresisK  = 8.0
	rawAntiCycleMin = 30.0
	rawOutputCap    = 0.5
)

func uncommissioned(k *Control) {
	k.SetpointC, k.MonthSetpointC, k.Raised = rawSetpointC, nil, nil
	k.HysteresisK, k.AntiCycleMin, k.OutputCap = rawHysteresisK, rawAntiCycleMin, rawOutputCap
}

// settingChange takes one setting from the example to the case.
type settingChange struct {
	name   string
	text   string
	change func(to *Control, from Control)
}

func settingChanges(k Control) []settingChange {
	return []settingChange{
		{"setpoint", wording.Sprintf("setpoint %.0f to %.0f C", rawSetpointC, k.SetpointC), func(to *Control, from Control) {
			to.SetpointC, to.MonthSetpointC, to.Raised = from.SetpointC, from.MonthSetpointC, from.Raised
		}},
		{"hysteresis", wording.Sprintf("hysteresis %.0f to %.3g K", rawHysteresisK, k.HysteresisK), func(to *Control, from Control) { to.HysteresisK = from.HysteresisK }},
		{"output", wording.Sprintf("output cap %.0f to %.0f %%", rawOutputCap*100, k.OutputCap*100), func(to *Control, from Control) { to.OutputCap = from.OutputCap }},
		{"pause", wording.Sprintf("least pause %.0f to %.3g min", rawAntiCycleMin, k.AntiCycleMin), func(to *Control, from Control) { to.AntiCycleMin = from.AntiCycleMin }},
	}
}

// SettingsLadder climbs from the uncommissioned example to the case's control of
// the compact store: each change alone, then all together.
func SettingsLadder(ctx context.Context, c *Case, n, workers int) (*Settings, error) {
	scout, err := newScout(c, newWorlds(c))
	if err != nil {
		return nil, err
	}
	var s *Settings
	err = find(workers, settingSearch(ctx, c, scout, n, nil, &s))
	return s, err
}

// settingSearch climbs the ladder. The years already lived as the case states it, if
// any are given, are not lived again.
func settingSearch(ctx context.Context, c *Case, scout *scout, n int, asStated []YearRecord, into **Settings) search {
	s := &Settings{Years: n, List: c.commissioning()}
	raw := c.withControl(SideCompact, uncommissioned)
	var parts []func() error
	climb := func(name, change string, step *Case, known []YearRecord) {
		i := len(s.Steps)
		s.Steps = append(s.Steps, SettingStep{Name: name, Change: change})
		parts = append(parts, func() error { return s.Steps[i].measure(ctx, step, scout, n, known) })
	}
	climb("uncommissioned example", "", raw, nil)
	for _, change := range settingChanges(c.Compact.Control) {
		climb(change.name, change.text, raw.withControl(SideCompact, func(k *Control) { change.change(k, c.Compact.Control) }), nil)
	}
	climb("commissioned", "all together", c, asStated)
	return search{parts: parts, whole: func() { *into = s }}
}

// measure measures the compact store of a case.
func (s *SettingStep) measure(ctx context.Context, c *Case, scout *scout, n int, known []YearRecord) error {
	l := scout.begin(c, SideCompact, func() {})
	l.recall(known)
	if err := l.all(ctx, n); err != nil {
		return err
	}
	s.Trial = l.trial(n)
	b, err := newTestBench(c, SideCompact)
	if err != nil {
		return err
	}
	if s.WinterMin, err = b.showerMinutes(ctx, c.ofMonth(c.coldestMains()), plant.Override{}, b.meanFlow()); err != nil {
		return err
	}
	s.SummerMin, err = b.showerMinutes(ctx, c.ofMonth(c.warmestMains()), plant.Override{}, b.meanFlow())
	return err
}

func (c *Case) warmestMains() int {
	mains, _ := c.Climate.Mains()
	warmest := 0
	for m, t := range mains {
		if t > mains[warmest] {
			warmest = m
		}
	}
	return warmest
}

// commissioning lists what an installer must set, with the reason.
func (c *Case) commissioning() []Commission {
	var list []Commission
	for side := range sides {
		k := c.control(side)
		add := func(setting, value, reason string) {
			list = append(list, Commission{Option: side.String(), Setting: setting, Value: value, Reason: reason})
		}
		add("setpoint", wording.Sprintf("%.3g C", k.SetpointC), "sets how long a shower lasts, and the COP")
		add("hysteresis", wording.Sprintf("%.3g K", k.HysteresisK), "a wide one lets the vessel cool before the heat pump starts; a narrow one starts it often")
		add("output cap for hot water", wording.Sprintf("%.0f %%", k.OutputCap*100), "lower runs longer at better COP, higher recovers faster")
		add("least pause between hot-water runs", wording.Sprintf("%.3g min", k.AntiCycleMin), "a long one leaves the second shower without the heat pump")
		add("sensor height", wording.Sprintf("%.0f %% of the height from the bottom", k.SensorHeight*100), "a high sensor sees cold water late")
		add("flow target above the setpoint", wording.Sprintf("%.3g K", k.FlowAboveK), "too small a lift makes the heat pump stop early")
		if k.ShowerLimit > 0 {
			add("shower flow limiter", wording.Sprintf("%.3g l/min", k.ShowerLimit), "the flow decides how long the shower lasts")
		}
		if h := c.body(side).Hygiene; h.EveryDays > 0 {
			add("disinfection", wording.Sprintf("every %.3g days, %.3g C for %.3g min", h.EveryDays, h.TargetC, h.HoldMin), "a choice for the hygiene risk assessment, by local rules and a competent person")
		}
	}
	return list
}
