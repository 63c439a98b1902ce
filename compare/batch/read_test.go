package batch

import (
	"errors"
	"fmt"
	"slices"
	"strings"
	"testing"
)

func TestReadsTables(t *testing.T) {
	for name, text := range map[string]string{
		"plain":             "household.people,id,title\n2,a,x\n3,b,\n",
		"windows":           "household.people,id,title\r\n2,a,x\r\n3,b,\r\n",
		"byte order mark":   "\ufeffhousehold.people,id,title\n2,a,x\n3,b,\n",
		"no last line end":  "household.people,id,title\n2,a,x\n3,b,",
		"blanks":            " household.people , id ,title\n 2 ,a , x\n3, b,\n",
		"quoted":            "\"household.people\",id,title\n\"2\",a,\"x\"\n3,\"b\",\"\"\n",
		"empty lines about": "\nhousehold.people,id,title\n\n2,a,x\n3,b,\n\n",
	} {
		t.Run(name, func(t *testing.T) {
			table := tableOf(t, text)
			if !slices.Equal(table.Keys, []string{"household.people", "title"}) || !slices.Equal(table.Columns, []int{1, 3}) {
				t.Errorf("keys %q in columns %v", table.Keys, table.Columns)
			}
			if len(table.Rows) != 2 || table.Rows[1].ID != "b" || table.Rows[1].Number != 2 || !slices.Equal(table.Rows[0].Values, []string{"2", "x"}) {
				t.Errorf("rows %+v", table.Rows)
			}
			if want := tableOf(t, "household.people,id,title\n2,a,x\n3,b,\n").Digest(); table.Digest() != want {
				t.Error("the digest depends on the form of the file")
			}
		})
	}
}

// TestTellsAllThatIsWrong expects every problem of a table, each with its place and
// what to do.
func TestTellsAllThatIsWrong(t *testing.T) {
	for name, test := range map[string]struct {
		text string
		want []string
	}{
		"empty":        {" \n\t", []string{"t.csv:1: is empty: the first line names the columns"}},
		"no homes":     {"id,title\n", []string{"t.csv:1: has a heading but no home: add a line for each"}},
		"UTF-16":       {"\xff\xfei\x00d\x00", []string{"t.csv:1: is UTF-16: save it as CSV in UTF-8"}},
		"zero byte":    {"id\na\x00", []string{"t.csv:1: holds a zero byte"}},
		"Latin-1":      {"id,title\na,caf\xe9\n", []string{"t.csv:1: is not UTF-8: save it as CSV in UTF-8"}},
		"semicolons":   {"id;household.people\na;2\n", []string{`t.csv:1: names one column, "id;household.people": separate columns by commas`}},
		"open quote":   {"id,title\na,\"x\nb,y\n", []string{"t.csv:2: begins a value whose quotation marks do not end"}},
		"inner quote":  {"id,title\na,x\"y\n", []string{"t.csv:2: holds a quotation mark inside a value"}},
		"too long":     {"id\n" + strings.Repeat("x", LargestBytes), []string{"t.csv:1: is longer than a table can be"}},
		"unknown keys": {"id,household.peple,people\na,1,2\n", []string{"t.csv:1: column 2: household.peple is not known: did you mean people?", "t.csv:1: column 3: people is not known here: did you mean household.people?"}},
		"years":        {"id,years\na,3\n", []string{"t.csv:1: column 2: is years, which are the same for all homes: leave the column out and use --years"}},
		"twice":        {"id,title,title\na,x,y\n", []string{`t.csv:1: column 3: "title" is named a second time, first in column 2`}},
		"no id":        {"title\nx\n", []string{"t.csv:1: names no column id: add one"}},
		"big ID":       {"ID,title\na,x\n", []string{"names no column id", `t.csv:1: column 1: "ID" is not known: write id in small letters`}},
		"rows": {"id,title\na,x\n,y\na,z\nb\nc,d,e\n", []string{
			"t.csv:3: column 1 (id): is empty: give each home an id of its own",
			`t.csv:4: column 1 (id): "a" stands in line 2 already`,
			"t.csv:5: has 1 values, and the heading names 2 columns",
			"t.csv:6: has 3 values, and the heading names 2 columns",
		}},
		"odd ids": {"id\na\x1b[2J\n" + strings.Repeat("i", 101) + "\n", []string{
			"t.csv:2: column 1 (id): holds a character that cannot be printed", "t.csv:3: column 1 (id): is 101 bytes long, allowed up to 100",
		}},
	} {
		t.Run(name, func(t *testing.T) {
			_, err := Read("t.csv", []byte(test.text))
			var problems Problems
			if !errors.As(err, &problems) || len(problems) != len(test.want) {
				t.Fatalf("problems are\n%v\nwant %d", err, len(test.want))
			}
			for i, want := range test.want {
				if got := problems[i].Error(); !strings.Contains(got, want) {
					t.Errorf("got  %s\nwant %s", got, want)
				}
			}
		})
	}
}

func TestManyProblemsAreCutShort(t *testing.T) {
	_, err := Read("t.csv", []byte("id\n"+strings.Repeat("a\n", 100)))
	if err == nil || strings.Count(err.Error(), "\n") != mostShown || !strings.HasSuffix(err.Error(), "t.csv: and 49 more") {
		t.Errorf("message is\n%v", err)
	}
}

// TestEveryHomeIsInOnePart also holds the shares to be fair: of 4,000 homes in 4
// parts each has 1,000 give or take 4.5 standard deviations, sqrt(4000*3/16) = 27.
func TestEveryHomeIsInOnePart(t *testing.T) {
	const homes, parts = 4000, 4
	var counts [parts]int
	for i := range homes {
		in := 0
		for p := range parts {
			if (Part{p + 1, parts}).Has(fmt.Sprintf("home-%d", i)) {
				counts[p]++
				in++
			}
		}
		if in != 1 || !Whole().Has(fmt.Sprintf("home-%d", i)) {
			t.Fatalf("home %d is in %d parts", i, in)
		}
	}
	for p, n := range counts {
		if n < 1000-123 || n > 1000+123 {
			t.Errorf("part %d has %d homes", p+1, n)
		}
	}
}

func TestParsePart(t *testing.T) {
	if p, err := ParsePart("2/4"); err != nil || p != (Part{2, 4}) {
		t.Errorf("2/4 is %v (%v)", p, err)
	}
	for _, text := range []string{"", "2", "0/4", "5/4", "-1/4", "2/0", "a/b", "1/4/2", "1.5/4", "1/10001"} {
		if p, err := ParsePart(text); err == nil {
			t.Errorf("%q is %v", text, p)
		}
	}
}
