package main

import (
	"os"
	"strings"
	"testing"
)

// TestOddButSound gives the program files that look odd to a careless reader and
// are sound. Each means the same as the plain one.
func TestOddButSound(t *testing.T) {
	const text = "title: Дом на углу, 家, بيت\n" + soundCase + "tariffs:\n  - {name: dynamic, price_file: prices.csv}\n"
	prices := madeSeries("price", func(int) float64 { return 0.2 })
	crlf := func(s string) string { return strings.ReplaceAll(s, "\n", "\r\n") }
	want := checked(t, text, prices)
	for name, odd := range map[string][2]string{
		"byte order mark":        {"\ufeff" + text, "\ufeff" + prices},
		"CR and LF":              {crlf(text), crlf(prices)},
		"mark, CR and LF":        {"\ufeff" + crlf(text), "\ufeff" + crlf(prices)},
		"no end to the last":     {strings.TrimSuffix(text, "\n"), strings.TrimSuffix(prices, "\n")},
		"quotes around values":   {text, strings.ReplaceAll(prices, ",0.200", `,"0.200"`)},
		"remarks":                {"# mine\n" + text, "# theirs\n" + prices},
		"another order of names": {text, swapped(prices)},
	} {
		// The digest of the prices is that of their bytes, and differs.
		if got := checked(t, odd[0], odd[1]); withoutDigest(got) != withoutDigest(want) {
			t.Errorf("%s changes the case:\n%s", name, got)
		}
	}
}

// checked gives what check prints.
func checked(t *testing.T, caseText, prices string) string {
	t.Helper()
	t.Chdir(t.TempDir())
	for name, text := range map[string]string{"case.yaml": caseText, "prices.csv": prices} {
		if err := os.WriteFile(name, []byte(text), 0o666); err != nil {
			t.Fatal(err)
		}
	}
	var out, message strings.Builder
	if code := run([]string{"check", "case.yaml"}, strings.NewReader(""), &out, &message); code != exitDone || message.Len() > 0 {
		t.Fatalf("exit code %d: %s", code, message.String())
	}
	return out.String()
}

// swapped gives the columns the other way round.
func swapped(table string) string {
	var b strings.Builder
	for line := range strings.Lines(table) {
		first, second, _ := strings.Cut(strings.TrimSuffix(line, "\n"), ",")
		b.WriteString(second + "," + first + "\n")
	}
	return b.String()
}

func withoutDigest(text string) string {
	before, rest, _ := strings.Cut(text, "price_sha256: ")
	_, after, _ := strings.Cut(rest, "\n")
	return before + after
}
