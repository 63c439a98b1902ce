package casefile

import "testing"

func TestBadKeys(t *testing.T) {
	refused(t, []badInput{
		{"unknown key", withHousehold("  peple: 3\n"),
			"case.yaml:3: household.peple is not known: did you mean people?"},
		{"unknown far", withHousehold("  swimming_pool_m3: 3\n"),
			"case.yaml:3: household.swimming_pool_m3 is not known: leave it out; 'dhwcompare check' prints a sound case with every key there is"},
		{"unknown top", with("colour: blue\n"),
			"case.yaml:5: colour is not known: leave it out; 'dhwcompare check' prints a sound case with every key there is"},
		{"unknown section", with("heatpump:\n  size: small\n"),
			"case.yaml:5: heatpump is not known: did you mean heat_pump?"},
		{"unit left out", with("cylinder:\n  control:\n    setpoint: 48\n"),
			"case.yaml:7: cylinder.control.setpoint is not known: did you mean setpoint_c?"},
		{"unit wrong", with("cylinder:\n  control:\n    setpoint_f: 118\n"),
			"case.yaml:7: cylinder.control.setpoint_f is not known: did you mean setpoint_c?"},
		{"flow unit", withHousehold("  shower_flow_l_per_s: 0.1\n"),
			"case.yaml:3: household.shower_flow_l_per_s is not known: did you mean shower_flow_l_per_min?"},
		{"capital", withHousehold("  Bathrooms: 1\n"),
			"case.yaml:3: household.Bathrooms is not known: did you mean bathrooms?"},
		{"hyphen", withHousehold("  has-bath: true\n"),
			"case.yaml:3: household.has-bath is not known: did you mean has_bath?"},
		{"wrong section", with("cylinder:\n  setpoint_c: 48\n"),
			"case.yaml:6: cylinder.setpoint_c is not known here: did you mean compact_store.control.setpoint_c or cylinder.control.setpoint_c?"},
		{"top level people", "people: 3\n" + sound,
			"case.yaml:1: people is not known here: did you mean household.people?"},
		{"circulation", with("pipes:\n  circulation_pump_w: 10\n"),
			"case.yaml:6: pipes.circulation_pump_w is not known: secondary circulation is not modelled, so a home that has it cannot be judged here"},
		{"key of other alphabet", withHousehold("  люди: 3\n"),
			"case.yaml:3: household.люди is not known: it holds letters or marks of another alphabet, some of which look like those of keys: type it anew, or leave it out"},
		{"key with escape", withHousehold("  \"a\\e[31m\": 3\n"),
			`case.yaml:3: household."a\x1b[31m" is not known: leave it out; 'dhwcompare check' prints a sound case with every key there is`},
		{"empty key", withHousehold("  \"\": 3\n"),
			`case.yaml:3: household."" is not known: leave it out; 'dhwcompare check' prints a sound case with every key there is`},
		{"number key", with("1: 3\n"),
			"case.yaml:5: 1 is not known: leave it out; 'dhwcompare check' prints a sound case with every key there is"},
	})
}
