package casefile

import (
	"bytes"
	"regexp"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// The case to start from gives the defaults, and says that its home is invented.
func TestTemplateIsTheExample(t *testing.T) {
	c, _, err := Load("new.yaml", Template(), nil)
	if err != nil {
		t.Fatal(err)
	}
	want := example()
	if diff := cmp.Diff(&want, c); diff != "" {
		t.Error(diff)
	}
	if !strings.Contains(c.Title, "Invented") {
		t.Errorf("title %q", c.Title)
	}
}

// Whoever takes away the # in front of every key with a default gets the same
// case.
func TestTemplateWithoutItsMarks(t *testing.T) {
	key := regexp.MustCompile(`(?m)^( *)# ((?:  |- )*[a-z_0-9]+:(?: .*)?|  +- .*)$`)
	follows := regexp.MustCompile(`(?m)^.*follows from.*\n(?: *[a-z_]+: [^#\n]*\n)?`)
	data := key.ReplaceAll(Template(), []byte("$1$2"))
	data = follows.ReplaceAll(data, nil)
	if bytes.Count(data, []byte(":")) < 40 {
		t.Fatalf("the marks are not found:\n%s", data)
	}
	c, _, err := Load("new.yaml", data, nil)
	if err != nil {
		t.Fatalf("%v\n%s", err, data)
	}
	want := example()
	if diff := cmp.Diff(&want, c); diff != "" {
		t.Error(diff)
	}
}

// The demo says that it is invented, and estimates no mains temperatures.
func TestDemo(t *testing.T) {
	c, _, err := Load("demo.yaml", Demo(), nil)
	if err != nil {
		t.Fatal(err)
	}
	if !strings.HasPrefix(c.Title, "Invented demo home") || len(c.Tariffs) != 3 || c.Climate.MainsC == nil {
		t.Errorf("the demo is %q with %d tariffs", c.Title, len(c.Tariffs))
	}
	first := Demo()
	first[0] = '!'
	if Demo()[0] == '!' {
		t.Error("whoever changes the demo changes it for all")
	}
}
