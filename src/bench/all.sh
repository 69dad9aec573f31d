#!/usr/bin/env bash
# All figures that are ratios, in one run, and a plot of them: target/bench/figures.tsv and figures.svg. Takes about half an hour with the
# times below; needs what each script needs, and gnuplot (Debian: gnuplot-nox, libreoffice-calc). ONLY names some of the scripts.
set -euo pipefail
here=$(cd "$(dirname "$0")" && pwd)
out=$here/../../target/bench
mkdir -p "$out"
export SECONDS_EACH=${SECONDS_EACH:-10} ROUNDS=${ROUNDS:-5}
for script in ${ONLY:-run trace balance labels history spreadsheet}; do
  echo "== $script"
  warm=60
  [ "$script" != run ] || warm=300 # what runs longest settles last
  SECONDS_WARM=${SECONDS_WARM:-$warm} bash "$here/$script.sh" 2>&1 | tee "$out/$script.txt"
done

median() { sort -n | awk '{v[NR] = $1} END {if (NR) print (NR % 2 ? v[(NR + 1) / 2] : (v[NR / 2] + v[NR / 2 + 1]) / 2)}'; }
figure() { # what, goal, whether more is better, script, pattern that leaves the number
  [ -f "$out/$4.txt" ] || return 0
  local value
  value=$(sed -nE "s/$5/\\1/p" "$out/$4.txt" | median)
  [ -z "$value" ] || printf '%s\t%s\t%s\t%s\n' "$1, $([ "$3" = more ] && echo "at least" || echo "at most") $2" "$value" "$2" "$3"
}
{
  figure "Stored run: REST per second, of pgbench with one statement each" 1.5 more run '.*one statement each [0-9]+, ratio ([0-9.]+);.*'
  figure "Stored run: REST per second, of pgbench with the same statements" 0.8 more run '.*our statements [0-9]+, ratio ([0-9.]+)$'
  figure "Trace of 1,000 relatives: time, of the bare SQL" 2 less trace '.*, ([0-9.]+) times$'
  figure "Balance of a year of 1,000,000 entries: time, of the bare SQL" 2 less balance '.*, ([0-9.]+) times;.*'
  figure "10,000 labels: time, of the bare library" 1.5 less labels '.*stamped.*ratio ([0-9.]+).*'
  figure "Stock listing per second: long history, of short" 0.9 more history '^listing,.*ratio ([0-9.]+)$'
  figure "One lot's balance per second: long history, of short" 0.9 more history '^balance,.*ratio ([0-9.]+)$'
  figure "Stored run per second: long history, of short" 0.9 more history '^run,.*ratio ([0-9.]+)$'
  figure "What stands: time of a spreadsheet, of the program" 1 more spreadsheet '.*, ([0-9.]+) times$'
} >"$out/figures.tsv"
column -t -s$'\t' "$out/figures.tsv"

cd "$out" # the plot names its files, and shall name no folder
gnuplot <<PLOT
set terminal svg size 1100,460 font "sans,13" background "white"
set output "figures.svg"
set datafile separator "\t"
set logscale x
set xrange [0.1:200]
set yrange [-0.8:$(wc -l <figures.tsv) - 0.2] reverse
set xlabel "ratio (logarithmic); the bar is the median, the cross the goal"
set grid x
set lmargin 72
set style fill solid 0.6
unset key
set ytics out nomirror
plot "figures.tsv" using (0.1):0:(0.1):2:(\$0-0.3):(\$0+0.3):ytic(1) with boxxyerror lc rgb "#7a3a12", \
     "" using 3:0 with points pt 2 ps 1.4 lw 2 lc rgb "#1f4e3d"
PLOT
echo "plot: $out/figures.svg"
