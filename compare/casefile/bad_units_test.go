package casefile

import (
	"strings"
	"testing"
)

func TestBadUnits(t *testing.T) {
	refused(t, []badInput{
		{"fahrenheit setpoint", with("cylinder:\n  control:\n    setpoint_c: 120\n"),
			"case.yaml:7: cylinder.control.setpoint_c is 120, allowed 35 to 75 °C: it looks like degrees Fahrenheit: 120 would be 48.89 °C"},
		{"kelvin setpoint", with("cylinder:\n  control:\n    setpoint_c: 321\n"),
			"case.yaml:7: cylinder.control.setpoint_c is 321, allowed 35 to 75 °C: it looks like kelvin: 321 would be 47.85 °C"},
		{"cold setpoint", with("cylinder:\n  control:\n    setpoint_c: 31\n"),
			"case.yaml:7: cylinder.control.setpoint_c is 31, allowed 35 to 75 °C: leave it out for the default, 48"},
		{"watts", with("heat_pump:\n  nominal_kw: 5000\n"),
			"case.yaml:6: heat_pump.nominal_kw is 5000, allowed 3 to 16 kW: it looks like watts: 5000 would be 5 kW"},
		{"kilowatts", with("compact_store:\n  standing_loss_w: 0.05\n"),
			"case.yaml:6: compact_store.standing_loss_w is 0.05, allowed 5 to 400 W: it looks like kilowatts: 0.05 would be 50 W"},
		{"kilowatts per kelvin", with("dwelling:\n  heat_loss_w_per_k: 0.18\n"),
			"case.yaml:6: dwelling.heat_loss_w_per_k is 0.18, allowed 20 to 1000 W/K, or 0 for a unit that makes hot water only: it looks like kilowatts per kelvin: 0.18 would be 180 W/K"},
		{"litres a second", withHousehold("  shower_flow_l_per_min: 0.12\n"),
			"case.yaml:3: household.shower_flow_l_per_min is 0.12, allowed 2 to 30 l/min: it looks like litres a second: 0.12 would be 7.2 l/min"},
		{"litres an hour", with("pipes:\n  primary_flow_l_per_min: 1000\n"),
			"case.yaml:6: pipes.primary_flow_l_per_min is 1000, allowed 3 to 60 l/min: it looks like litres an hour: 1000 would be 16.67 l/min"},
		{"metres", with("cylinder:\n  width_mm: 0.55\n"),
			"case.yaml:6: cylinder.width_mm is 0.55, allowed 100 to 3000 mm: it looks like metres: 0.55 would be 550 mm"},
		{"centimetres", with("cylinder:\n  width_mm: 55\n"),
			"case.yaml:6: cylinder.width_mm is 55, allowed 100 to 3000 mm: it looks like centimetres: 55 would be 550 mm"},
		{"millimetres", with("pipes:\n  loop_length_m: 16000\n"),
			"case.yaml:6: pipes.loop_length_m is 16000, allowed 1 to 200 m: it looks like millimetres: 16000 would be 16 m"},
		{"cubic metres", with("cylinder:\n  volume_l: 0.2\n"),
			"case.yaml:6: cylinder.volume_l is 0.2, allowed 60 to 450 l: it looks like cubic metres: 0.2 would be 200 l"},
		{"share in percent", withHousehold("  back_to_back_share: 30\n"),
			"case.yaml:3: household.back_to_back_share is 30, allowed 0 to 1: it looks like percent: 30 would be 0.3"},
		{"percent as share", strings.Replace(sound, "climate:\n", "climate:\n  rh_percent: [0.8, 80, 80, 80, 80, 80, 80, 80, 80, 80, 80, 80]\n", 1),
			"case.yaml:4: climate.rh_percent[1] is 0.8, allowed 5 to 100 %: it looks like a share of 1: 0.8 would be 80 %"},
		{"seconds", withHousehold("  shower_minutes: 360\n"),
			"case.yaml:3: household.shower_minutes is 360, allowed 0.5 to 60 min: it looks like seconds: 360 would be 6 min"},
		{"kilopascals", with("mains:\n  dynamic_pressure_bar: 200\n"),
			"case.yaml:6: mains.dynamic_pressure_bar is 200, allowed 0.3 to 10 bar: it looks like kilopascals: 200 would be 2 bar"},
		{"kwh a day", with("cylinder:\n  standing_loss_w: 1.5\n"),
			"case.yaml:6: cylinder.standing_loss_w is 1.5, allowed 5 to 400 W: it looks like kWh in 24 hours: 1.5 would be 62.5 W"},
	})
}
