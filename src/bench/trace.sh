#!/usr/bin/env bash
# The trace of a lot with 1,000 relatives over REST, beside the bare recursive SQL in both directions; one client each, in turns.
. "$(dirname "$0")/common.sh"
here=$(cd "$(dirname "$0")" && pwd)
begin
psql -q "$(database | sed s/user=barreltally/user=postgres/)" -v ON_ERROR_STOP=1 -f "$here/trace.sql" >/dev/null
pass=$(token)
curl -sf -H "Authorization: Bearer $pass" "$address/api/lots/T-M/trace" | jq -c '{ancestors: (.ancestors | length), descendants: (.descendants | length), accounted, total}'
rest() { wrk -t1 -c1 -d"$1" -H "Authorization: Bearer $pass" "$address/api/lots/T-M/trace" | awk '/Requests\/sec/ {print $2} /Non-2xx/ {print > "/dev/stderr"}'; }
bare() { pgbench -n -M prepared -c 1 -T "$1" -f "$here/trace.pgbench" "$(database)" 2>&1 | awk '/^tps/ {print $3}'; }
rest "${SECONDS_WARM:-40}" >/dev/null
bare 3 >/dev/null
for round in $(seq "${ROUNDS:-5}"); do
  awk -v n="$round" -v r="$(rest "$seconds")" -v b="$(bare "$seconds")" 'BEGIN {
    printf "round %d: trace over REST %.1f ms, bare SQL %.1f ms, %.2f times\n", n, 1000 / r, 1000 / b, b / r}'
done
