#!/usr/bin/env bash
# The year's balance over REST with 1,000,000 entries of that year and later ones (history.sql), beside one bare SQL aggregate over the same entries
# (balance.pgbench), one client each, in turns; and what a year's flows take to be reconciled.
. "$(dirname "$0")/common.sh"
here=$(cd "$(dirname "$0")" && pwd)
many=${ENTRIES:-1000000}
begin
barrel R-1 440
pass=$(token)
post /api/canning/runs '{"on": "2026-06-20", "draws": [{"barrel": "R-1", "all": true}], "fillTemperature": {"value": 185, "unit": "degF"},
  "fills": [{"container": "PT", "count": 315}], "transmittance": 61, "taste": "clean"}' >/dev/null
sheet=$(psql "$(database)" -Atc "SELECT sheet FROM canning_runs LIMIT 1")
psql -q "$(database | sed s/user=barreltally/user=postgres/)" -v ON_ERROR_STOP=1 -v lots=$((many / 22)) -v "sheet=$sheet" -f "$here/history.sql" >/dev/null
psql "$(database)" -Atc "SELECT count(*) || ' entries' FROM entries"
ask() { curl -sf -o "$folder/answer.json" -w '%{time_total}\n' -H "Authorization: Bearer $pass" "$address/api/reconciliation$1"; }
bare() { pgbench -n -M prepared -c 1 -t 2 -f "$here/balance.pgbench" "$(database)" 2>&1 | awk '/latency average/ {print $4 / 1000}'; }
for _ in 1 2; do ask '?season=2016' >/dev/null; bare >/dev/null; done
for round in $(seq "${ROUNDS:-5}"); do
  awk -v n="$round" -v r="$(ask '?season=2016')" -v b="$(bare)" -v y="$(ask '?season=2026')" 'BEGIN {
    printf "round %d: balance of the first year over REST %.2f s, bare SQL %.2f s, %.2f times; of the last year %.3f s\n", n, r, b, r / b, y}'
done
jq -c '{season, made: .made.mass, closing: .closing.containers.mass, unexplained}' "$folder/answer.json"
