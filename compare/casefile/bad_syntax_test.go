package casefile

import (
	"strings"
	"testing"
)

func TestBadSyntax(t *testing.T) {
	refused(t, []badInput{
		{"empty", "",
			"case.yaml:1: the file is empty: 'dhwcompare new FILE' writes a case to start from"},
		{"comment only", "# nothing\n",
			"case.yaml:1: the file is empty: 'dhwcompare new FILE' writes a case to start from"},
		{"blank lines", "\n\n\n",
			"case.yaml:1: the file is empty: 'dhwcompare new FILE' writes a case to start from"},
		{"null document", "null\n",
			"case.yaml:1: the file is empty: 'dhwcompare new FILE' writes a case to start from"},
		{"only a marker", "---\n",
			"case.yaml:1: the file is empty: 'dhwcompare new FILE' writes a case to start from"},
		{"scalar", "hello\n",
			"case.yaml:1: the file is hello, allowed a group of keys: begin with a key such as household"},
		{"list", "- household\n- climate\n",
			"case.yaml:1: the file is a list of 2, allowed a group of keys: begin with a key such as household"},
		{"json list", "[1, 2]",
			"case.yaml:1: the file is a list of 2, allowed a group of keys: begin with a key such as household"},
		{"two documents", sound + "---\n" + sound,
			"case.yaml:5: begins a second document (---): a file holds one case, put the other in a file of its own"},
		{"second document bad", sound + "---\nx: [\n",
			"case.yaml:6: is not sound YAML: did not find expected node content: look at the indent, the colons and the quotes of this line and the one before"},
		{"not yaml", "household: people: 3\n",
			"case.yaml:1: is not sound YAML: a colon stands where none can: quote a text that holds one, and indent keys of a group alike"},
		{"csv", "people,bath\n3,yes\n",
			"case.yaml:1: the file is people,bath 3,yes, allowed a group of keys: begin with a key such as household"},
		{"html", "<html>\n<body>\n</body></html>\n",
			"case.yaml:1: the file is <html> <body> </body></html>, allowed a group of keys: begin with a key such as household"},
		{"unclosed quote", with("title: \"open\n"),
			"case.yaml:5: is not sound YAML: a quote or a bracket near this line, or above it, is never closed"},
		{"unclosed bracket", "household:\n  people: 3\nclimate:\n  outdoor_c: [4, 5, 6\n",
			"case.yaml:3: is not sound YAML: a quote or a bracket near this line, or above it, is never closed"},
		{"bad indent", "household:\n  people: 3\n   has_bath: true\n",
			"case.yaml:3: is not sound YAML: a colon stands where none can: quote a text that holds one, and indent keys of a group alike"},
		{"tab indent", "household:\n\tpeople: 3\n",
			"case.yaml:2: is not sound YAML: a tab stands in the indent of this line: indent with spaces"},
		{"tab and spaces", "household:\n  people: 3\n  \thas_bath: true\n",
			"case.yaml:2: is not sound YAML: a tab stands in the indent of this line: indent with spaces"},
		{"at sign", with("title: @home\n"),
			"case.yaml:5: is not sound YAML: a value begins with a sign that has a meaning of its own: put the text in quotes"},
		{"percent sign", with("title: %home\n"),
			"case.yaml:5: is not sound YAML: a value begins with a sign that has a meaning of its own: put the text in quotes"},
	})
}

func TestBadBytes(t *testing.T) {
	refused(t, []badInput{
		{"zero byte", "household:\n  people: 3\x00\n",
			"case.yaml:2: holds a zero byte: this is no text file"},
		{"binary", "\x7fELF\x02\x01\x01\x00\x00",
			"case.yaml:1: holds a zero byte: this is no text file"},
		{"png", "\x89PNG\r\n\x1a\n\x00\x00",
			"case.yaml:3: holds a zero byte: this is no text file"},
		{"zip", "PK\x03\x04\x14\x00",
			"case.yaml:1: holds a zero byte: this is no text file"},
		{"latin-1", "title: Caf\xe9\n",
			"case.yaml:1: holds the byte 0xe9, which is not UTF-8 (in Latin-1 it is 'é'): save the file as UTF-8"},
		{"control character", "title: a\x1b[31mb\n",
			"case.yaml:1: holds the control character 0x1b: delete it"},
		{"utf-16", "\xff\xfeh\x00o\x00",
			"case.yaml:1: the file is UTF-16: save it as UTF-8"},
		{"too large", strings.Repeat("# filler\n", 200000),
			"case.yaml:1: the file has 1800000 bytes, allowed up to 1048576: a case is small, check that this is the right file"},
		{"deep", strings.Repeat("[", 20000),
			"case.yaml:1: is not sound YAML: values lie deeper than in any case: look for brackets that are never closed"},
		{"deep maps", "household: " + strings.Repeat("{a: ", 50) + strings.Repeat("}", 50) + "\n",
			"case.yaml:1: household.people is missing: give the number of people who live there" + "\n" +
				"case.yaml:1: climate.outdoor_c is missing: give monthly means in °C, January first" + "\n" +
				"case.yaml:1: household.a is not known: leave it out; 'dhwcompare check' prints a sound case with every key there is"},
		{"yaml directive", "%YAML 3.0\n---\n" + sound,
			"case.yaml:1: is not sound YAML: found incompatible YAML document: look at the indent, the colons and the quotes of this line and the one before"},
	})
}

func TestBadReferences(t *testing.T) {
	refused(t, []badInput{
		{"duplicate key", withHousehold("  people: 4\n"),
			"case.yaml:3: household.people stands twice, first in line 2: keep one of the two"},
		{"duplicate section", with("household:\n  people: 2\n"),
			"case.yaml:5: household stands twice, first in line 1: keep one of the two"},
		{"duplicate title", "title: a\ntitle: b\n" + sound,
			"case.yaml:2: title stands twice, first in line 1: keep one of the two"},
		{"anchor", strings.Replace(sound, "people: 3", "people: &n 3", 1),
			`case.yaml:2: household.people carries the mark "&n": a case has no references, write the value alone`},
		{"alias", withHousehold("  bathrooms: *n\n"),
			`case.yaml:3: refers to "*n", which the file does not have: write the value itself`},
		{"alias known", strings.Replace(sound, "people: 3", "people: &n 3\n  bathrooms: *n", 1),
			`case.yaml:2: household.people carries the mark "&n": a case has no references, write the value alone` + "\n" +
				`case.yaml:3: household.bathrooms refers to "*n" elsewhere in the file: write the value itself`},
		{"merge", "base: &b\n  people: 3\nhousehold:\n  <<: *b\nclimate:\n  outdoor_c: [4, 5, 6, 9, 12, 15, 17, 16, 14, 11, 7, 4]\n",
			"case.yaml:1: base is not known: did you mean dwelling.base_c?" + "\n" +
				"case.yaml:4: household merges keys from elsewhere (<<): write the keys themselves"},
		{"anchored section", "household: &h\n  people: 3\nclimate:\n  outdoor_c: [4, 5, 6, 9, 12, 15, 17, 16, 14, 11, 7, 4]\n",
			`case.yaml:1: household carries the mark "&h": a case has no references, write the value alone`},
		{"tag", strings.Replace(sound, "people: 3", "people: !!int 3", 1),
			`case.yaml:2: household.people carries the tag "!!int": write the value alone`},
		{"foreign tag", withHousehold("  rhythm: !!python/object even\n"),
			`case.yaml:3: household.rhythm carries the tag "!!python/object": write the value alone`},
		{"local tag", withHousehold("  away: !days []\n"),
			`case.yaml:3: household.away carries the tag "!days": write the value alone`},
		{"complex key", "? [a, b]\n: 1\n" + sound,
			"case.yaml:1: has a key that is no plain word: write a name and a colon"},
		{"bomb", "a: &a [x,x,x]\nb: &b [*a,*a,*a]\nc: &c [*b,*b,*b]\n" + sound,
			"case.yaml:1: a is not known: leave it out; 'dhwcompare check' prints a sound case with every key there is" + "\n" +
				"case.yaml:2: b is not known: leave it out; 'dhwcompare check' prints a sound case with every key there is" + "\n" +
				"case.yaml:3: c is not known: leave it out; 'dhwcompare check' prints a sound case with every key there is"},
	})
}

func TestMissingAndMisplaced(t *testing.T) {
	refused(t, []badInput{
		{"missing people", "household:\n  has_bath: true\nclimate:\n  outdoor_c: [4, 5, 6, 9, 12, 15, 17, 16, 14, 11, 7, 4]\n",
			"case.yaml:1: household.people is missing: give the number of people who live there"},
		{"missing section", "household:\n  people: 3\n",
			"case.yaml:1: climate.outdoor_c is missing: give monthly means in °C, January first"},
		{"missing both", "title: x\n",
			"case.yaml:1: household.people is missing: give the number of people who live there" + "\n" +
				"case.yaml:1: climate.outdoor_c is missing: give monthly means in °C, January first"},
		{"section as null", with("mains: ~\n"),
			"case.yaml:5: mains has no value: give one, or leave the key out"},
		{"null value", withHousehold("  bathrooms: ~\n"),
			"case.yaml:3: household.bathrooms has no value: give one, or leave the key out"},
		{"null word", withHousehold("  bathrooms: null\n"),
			"case.yaml:3: household.bathrooms has no value: give one, or leave the key out"},
		{"no value", withHousehold("  bathrooms:\n"),
			"case.yaml:3: household.bathrooms has no value: give one, or leave the key out"},
		{"section as number", with("mains: 3\n"),
			"case.yaml:5: mains is 3, allowed a group of keys: put them below it, indented by two spaces"},
		{"section as list", with("mains: [1, 2]\n"),
			"case.yaml:5: mains is a list of 2, allowed a group of keys: put them below it, indented by two spaces"},
		{"value as group", withHousehold("  bathrooms: {n: 1}\n"),
			"case.yaml:3: household.bathrooms is a group of keys, allowed a whole number from 1 to 6: leave it out for the default, 1"},
		{"value as list", withHousehold("  bathrooms: [1]\n"),
			"case.yaml:3: household.bathrooms is a list of 1, allowed a whole number from 1 to 6: leave it out for the default, 1"},
	})
}
