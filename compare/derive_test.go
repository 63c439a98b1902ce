package compare

import (
	"math"
	"testing"

	"dhwcompare/compare/checkvalues"
	"dhwcompare/compare/vessel"
)

// lossRow is a line of the published standing losses.
type lossRow struct {
	class                                   string
	volumeL, lossW, kWhPer24h, lossWPerKelv float64
}

func lossRows(t *testing.T) []lossRow {
	t.Helper()
	var rows []lossRow
	for _, r := range checkvalues.Published(t, "standing_loss_classes.csv") {
		x := r.Numbers(t, "volume_l", "loss_W", "kWh_per_24h", "W_per_K")
		rows = append(rows, lossRow{r["class"], x[0], x[1], x[2], x[3]})
	}
	return rows
}

// A body whose loss nobody states has the upper end of class B, to the published
// five figures; a stated loss turns into W/K at 45 K and into kWh in 24 h, to four.
func TestStandingLoss(t *testing.T) {
	seen := 0
	for _, r := range lossRows(t) {
		b := Body{VolumeL: r.volumeL}
		if r.class == "B" {
			seen++
			if got := b.StandingLossW(); math.Abs(got-r.lossW) > 6e-4 {
				t.Errorf("%g litres: %.4f W, published %.3f", r.volumeL, got, r.lossW)
			}
		}
		b.LossW = &r.lossW
		if got := b.lossWPerK(); math.Abs(got-r.lossWPerKelv) > 6e-5 {
			t.Errorf("%g litres, class %s: %.5f W/K, published %.4f", r.volumeL, r.class, got, r.lossWPerKelv)
		}
		if got := b.lossWPerK() * lossTestK * 24 / 1000; math.Abs(got-r.kWhPer24h) > 6e-5 {
			t.Errorf("%g litres, class %s: %.5f kWh in 24 h, published %.4f", r.volumeL, r.class, got, r.kWhPer24h)
		}
	}
	if seen < 6 {
		t.Errorf("only %d rows of class B", seen)
	}
}

// The vessels that a case makes lose what it declares: a day at 65 C in a room at
// 20 C, the temperature set back every ten minutes. 0.5 %, for the fall between.
func TestVesselsLoseWhatIsDeclared(t *testing.T) {
	const dt, day = 600.0, 86400.0
	c := Default()
	for side, body := range map[Side]*Body{SideCompact: &c.Compact.Body, SideCylinder: &c.Cylinder.Body} {
		v, lostJ := c.vessel(side), 0.0
		for range int(day / dt) {
			v.Fill(65)
			lostJ += v.Step(&vessel.Flows{DtS: dt, RoomC: 20}).LossJ
		}
		if got, want := lostJ/day, body.StandingLossW(); math.Abs(got/want-1) > 0.005 {
			t.Errorf("%v: %.2f W, declared %.2f", side, got, want)
		}
	}
}
