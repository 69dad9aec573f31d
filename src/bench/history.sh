#!/usr/bin/env bash
# Stock listing, one lot's balance and stored runs with 10,000 entries of history beside the same with 1,000,000, in turns.
. "$(dirname "$0")/common.sh"
here=$(cd "$(dirname "$0")" && pwd)
warm=${SECONDS_WARM:-60}
rounds=${ROUNDS:-5}
top=$folder
first_port=$port
few=10000
many=${ENTRIES:-1000000}
sets=16
declare -A programs tokens
trap 'for program in "${programs[@]}"; do finish; done; rm -rf "$top"' EXIT

use() { # entries: the copy with that much history
  folder=$top/$1
  port=$first_port
  [ "$1" = "$few" ] || port=$((first_port + 1))
  address=http://localhost:$port
  [ ! -f "$folder/data/database-password" ] || PGPASSWORD=$(cat "$folder/data/database-password")
}
for entries in $few $many; do
  use "$entries"
  mkdir -p "$folder"
  begin
  programs[$entries]=$program
  for set in $(seq $sets); do
    for n in 1 2 3; do barrel "R-$set-$n" 80000; done
  done
  tokens[$entries]=$(token)
  wrk -t1 -c1 -d2 -s "$here/run.lua" "$address" -- "${tokens[$entries]}" $sets >/dev/null
  sheet=$(psql "$(database)" -Atc "SELECT sheet FROM canning_runs LIMIT 1")
  psql -q "$(database | sed s/user=barreltally/user=postgres/)" -v ON_ERROR_STOP=1 -v lots=$((entries / 22)) -v "sheet=$sheet" -f "$here/history.sql" >/dev/null
  psql "$(database)" -Atc "SELECT count(*) || ' entries, ' || (SELECT count(*) FROM balances) || ' balances' FROM entries"
done

rate() { awk '/Requests\/sec/ {print $2} /Non-2xx/ {print > "/dev/stderr"}'; }
listing() { wrk -t2 -c4 -d"$1" -H "Authorization: Bearer $pass" "$address/api/stock?place=cool-room&container=PT&limit=50" | rate; }
balance() { wrk -t2 -c4 -d"$1" -H "Authorization: Bearer $pass" "$address/api/stock?lot=$lot" | rate; }
run() { wrk -t2 -c$clients -d"$1" -s "$here/run.lua" "$address" -- "$pass" $sets | rate; }
measure() { # what, entries, seconds
  use "$2"
  pass=${tokens[$2]}
  lot=$(psql "$(database)" -Atc "SELECT code FROM lots WHERE code LIKE 'P26%' ORDER BY code LIMIT 1")
  "$1" "$3"
}
for what in listing balance run; do
  for entries in $few $many; do measure $what "$entries" "$warm" >/dev/null; done
  for round in $(seq "$rounds"); do
    a=$(measure $what $few "$seconds")
    b=$(measure $what "$many" "$seconds")
    awk -v w=$what -v n="$round" -v a="$a" -v b="$b" -v m="$many" 'BEGIN {
      printf "%s, round %d: %.0f a second with 10,000 entries, %.0f with %d, ratio %.2f\n", w, n, a, b, m, b / a}'
  done
done
for entries in $few $many; do
  use "$entries"
  broken=$(curl -s -u "owner:$password" "$address/api/ledger/invariants" | jq -c '[.items[] | select(.violations | length > 0)]')
  [ "$broken" = "[]" ] || { echo "invariants broken: $broken"; exit 1; }
done
