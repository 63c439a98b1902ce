package casefile

import (
	"errors"
	"strings"
	"testing"
)

// Whatever the bytes, Load gives problems that each have a place and are safe to
// show, or a case that survives writing.
func FuzzLoad(f *testing.F) {
	f.Add(Demo())
	f.Add(Template())
	f.Add([]byte(sound))
	f.Add([]byte(with("cylinder:\n  control: {windows: [\"13:00-16:00\"], raised: [{hours: 1:00-2:00, setpoint_c: 50}]}\n")))
	f.Add([]byte(withHousehold("  away:\n  - {first_date: 1 Jan, last_date: 31 Dec}\n  load_profile: M\n")))
	f.Add([]byte(furnished))
	f.Add([]byte("surplus: {file: \"\\u202e/../x\", sha256: 12}\ntariffs: [{price_file: a/../b, schedule_file: .}]\n"))
	f.Add([]byte("a: &a [*a]\n<<: *a\n? x\n: !!binary y\n"))
	f.Add([]byte("\ufeffhousehold:\r\n  people: 1e1\r\n---\n"))
	f.Add([]byte("title: |\n  x\x1b\n"))
	f.Fuzz(func(t *testing.T, data []byte) {
		c, _, err := Load("fuzz.yaml", data, opener(nil))
		if err == nil {
			sameAgain(t, c)
			return
		}
		var problems Problems
		if !errors.As(err, &problems) || len(problems) == 0 {
			t.Fatalf("error without problems: %v", err)
		}
		for _, p := range problems {
			if p.File != "fuzz.yaml" || p.Line < 1 || p.Column < 1 || p.Text == "" {
				t.Fatalf("problem without a place: %+v", p)
			}
			if strings.ContainsFunc(p.Error(), isHidden) {
				t.Fatalf("problem that is not safe to show: %q", p.Error())
			}
		}
	})
}
