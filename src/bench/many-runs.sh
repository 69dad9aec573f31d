#!/usr/bin/env bash
# The page of a year in which more runs were booked than are weighed against each other, its balance over REST, and the refusal to weigh them.
. "$(dirname "$0")/common.sh"
here=$(cd "$(dirname "$0")" && pwd)
rounds=${ROUNDS:-12}
begin
sets=16
for set in $(seq $sets); do
  for n in 1 2 3; do barrel "R-$set-$n" 20000; done
done
pass=$(token)
wrk -t2 -c8 -d"${SECONDS_OF_RUNS:-14}" -s "$here/run.lua" "$address" -- "$pass" $sets >/dev/null
psql -q "$(database)" -Atc "SELECT count(*) || ' runs' FROM canning_runs"
psql -q "$(database)" -c "VACUUM ANALYZE" 2>/dev/null
curl -s -o /dev/null -c "$folder/cookie" --data-urlencode username=owner --data-urlencode "password=$password" "$address/sign-in"
asked() { # what, status expected, curl's arguments
  local what=$1 wanted=$2 got
  shift 2
  got=$(for round in $(seq "$rounds"); do curl -s -o /dev/null -w '%{http_code} %{time_total}\n' "$@"; done)
  awk -v what="$what" -v wanted="$wanted" '
    $1 != wanted { print what ": answered " $1 > "/dev/stderr"; exit 1 }
    { printf "%s%.0f", NR == 1 ? what ": " : ", ", $2 * 1000 }
    END { print " ms" }' <<<"$got"
}
asked "page" 200 -b "$folder/cookie" "$address/balance?season=2026"
asked "balance over REST" 200 -H "Authorization: Bearer $pass" "$address/api/reconciliation?season=2026"
asked "flows, too many" 400 -H "Authorization: Bearer $pass" "$address/api/reconciliation/flows?season=2026"
