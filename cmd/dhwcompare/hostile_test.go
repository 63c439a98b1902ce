package main

import (
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"dhwcompare/compare/casefile"
)

// hostile lists texts that somebody could put where a name is asked for. They begin
// as formulas do, in ASCII and in full width, end or begin markup, spell out codes
// of page headers, paths, templates and escapes.
func hostile() []string {
	return []string{
		"=1+1", "+1+1", "-1+1", "@SUM(A1)", "＝1+1", "＋1+1", "－1+1", "＠SUM(A1)", `=HYPERLINK("http://x.example","y")`,
		"<script>alert(1)</script>", `"><img src=x onerror=alert(1)>`, "</text></svg>]]>", "&P&D&G&\"Arial\"&99", "&lt;b&gt;&#x3c;",
		"../../../x", "`|*_[x](javascript:alert(1))", "```", "${x}{{.}}%0d%0a%n", "'; x --", "_x003D_1+1", "\\u001b[2J\\n", "{c: [d", "# e",
	}
}

// mark makes the i-th hostile text one of its kind, so that it is found again.
func mark(kind string, i int) string {
	list := hostile()
	return fmt.Sprintf("%s zq%s%d", list[i%len(list)], kind, i)
}

// poisoned is a case with a hostile text at every key that takes one, and files with
// such texts inside. The texts stand in texts, by key; those of keys of a list are
// as many as there are hostile texts.
type poisoned struct {
	yaml  string
	texts map[string][]string
	files map[string]string
}

// poison writes the case; change may put another text in place of one.
func poison(change func(key, text string) string) *poisoned {
	p := &poisoned{texts: map[string][]string{}, files: map[string]string{}}
	text := func(key, text string) string {
		text = change(key, text)
		p.texts[key] = append(p.texts[key], text)
		return fmt.Sprintf("%q", text)
	}
	file := func(key, name, holds string) string {
		p.files[name] = holds
		return text(key, name)
	}
	var b strings.Builder
	b.WriteString("title: " + text("title", `=1+1 <script>alert(1)</script> &P&D "> ]]> ../x |*_[x](javascript:y) ＝1 zqtitle`) + "\n")
	b.WriteString("household: {people: 1, load_profile: 3XS}\nclimate:\n  weather_file: " +
		file("climate.weather_file", "=1+1 &P <img src=x onerror=y> zqw.epw", poisonedWeather()) + "\n")
	b.WriteString("dwelling: {heat_loss_w_per_k: 0}\ncompact_store: {layers: 8}\ncylinder: {layers: 8, hygiene: {every_days: 0}}\n")
	b.WriteString("surplus: {file: " + file("surplus.file", "+1 <b> zqs.csv", madeSeries("surplus_kwh", func(int) float64 { return 0.1 })) + "}\ntariffs:\n")
	tariffs := len(hostile()) - 5 // with the two from files that follow, as many as there may be
	for i := range tariffs {
		fmt.Fprintf(&b, "  - name: %s\n    rate_per_kwh: 0.3\n    rate_label: %s\n    bands: [{label: %s, rate_per_kwh: 0.1, hours: \"00:00-05:00\"}, {label: %s, rate_per_kwh: 0.2, hours: \"12:00-13:00\"}]\n",
			text("tariffs.name", mark("n", i)), text("tariffs.rate_label", mark("r", i+5)), text("tariffs.bands.label", mark("b", i)), text("tariffs.bands.label", mark("c", i+5)))
	}
	fmt.Fprintf(&b, "  - {name: %s, price_file: %s}\n", text("tariffs.name", mark("n", tariffs)),
		file("tariffs.price_file", "@A1 <b> zqp.csv", madeSeries("price", func(int) float64 { return 0.2 })))
	fmt.Fprintf(&b, "  - {name: %s, schedule_file: %s}\n", text("tariffs.name", mark("n", tariffs+1)),
		file("tariffs.schedule_file", "＝1 <b> zqj.json", strings.Replace(goodSchedule(), "{", `{"name": "=1+1 <script>alert(1)</script> \u001b[2J zqinside",`, 1)))
	p.yaml = b.String()
	p.files["case.yaml"] = p.yaml
	return p
}

// poisonedWeather has a place that would steer a terminal, too.
func poisonedWeather() string {
	return strings.Replace(madeWeather(), "Nowhere,-,Inventia", "=1+1 <script>alert(1)</script>\x1b[2J\u202e\u009b zqplace,-,@A1 &P", 1)
}

func goodSchedule() string {
	day := "[" + strings.TrimSuffix(strings.Repeat("0,", 24), ",") + "]"
	year := "[" + strings.TrimSuffix(strings.Repeat(day+",", 12), ",") + "]"
	return fmt.Sprintf(`{"energyratestructure": [[{"rate": 0.3}]], "energyweekdayschedule": %s, "energyweekendschedule": %s}`, year, year)
}

// textKeys lists the paths of all keys that take anybody's words, those of list
// items under the path of their list.
func textKeys(prefix string, keys []casefile.Key) []string {
	var paths []string
	for i := range keys {
		if keys[i].FreeText() {
			paths = append(paths, prefix+keys[i].Path)
		}
		paths = append(paths, textKeys(prefix+keys[i].Path+".", keys[i].Items)...)
	}
	slices.Sort(paths)
	return paths
}

func unchanged(_, text string) string { return text }

// TestEveryTextIsPoisoned keeps the tests below complete: a new key that takes a
// text fails this one until it has a hostile text.
func TestEveryTextIsPoisoned(t *testing.T) {
	want := textKeys("", casefile.Keys())
	if got := slices.Sorted(maps.Keys(poison(unchanged).texts)); len(want) < 5 || !slices.Equal(got, want) {
		t.Errorf("hostile texts stand at %q, and these keys take text: %q", got, want)
	}
	forms := regexp.MustCompile(`^(a number|a whole number|twelve numbers|true or false|a word|a list of|a time of the day|a date such|a stretch of the day|three capital letters|64 hexadecimal digits)`)
	for _, k := range casefile.Keys() {
		for _, k := range append(k.Items, k) {
			if !k.FreeText() && !forms.MatchString(k.Form) {
				t.Errorf("%s is %s: may that hold anybody's words?", k.Path, k.Form)
			}
		}
	}
}

// TestControlsAreRefused puts a control character, or a mark that turns the
// direction of writing, into each text in turn.
func TestControlsAreRefused(t *testing.T) {
	for _, key := range textKeys("", casefile.Keys()) {
		for _, odd := range []string{"\t", "\r", "\n", "\x1b[2J", "\x00", "\u009b2J", "\u202e", "\u2028", "\ufeff"} {
			t.Chdir(t.TempDir())
			p := poison(func(k, text string) string {
				if k == key {
					return "x" + odd + text
				}
				return text
			})
			p.write(t, ".")
			var out, message strings.Builder
			code := run([]string{"check", "case.yaml"}, strings.NewReader(""), &out, &message)
			if code != exitUsage || out.Len() > 0 || odd != "\n" && strings.Contains(message.String(), odd) {
				t.Errorf("%s with %q: exit code %d, message %q", key, odd, code, message.String())
			}
		}
	}
}

func (p *poisoned) write(t *testing.T, dir string) {
	t.Helper()
	for name, text := range p.files {
		writeFile(t, dir, name, text)
	}
}

// TestHostileTextStaysText runs the program on the poisoned case and walks every
// file that comes out.
func TestHostileTextStaysText(t *testing.T) {
	dir := t.TempDir()
	t.Chdir(dir)
	p := poison(unchanged)
	p.write(t, dir)
	var out, message strings.Builder
	if code := run([]string{"run", "case.yaml", "--years", "1", "--out", "out"}, strings.NewReader(""), &out, &message); code != exitDone || message.Len() > 0 {
		t.Fatalf("exit code %d: %s", code, message.String())
	}
	plainOnly(t, "the terminal", out.String())
	if !strings.Contains(out.String(), "zqn0") {
		t.Error("the terminal does not show the tariffs")
	}
	files := filesIn(t, filepath.Join(dir, "out"))
	if got := slices.Sorted(maps.Keys(filesIn(t, dir))); len(got) != len(files)+len(p.files) {
		t.Errorf("there are other files than results and what was there: %q", got)
	}
	for name, text := range files {
		t.Run(name, func(t *testing.T) { p.walk(t, name, text) })
	}
	t.Run("warnings", func(t *testing.T) { warnedEverywhere(t, files, out.String()) })
}

// walk judges one file of the results.
func (p *poisoned) walk(t *testing.T, name, text string) {
	if !regexp.MustCompile(`^[a-z][a-z0-9-]*(/[a-z0-9-]+)?\.[a-z]+$`).MatchString(name) {
		t.Errorf("the name holds what it should not: %q", name)
	}
	if slices.Contains([]string{"weather.epw", "rates-20.json", "prices-19.csv", "surplus.csv"}, name) {
		if !slices.Contains(slices.Collect(maps.Values(p.files)), text) {
			t.Error("the copy is not what was copied")
		}
		return
	}
	switch filepath.Ext(name) {
	case ".json":
		soundJSON(t, text, p.shownTexts(name))
	case ".xlsx":
		soundWorkbook(t, text, p.shownTexts(name))
	case ".html":
		soundPage(t, text, p.shownTexts(name))
	case ".md":
		soundMarkdown(t, text)
	case ".svg":
		soundPicture(t, text)
	case ".yaml":
		if _, _, err := casefile.Load(name, []byte(text), os.ReadFile); err == nil || !strings.Contains(err.Error(), "there is no such file") {
			// Its files lie beside it, not here; nothing else may be wrong with it.
			t.Errorf("the case is not read again: %v", err)
		}
		plainOnly(t, name, text)
	case ".png": // no text
	default:
		t.Errorf("nobody has judged files such as %s", name)
	}
}

// shownTexts lists the texts that a file has to show, letter by letter.
func (p *poisoned) shownTexts(name string) []string {
	if name == "manifest.json" {
		return nil
	}
	list := slices.Concat(p.texts["title"], p.texts["tariffs.name"])
	if strings.HasPrefix(name, "comparison.") {
		list = slices.Concat(list, p.texts["tariffs.rate_label"], p.texts["tariffs.bands.label"])
	}
	return list
}
