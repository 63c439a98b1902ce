#!/usr/bin/env bash
# The speed of the vessel and of a compact store's year beside the same in C and beside
# a general solver, with the error of each in the same table. By hand, on a quiet
# machine, from anywhere:
#
#   testdata/speed/compare.sh [ROUNDS]
#
# It needs Go, gcc and, for the rows of CVODE, Debian's libsundials-dev; three rounds
# take about eight minutes. All programs take turns in each round and the least time of
# each counts, so that a busy moment of the machine favours none.
#
# Rows, for each case of testdata/solver:
# Rows that no way reaches are left out.
#
#   Go          this program, in the steps that its plant takes in such a state
#   C, fair     plain fixed steps, equal layers, the fastest step and faces that stay
#               within 0.3 K of outlet and 0.3 % of energy (or are no worse than Go)
#   C, as good  the same, no worse than Go (0.05 K and 0.05 % count as exact: so far the
#               tables themselves are sure)
#   CVODE, fair / as good   likewise, with cells, method, tolerance and mixing at choice
#   C, fine     1 s and four times the layers
# and for the year (compare/plant's home of two people; see year.c for what is equal): Go;
# C, fair (equal layers); C, as good (its heat delivered within 0.3 % too, up to three
# times the layers); C, fine.
set -euo pipefail
cd "$(dirname "$0")/../.."
rounds=${1:-3}
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

CC=(gcc -std=c11 -O3 -march=native -Wall -Wextra)
"${CC[@]}" -o "$work/cases" testdata/speed/cases.c -lm
"${CC[@]}" -o "$work/year" testdata/speed/year.c -lm
if ! "${CC[@]}" -o "$work/cvode" testdata/speed/cvode.c -lsundials_cvode -lsundials_nvecserial -lm 2>"$work/why"; then
	echo "no rows of CVODE, as it does not build here (libsundials-dev): $(head -n 1 "$work/why")" >&2
	rm -f "$work/cvode"
fi
go test -c -o "$work/vessel.test" ./compare/vessel
go test -c -o "$work/plant.test" ./compare/plant
(cd compare/plant && "$work/plant.test" -test.run '^TestYearInputs' -year-inputs "$work/inputs" >/dev/null)

# metric LINE UNIT gives the figure that stands before a unit in a line of a benchmark.
metric() { awk -v unit="$2" '{ for (i = 2; i <= NF; i++) if ($i == unit) print $(i - 1) }' <<<"$1"; }
# larger A B
larger() { awk -v a="$1" -v b="$2" 'BEGIN { print (a > b ? a : b) }'; }
seconds() { case $1 in compact_*) echo 600 ;; cylinder_draw) echo 1500 ;; cylinder_reheat) echo 3600 ;; esac; }
# add CASE PROGRAM STEP LAYERS NS_PER_HOUR ERROR ERROR NOTE keeps a row, tab separated.
add() { (IFS=$'\t' && echo "$*") >>"$work/rows"; }
# per_hour NS SECONDS
per_hour() { awk -v ns="$1" -v s="$2" 'BEGIN { printf "%.1f", ns * 3600 / s }'; }
# keep PROGRAM reads a line of cases or cvode: "label case step layers ns K share way".
keep() {
	local _ name step layers ns outlet energy way
	while read -r _ name step layers ns outlet energy way; do
		add "$name" "$1" "$step" "$layers" "$(per_hour "$ns" "$(seconds "$name")")" \
			"$(awk -v k="$outlet" 'BEGIN { printf "%.3f K", k }')" "$(awk -v e="$energy" 'BEGIN { printf "%.2f %%", 100 * e }')" "$way"
	done
}

declare -A layers outlet energy
go_cases() {
	local line name s
	while read -r line; do
		name=${line#*/} name=${name%%[-[:space:]]*}
		s=$(seconds "$name")
		layers[$name]=$(metric "$line" layers) layers[$name]=${layers[$name]%.*}
		outlet[$name]=$(awk -v x="$(metric "$line" outlet-mK)" 'BEGIN { print x / 1e3 }')
		energy[$name]=$(awk -v x="$(metric "$line" energy-ppm)" 'BEGIN { print x / 1e6 }')
		echo "go $name $(awk -v s="$s" -v n="$(metric "$line" steps)" 'BEGIN { printf "%.3g", s / n }')" \
			"${layers[$name]} $(metric "$line" least-ns) ${outlet[$name]} ${energy[$name]} mean step" >>"$work/go"
	done < <(cd compare/vessel && "$work/vessel.test" -test.run '^$' -test.bench SolverCases -test.benchtime 300ms | grep '^Benchmark')
	keep "Go" <"$work/go"
	rm "$work/go"
}

# bounds CASE fair|good gives the outlet's error in K and the energy's as a share.
bounds() {
	local k=0.3 share=0.003
	[ "$2" = fair ] || { k=0.05 share=0.0005; }
	echo "$(larger "$k" "${outlet[$1]}") $(larger "$share" "${energy[$1]}")"
}

c_cases() {
	local name
	for name in "${!layers[@]}"; do
		local fine=$((4 * layers[$name]))
		# shellcheck disable=SC2046 # two words each
		"$work/cases" testdata/solver "$name" "${layers[$name]}" "$fine" $(bounds "$name" fair) >"$work/c"
		grep '^fair' "$work/c" | keep "C, fair" || true
		grep '^fine' "$work/c" | keep "C, fine"
		"$work/cases" testdata/solver "$name" "${layers[$name]}" "$fine" $(bounds "$name" good) >"$work/c"
		grep '^fair' "$work/c" | keep "C, as good" || true
	done
}

cvode_cases() {
	[ -x "$work/cvode" ] || return 0
	local name
	for name in "${!layers[@]}"; do
		# shellcheck disable=SC2046
		"$work/cvode" testdata/solver "$name" "${layers[$name]}" $(bounds "$name" fair) | keep "CVODE, fair"
		# shellcheck disable=SC2046
		"$work/cvode" testdata/solver "$name" "${layers[$name]}" $(bounds "$name" good) | keep "CVODE, as good"
	done
}

# away GOT WANT
away() { awk -v a="$1" -v b="$2" 'BEGIN { printf "%.2f %%", 100 * (a / b - 1 < 0 ? 1 - a / b : a / b - 1) }'; }
go_year() {
	local line
	line=$(cd compare/plant && "$work/plant.test" -test.run '^$' -test.bench YearBesideC -test.benchtime 1s | grep '^Benchmark')
	fine_wh=$(metric "$line" fine-Wh) fine_failing=$(metric "$line" fine-failing)
	set_year_bounds "$(metric "$line" Wh)" "$fine_wh" "$(metric "$line" failing)" "$fine_failing"
	add compact_year "Go" "$(awk -v n="$(metric "$line" steps)" 'BEGIN { printf "%.3g", 8760 * 3600 / n }')" "$(metric "$line" layers | sed 's/\..*//')" \
		"$(per_hour "$(metric "$line" least-ns)" 31536000)" "$(metric "$line" failing | sed 's/\..*//') of ${fine_failing%.*}" \
		"$(away "$(metric "$line" Wh)" "$fine_wh")" "mean step; against the stored fine year"
}

# The accuracy asked of the year, 0.3 % of electricity and 1 % of failing showers or one,
# or that of the Go year where it is worse.
set_year_bounds() {
	year_bounds=$(awk -v wh="$1" -v fine="$2" -v n="$3" -v m="$4" '
		function off(x) { return x < 0 ? -x : x }
		function most(a, b) { return a > b ? a : b }
		BEGIN { print most(0.003, off(wh / fine - 1)), int(most(most(1, 0.01 * m), off(n - m))) }')
}

c_year() {
	local label step n ns kwh failing _ faces fine_kwh fine_c
	"$work/year" "$work/inputs" $year_bounds >"$work/y"
	read -r _ _ _ _ fine_kwh fine_c _ < <(grep '^fine' "$work/y")
	while read -r label step n ns kwh failing _ _ _ faces; do
		if [ "$label" != fine ]; then
			add compact_year "C, ${label/good/as good}" "$step" "$n" "$(per_hour "$ns" 31536000)" "$failing of $fine_c" "$(away "$kwh" "$fine_kwh")" \
				"$faces; against the fine year in C"
		else
			add compact_year "C, fine" "$step" "$n" "$(per_hour "$ns" 31536000)" "$failing of ${fine_failing%.*}" \
				"$(away "${kwh}" "$(awk -v w="$fine_wh" 'BEGIN { print w / 1000 }')")" "$faces; against the stored fine year"
		fi
	done <"$work/y"
}

for ((round = 1; round <= rounds; round++)); do
	echo "round $round of $rounds" >&2
	go_cases
	c_cases
	go_year
	c_year
	cvode_cases
done

# The least time of each row, and all beside Go's.
awk -F'\t' '
	!($1 in seen) { seen[$1]; order[++cases] = $1 }
	{ key = $1 FS $2; if (!(key in ns) || $5 < ns[key]) { ns[key] = $5; row[key] = $0 } }
	# What is as good as Go is also fair.
	function fairest(name, kind,    good, fair) {
		good = name FS kind ", as good"
		fair = name FS kind ", fair"
		if (name == "compact_year" || !(good in row) || (fair in row && ns[fair] <= ns[good])) return
		ns[fair] = ns[good]
		row[fair] = row[good]
	}
	END {
		printf "%-21s %-15s %7s %6s %12s %9s %8s %12s %8s  %s\n", "case", "program", "step s", "layers", "us per hour", "ns/layer", "to Go", "outlet*", "energy*", "how"
		split("compact_year compact_draw compact_draw_charged cylinder_draw cylinder_reheat", list, " ")
		programs = split("Go|C, fair|C, as good|CVODE, fair|CVODE, as good|C, fine", program, "|")
		for (i = 1; i in list; i++) {
			fairest(list[i], "C")
			fairest(list[i], "CVODE")
			for (p = 1; p <= programs; p++) {
				key = list[i] FS program[p]
				if (!(key in row)) continue
				split(row[key], f, FS)
				printf "%-21s %-15s %7s %6s %12.3f %9.2f %8.2f %12s %8s  %s\n", f[1], program[p], f[3], f[4], f[5] / 1000, f[5] * f[3] / 3600 / f[4], f[5] / ns[list[i] FS "Go"], f[6], f[7], f[8]
			}
		}
		print "ns/layer: time of one layer in one step; * of the year: failing showers, and electricity"
		printf "a year of the compact store, ms:"
		for (p = 1; p <= programs; p++)
			if (("compact_year" FS program[p]) in ns) printf " %s %.1f;", program[p], ns["compact_year" FS program[p]] * 8760 / 1e6
		print ""
	}' "$work/rows"
