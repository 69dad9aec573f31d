#!/usr/bin/env bash
# Stored runs (3 barrels, 5 sizes) over REST; beside it pgbench writing the same rows with one prepared statement each, and pgbench sending the
# program's own statements, on the same server. All three take turns within each round, so that what else the machine does falls on all of them.
. "$(dirname "$0")/common.sh"
here=$(cd "$(dirname "$0")" && pwd)
warm=${SECONDS_WARM:-300} # the JIT compiler shares two cores with what it compiles
rounds=${ROUNDS:-5}
begin
# As the program plans what it sends in one bundle.
by_keys="-c plan_cache_mode=force_generic_plan -c enable_seqscan=off -c enable_hashjoin=off -c enable_mergejoin=off"
sets=16
for set in $(seq $sets); do
  for n in 1 2 3; do barrel "R-$set-$n" 80000; done
done
pass=$(token)
rest() { # seconds
  wrk -t2 -c$clients -d"$1" --latency -s "$here/run.lua" "$address" -- "$pass" $sets
}
bench() { # script, seconds
  pgbench -n -M prepared -c $clients -j 2 -T "$2" -D "sheet=$sheet" -f "$here/$1" "$(database)" 2>&1
}
rate() { awk '/^tps/ {print $3} /number of failed/ && $5 != 0 {print > "/dev/stderr"}'; }
spent() { # hundredths of a second of processor: the program, PostgreSQL with its ended backends, everything
  local server
  server=$(head -1 "$folder/data/database/postmaster.pid")
  echo "$(awk '{print $14 + $15}' "/proc/$program/stat")" \
    "$( (echo "$server"; pgrep -P "$server") | while read -r pid; do awk '{print $14 + $15 + $16 + $17}' "/proc/$pid/stat" 2>/dev/null || true; done | awk '{s += $1} END {print s}')" \
    "$(awk '/^cpu / {print $2 + $3 + $4 + $7 + $8}' /proc/stat)"
}
rest "$warm" >/dev/null
sheet=$(psql "$(database)" -Atc "SELECT sheet FROM canning_runs LIMIT 1")
bench run.pgbench 5 >/dev/null
PGOPTIONS="$by_keys" bench run-own.pgbench 5 >/dev/null
for round in $(seq "$rounds"); do
  before=$(spent)
  r=$(rest "$seconds" | tee "$folder/rest.txt" | awk '/Requests\/sec/ {print $2}')
  after_rest=$(spent)
  p=$(bench run.pgbench "$seconds" | rate)
  after_each=$(spent)
  o=$(PGOPTIONS="$by_keys" bench run-own.pgbench "$seconds" | rate)
  awk -v n="$round" -v r="$r" -v p="$p" -v o="$o" 'BEGIN {
    printf "round %d: REST %.0f runs a second; pgbench one statement each %.0f, ratio %.2f; pgbench with our statements %.0f, ratio %.2f\n",
      n, r, p, r / p, o, r / o}'
  echo "$before $after_rest $after_each $(spent) $r $p $o $seconds" | awk '{
    printf "  processor for a run: REST %.1f ms (program %.1f, PostgreSQL %.1f); one statement each %.1f ms (PostgreSQL %.1f); our statements %.1f ms (PostgreSQL %.1f)\n",
      ($6 - $3) * 10 / $13 / $16, ($4 - $1) * 10 / $13 / $16, ($5 - $2) * 10 / $13 / $16, ($9 - $6) * 10 / $14 / $16, ($8 - $5) * 10 / $14 / $16,
      ($12 - $9) * 10 / $15 / $16, ($11 - $8) * 10 / $15 / $16}'
  grep -E 'Non-2xx|99%' "$folder/rest.txt" || true
done
psql -q "$(database)" -Atc "SELECT count(*) || ' runs stored, ' || (SELECT count(*) FROM entries) || ' entries' FROM canning_runs"
broken=$(curl -s -u "owner:$password" "$address/api/ledger/invariants" | jq -c '[.items[] | select(.violations | length > 0)]')
[ "$broken" = "[]" ] || { echo "invariants broken: $broken"; exit 1; }
