package casefile

import (
	"errors"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// sound is the smallest case there is; its last line is line 4.
const sound = `household:
  people: 3
climate:
  outdoor_c: [4, 5, 6, 9, 12, 15, 17, 16, 14, 11, 7, 4]
`

// with adds lines at the end of a sound case, from line 5 on.
func with(lines string) string { return sound + lines }

// withHousehold adds keys to the household of a sound case, from line 3 on.
func withHousehold(keys string) string {
	return strings.Replace(sound, "  people: 3\n", "  people: 3\n"+keys, 1)
}

// badInput is a file that is refused, with the whole message about it.
type badInput struct{ name, data, want string }

func refused(t *testing.T, inputs []badInput) {
	t.Helper()
	for _, in := range inputs {
		t.Run(in.name, func(t *testing.T) {
			c, _, err := Load("case.yaml", []byte(in.data), nil)
			var problems Problems
			if c != nil || !errors.As(err, &problems) {
				t.Fatalf("case %v and error %v, want no case and Problems", c, err)
			}
			if diff := cmp.Diff(in.want, err.Error()); diff != "" {
				t.Error(diff)
			}
		})
	}
}

func TestSoundCaseIsTaken(t *testing.T) {
	if _, _, err := Load("case.yaml", []byte(sound), nil); err != nil {
		t.Fatal(err)
	}
}
