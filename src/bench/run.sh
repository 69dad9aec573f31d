#!/usr/bin/env bash
# Stored runs (3 barrels, 5 sizes) over REST, beside pgbench writing the same rows with one prepared statement each, on the same server.
. "$(dirname "$0")/common.sh"
here=$(cd "$(dirname "$0")" && pwd)
begin
sets=16
for set in $(seq $sets); do
  for n in 1 2 3; do barrel "R-$set-$n" 80000; done
done
pass=$(token)
rest() {
  wrk -t2 -c$clients -d"$1" --latency -s "$here/run.lua" "$address" -- "$pass" $sets
}
one_each() {
  pgbench -n -M prepared -c $clients -j 2 -T "$1" -f "$here/run.pgbench" "$(database)"
}
rest 20 >/dev/null
one_each 5 >/dev/null
for round in 1 2 3; do
  r=$(rest "$seconds" | tee "$folder/rest.txt" | awk '/Requests\/sec/ {print $2}')
  p=$(one_each "$seconds" 2>&1 | awk '/^tps/ {print $3}')
  echo "round $round: REST $r runs a second, pgbench one statement each $p, ratio $(awk -v a="$r" -v b="$p" 'BEGIN {printf "%.2f", a / b}')"
  grep -E 'Non-2xx|99%' "$folder/rest.txt" || true
done
psql -q "$(database)" -Atc "SELECT count(*) || ' runs stored, ' || (SELECT count(*) FROM entries) || ' entries' FROM canning_runs"
curl -s -u "owner:$password" "$address/api/ledger/invariants" | jq -c '[.items[] | select(.violations | length > 0)]'
