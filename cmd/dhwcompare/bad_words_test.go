package main

import "strings"

// badTables lists tables of homes that are refused before any work begins.
func badTables() []badInput {
	table := func(name, text, want string) badInput {
		return badInput{name: name, args: []string{"batch", "homes.csv", "--base", "case.yaml", "--years", "1", "--out", "out"},
			files: map[string]string{"case.yaml": soundCase, "homes.csv": text}, want: want}
	}
	return []badInput{
		table("empty table", "",
			"homes.csv:1: is empty: the first line names the columns, id and keys of a case such as household.people"),
		table("table without homes", "id,household.people\n",
			"homes.csv:1: has a heading but no home: add a line for each"),
		table("table without id", "household.people\n3\n",
			"homes.csv:1: names no column id: add one, with a text of its own for each home"),
		table("column unknown", "id,household.peple\na,3\n",
			"homes.csv:1: column 2: household.peple is not known: did you mean people?"),
		table("column twice", "id,household.people,household.people\na,3,3\n",
			`homes.csv:1: column 3: "household.people" is named a second time, first in column 2: leave one out`),
		table("column without a name", "id,\na,3\n",
			"homes.csv:1: column 2: has no name: name a key of a case, such as household.people, or leave the column out"),
		table("section for a column", "id,household\na,3\n",
			"homes.csv:1: column 2: household is a group of keys: name one of them, such as household.people"),
		table("id twice", "id\na\na\n",
			`homes.csv:3: column 1 (id): "a" stands in line 2 already: give each home an id of its own`),
		table("id left out", "id,household.people\n,3\n",
			"homes.csv:2: column 1 (id): is empty: give each home an id of its own"),
		table("id with an escape", "id\n\x1b[2Ja\n",
			"homes.csv:2: column 1 (id): holds a character that cannot be printed: use letters, digits and signs"),
		table("long id", "id\n"+strings.Repeat("a", 201)+"\n",
			"homes.csv:2: column 1 (id): is 201 bytes long, allowed up to 100: shorten it"),
		table("too few values", "id,household.people\na\n",
			"homes.csv:2: has 1 values, and the heading names 2 columns: give each column a value, or nothing between the commas for that of the base case"),
		table("too many values", "id,household.people\na,3,4\n",
			"homes.csv:2: has 3 values, and the heading names 2 columns: give each column a value, or nothing between the commas for that of the base case"),
		table("semicolons in a table", "id;household.people\na;3\n",
			`homes.csv:1: names one column, "id;household.people": separate columns by commas`),
		table("open quote in a table", "id,title\na,\"open\n",
			"homes.csv:2: begins a value whose quotation marks do not end where the value does: close them, and double those inside it"),
		table("quote inside a cell", "id,title\na,op\"en\n",
			"homes.csv:2: holds a quotation mark inside a value: put the value in quotation marks and double those inside it"),
		table("workbook for a table", "PK\x03\x04\x14\x00\x06\x00",
			"homes.csv:1: holds a zero byte, so it is no text: save the table as CSV in UTF-8"),
		table("table in UTF-16", "\xff\xfei\x00d\x00",
			"homes.csv:1: is UTF-16: save it as CSV in UTF-8"),
		table("table in Latin-1", "id,title\na,Caf\xe9\n",
			"homes.csv:1: is not UTF-8: save it as CSV in UTF-8"),
		table("table of 70 megabytes", "id\n"+strings.Repeat("a home far too many\n", 70_000_000/20),
			"homes.csv:1: is longer than a table can be (67108864 bytes): split it"),
	}
}

// badHomes lists batches whose base case or parts are refused.
func badHomes() []badInput {
	batch := func(name string, files map[string]string, want string, args ...string) badInput {
		return badInput{name: name, args: append([]string{"batch"}, args...), files: files, want: want}
	}
	homes := map[string]string{"homes.csv": "id\na\n", "case.yaml": soundCase, "bad.yaml": strings.Replace(soundCase, "people: 3", "people: 33", 1)}
	return []badInput{
		batch("batch without table", homes,
			"dhwcompare: batch needs a table of homes"+
				"\nhint: such as dhwcompare batch homes.csv --base base.yaml",
			"--base", "case.yaml"),
		batch("batch without base", homes,
			"dhwcompare: batch needs a base case"+
				"\nhint: name it by --base base.yaml; dhwcompare new base.yaml writes one to start from",
			"homes.csv"),
		batch("no such table", homes,
			"dhwcompare: none.csv: cannot be read: no such file or directory"+
				"\nhint: name the table of homes, a CSV file",
			"none.csv", "--base", "case.yaml"),
		batch("base with a fault", homes,
			"bad.yaml:2: household.people is 33, allowed 1 to 12: give the number of people who live there",
			"homes.csv", "--base", "bad.yaml"),
		batch("case for a table", homes,
			"case.yaml:1: names no column id: add one, with a text of its own for each home"+
				"\n"+`case.yaml:1: column 1: "household:" is not known: did you mean household?`,
			"case.yaml", "--base", "case.yaml"),
		batch("table for a base", homes,
			"homes.csv:1: the file is id a, allowed a group of keys: begin with a key such as household",
			"homes.csv", "--base", "homes.csv"),
		batch("part beyond the last", homes,
			`dhwcompare: --part "3/2" is not a part such as 2/4, the first number from 1 to the second, the second up to 10000`+
				"\nhint: --part 2/4 is the second of four parts",
			"homes.csv", "--base", "case.yaml", "--part", "3/2"),
		batch("part in words", homes,
			`dhwcompare: --part "second" is not a part such as 2/4, the first number from 1 to the second, the second up to 10000`+
				"\nhint: --part 2/4 is the second of four parts",
			"homes.csv", "--base", "case.yaml", "--part", "second"),
		batch("merge of nothing", homes,
			"dhwcompare: merge needs the folders of the parts"+
				"\nhint: such as dhwcompare batch merge --out portfolio part-1 part-2",
			"merge", "--out", "out"),
		batch("merge of no folder", homes,
			"dhwcompare: nowhere is no folder of a batch's results: no such file or directory"+
				"\nhint: name the folders that dhwcompare batch --part wrote",
			"merge", "--out", "out", "nowhere"),
		batch("merge of a file", homes,
			"dhwcompare: homes.csv is no folder of a batch's results: not a directory"+
				"\nhint: name the folders that dhwcompare batch --part wrote",
			"merge", "--out", "out", "homes.csv"),
		batch("merge of other things", map[string]string{"part/batch.json": "{}"},
			`dhwcompare: part has the form "", and this program writes "dhwcompare-batch-1": run the part again`+
				"\nhint: name the folders that dhwcompare batch --part wrote",
			"merge", "--out", "out", "part"),
		batch("merge into a part", homes,
			`dhwcompare: --out "part" is one of the parts, and would replace it`+
				"\nhint: name another folder",
			"merge", "--out", "part", "part"),
	}
}

// flagged is a call of the program beside a sound case.
func flagged(name, want string, args ...string) badInput {
	return badInput{name: name, args: args, files: map[string]string{"home.yaml": soundCase}, want: want}
}

// badFlags lists flags that are refused.
func badFlags() []badInput {
	return []badInput{
		flagged("no years",
			`dhwcompare: --years "0" is not a whole number from 1 to 1000`+
				"\nhint: leave --years out to use that of the case",
			"run", "--years", "0"),
		flagged("half years",
			`dhwcompare: --years "2.5" is not a whole number from 1 to 1000`+
				"\nhint: write digits only, without point, comma or power",
			"run", "--years", "2.5"),
		flagged("years in words",
			`dhwcompare: --years "many" is not a whole number from 1 to 1000`+
				"\nhint: leave --years out to use that of the case",
			"run", "--years", "many"),
		flagged("a million years",
			`dhwcompare: --years "1000000" is not a whole number from 1 to 1000`+
				"\nhint: leave --years out to use that of the case",
			"run", "--years", "1000000"),
		flagged("years below zero",
			`dhwcompare: --years "-3" is not a whole number from 1 to 1000`+
				"\nhint: negative numbers have no meaning here",
			"run", "--years=-3"),
		flagged("years left out",
			"dhwcompare: --years needs a value"+
				"\nhint: such as --years 20",
			"run", "--years"),
		flagged("seed below zero",
			`dhwcompare: --seed "-1" is not a whole number from 0 to 9007199254740991`+
				"\nhint: negative numbers have no meaning here",
			"run", "--seed", "-1"),
		flagged("seed too large",
			`dhwcompare: --seed "99999999999999999999" is not a whole number from 0 to 9007199254740991`+
				"\nhint: leave --seed out to use that of the case",
			"run", "--seed", "99999999999999999999"),
		flagged("seed twice",
			`dhwcompare: --seed "2" is given a second time`+
				"\nhint: give --seed once",
			"run", "--seed", "1", "--seed", "2"),
	}
}

// badPlaces lists flags that name no place to write to, and flags that are not there.
func badPlaces() []badInput {
	return []badInput{
		flagged("folder without a name",
			`dhwcompare: --out "" is empty`+
				"\nhint: give it a value, such as --out results",
			"run", "--out="),
		flagged("folder that is a flag",
			`dhwcompare: --out "--quiet" looks like the next flag: the value is missing`+
				"\nhint: give it a value, such as --out results",
			"run", "--out", "--quiet"),
		flagged("folder that is a stream",
			`dhwcompare: --out "-": a folder of results cannot go to standard output`+
				"\nhint: --json prints the comparison",
			"run", "--out", "-"),
		flagged("quiet with a value",
			`dhwcompare: --quiet takes no value, and "perhaps" is given`+
				"\nhint: write --quiet alone",
			"run", "--quiet=perhaps"),
		flagged("trace to a stream",
			`dhwcompare: --trace "-": the trace cannot go to standard output`+
				"\nhint: name a file, such as --trace year1.csv",
			"run", "--trace", "-"),
		flagged("trace among the results",
			`dhwcompare: --trace "dhwcompare-out/t.csv" lies in the folder of results "dhwcompare-out", which is replaced as a whole`+
				"\nhint: name a file outside it, such as --trace year1.csv",
			"run", "--trace", "dhwcompare-out/t.csv"),
		flagged("trace over the case",
			`dhwcompare: --trace "./home.yaml" is the case file, and would overwrite it`+
				"\nhint: name another file, such as --trace year1.csv",
			"run", "home.yaml", "--trace", "./home.yaml"),
		flagged("typing slip in a flag",
			`dhwcompare: dhwcompare run has no flag "yeers"`+
				"\nhint: did you mean --years?",
			"run", "--yeers", "3"),
		flagged("short flag",
			`dhwcompare: dhwcompare run has no flag "o"`+
				"\nhint: did you mean --out?",
			"run", "-o", "results"),
		flagged("unknown flag",
			`dhwcompare: dhwcompare run has no flag "colour"`+
				"\nhint: see dhwcompare run --help",
			"run", "--colour"),
		flagged("flag of another command",
			`dhwcompare: dhwcompare check has no flag "out"`+
				"\nhint: see dhwcompare check --help",
			"check", "--out", "x", "home.yaml"),
		flagged("flag without a command",
			`dhwcompare: dhwcompare has no flag "json"`+
				"\nhint: see dhwcompare --help",
			"--json"),
		flagged("pause of nothing",
			`dhwcompare: --pause "0" is not a number from 1 to 60`+
				"\nhint: leave --pause out to use that of the case",
			"drawoff", "--pause", "0"),
		flagged("pause in words",
			`dhwcompare: --pause "soon" is not a number from 1 to 60`+
				"\nhint: leave --pause out to use that of the case",
			"drawoff", "--pause", "soon"),
		flagged("pause of another command",
			`dhwcompare: dhwcompare size has no flag "pause"`+
				"\nhint: see dhwcompare size --help",
			"size", "--pause", "3"),
	}
}

// badWords lists commands and files that are refused.
func badWords() []badInput {
	words := func(name, want string, args ...string) badInput {
		return badInput{name: name, args: args, files: map[string]string{"home.yaml": soundCase, "folder/x": ""}, want: want}
	}
	return []badInput{
		words("typing slip in a command",
			`dhwcompare: there is no command "rnu"`+
				"\nhint: did you mean dhwcompare run?",
			"rnu"),
		words("no such command",
			`dhwcompare: there is no command "frobnicate"`+
				"\nhint: the commands are run, new, check, size, sensitivity, drawoff, settings, batch, licences; see dhwcompare --help",
			"frobnicate"),
		words("no command but a case",
			`dhwcompare: there is no command "home.yaml"`+
				"\nhint: did you mean dhwcompare run home.yaml?",
			"home.yaml"),
		words("two cases to run",
			`dhwcompare: run takes one file, and 2 are given: ["home.yaml" "other.yaml"]`+
				"\nhint: such as dhwcompare run home.yaml",
			"run", "home.yaml", "other.yaml"),
		words("no such case",
			"dhwcompare: none.yaml: there is no such file"+
				"\nhint: check the name; dhwcompare new none.yaml writes a case to start from",
			"run", "none.yaml"),
		words("folder for a case",
			"dhwcompare: folder: is a folder, not a case file"+
				"\nhint: name the case file in it",
			"run", "folder"),
		words("case without a name",
			"dhwcompare: run needs a case file, and the name given is empty"+
				"\nhint: such as dhwcompare run home.yaml",
			"run", ""),
		words("name that steers a terminal",
			"dhwcompare: no[2Jsuch.yaml: there is no such file"+
				"\nhint: check the name; dhwcompare new no[2Jsuch.yaml writes a case to start from",
			"run", "no\x1b[2Jsuch\u202e.yaml"),
		words("empty standard input",
			"standard input:1: the file is empty: 'dhwcompare new FILE' writes a case to start from",
			"run", "-"),
		words("nothing to check",
			"dhwcompare: check needs the case file to check"+
				"\nhint: such as dhwcompare check home.yaml",
			"check"),
		words("nothing to write",
			"dhwcompare: new needs the name of the file to write"+
				"\nhint: such as dhwcompare new home.yaml",
			"new"),
		words("two files to write",
			`dhwcompare: new takes one file, and 2 are given: ["a.yaml" "b.yaml"]`+
				"\nhint: such as dhwcompare new home.yaml",
			"new", "a.yaml", "b.yaml"),
		words("new on a stream",
			`dhwcompare: new "-": the case is written to a file, not to standard output`+
				"\nhint: such as dhwcompare new home.yaml",
			"new", "-"),
		words("licences of a file",
			`dhwcompare: licences takes no file, and "home.yaml" is given`+
				"\nhint: it is just dhwcompare licences",
			"licences", "home.yaml"),
	}
}
