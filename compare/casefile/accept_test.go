package casefile

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// Ways of writing that change nothing about a case.
func TestSameCaseInOtherDress(t *testing.T) {
	plainCase, _, err := Load("case.yaml", []byte(sound), nil)
	if err != nil {
		t.Fatal(err)
	}
	for name, data := range map[string]string{
		"byte order mark":     "\ufeff" + sound,
		"CR and LF":           strings.ReplaceAll(sound, "\n", "\r\n"),
		"CR alone":            strings.ReplaceAll(sound, "\n", "\r"),
		"no final line break": strings.TrimSuffix(sound, "\n"),
		"document marker":     "---\n" + sound,
		"document end":        sound + "...\n",
		"comments":            "# first\n" + strings.ReplaceAll(sound, "\n", "  # why\n"),
		"four spaces":         strings.ReplaceAll(sound, "  ", "    "),
		"braces":              "{household: {people: 3}, climate: {outdoor_c: [4, 5, 6, 9, 12, 15, 17, 16, 14, 11, 7, 4]}}",
		"JSON":                `{"household": {"people": 3}, "climate": {"outdoor_c": [4, 5, 6, 9, 12, 15, 17, 16, 14, 11, 7, 4]}}`,
		"list line by line":   strings.NewReplacer("[4,", "\n  - 4\n  -", ",", "\n  -", "]", "").Replace(sound),
		"other order":         "climate:\n  outdoor_c: [4, 5, 6, 9, 12, 15, 17, 16, 14, 11, 7, 4]\nhousehold:\n  people: 3\n",
		"decimals and powers": strings.NewReplacer("people: 3", "people: 3.0e0", "[4,", "[+4.00,").Replace(sound),
		"an empty section":    with("mains:\n"),
		"an empty part":       with("cylinder:\n  control:\n"),
		"a stated default":    withHousehold("  shower_minutes: 6\n"),
	} {
		c, _, err := Load("case.yaml", []byte(data), nil)
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		if diff := cmp.Diff(plainCase, c); diff != "" {
			t.Errorf("%s changes the case:\n%s", name, diff)
		}
	}
}

// Text is taken as it stands, quoted or not, whatever YAML would make of it.
func TestTextIsTakenAsItStands(t *testing.T) {
	for written, want := range map[string]string{
		"Home":               "Home",
		`"Home: one"`:        "Home: one",
		"'it''s'":            "it's",
		"12":                 "12",
		"0x10":               "0x10",
		"no":                 "no",
		"2026-01-02":         "2026-01-02",
		`"~"`:                "~",
		"Дом №1, 東京 🏠":       "Дом №1, 東京 🏠",
		`"\u00e9"`:           "é",
		"a # b":              "a",
		">-\n  one\n  line":  "one line",
		`""`:                 "",
		"=1+1":               "=1+1",
		"<script>alert(1)":   "<script>alert(1)",
		"../../etc/passwd":   "../../etc/passwd",
		"  spaces around   ": "spaces around",
	} {
		c, _, err := Load("case.yaml", []byte("title: "+written+"\n"+sound), nil)
		if err != nil {
			t.Errorf("%s: %v", written, err)
			continue
		}
		if c.Title != want {
			t.Errorf("title %s is read as %q, want %q", written, c.Title, want)
		}
	}
}

func TestProblemsComeByLineAndEnd(t *testing.T) {
	c, _, err := Load("case.yaml", []byte("years: 0\nseed: -1\n"+sound+"service:\n  cold_s: -1\nx: 1\n"), nil)
	want := `case.yaml:1: years is 0, allowed 1 to 1000: leave it out for the default, 20
case.yaml:2: seed is -1, allowed 0 to 9007199254740991: leave it out for the default, 1
case.yaml:8: service.cold_s is -1, allowed 0 to 600 s: leave it out for the default, 30
case.yaml:9: x is not known: leave it out; 'dhwcompare check' prints a sound case with every key there is`
	if c != nil || err == nil {
		t.Fatal("a case with four problems is taken")
	}
	if diff := cmp.Diff(want, err.Error()); diff != "" {
		t.Error(diff)
	}
}

// A file that is no case at all does not flood the terminal, however long it is.
func TestManyProblemsAreCut(t *testing.T) {
	_, _, err := Load("case.yaml", []byte(strings.Repeat("- x\n", 3)), nil)
	if err == nil || strings.Count(err.Error(), "\n") != 0 {
		t.Errorf("a list gives %v, want one problem", err)
	}
	var b strings.Builder
	for i := range 5000 {
		b.WriteString("key" + strings.Repeat("x", i%50) + plain(float64(i)) + ": 1\n")
	}
	_, _, err = Load("case.yaml", []byte(b.String()), nil)
	lines := strings.Split(err.Error(), "\n")
	if len(lines) != mostProblems+1 || !strings.Contains(lines[mostProblems], "there are more problems") {
		t.Errorf("%d lines, the last %q", len(lines), lines[len(lines)-1])
	}
}
