#!/usr/bin/env bash
# A batch of 500 table sales over REST, then the very same batch again, which must change nothing; several shows in turns.
. "$(dirname "$0")/common.sh"
rounds=${ROUNDS:-5}
begin
barrel R-1 80000
lot=$(post /api/canning/runs '{"on": "2026-06-20", "draws": [{"barrel": "R-1", "weight": {"value": 8000, "unit": "lb"}}],
  "fillTemperature": {"value": 185, "unit": "degF"}, "filterHoldUp": {"value": 4, "unit": "lb"}, "overfill": {"value": 0, "unit": "g"},
  "fills": [{"container": "PT", "count": 3000}, {"container": "HP", "count": 3000}], "transmittance": 57, "taste": "clean"}' | jq -r .lot)
post /api/price-lists '{"name": "Bench", "audience": "show", "validFrom": "2026-01-01", "lines": [
  {"container": "PT", "price": {"amount": 15, "currency": "USD"}}, {"container": "HP", "price": {"amount": 9, "currency": "USD"}}],
  "deals": [{"container": "HP", "count": 2, "price": {"amount": 16, "currency": "USD"}}]}' >"$folder/list.json"
list=$(jq -r .id "$folder/list.json")

batch() { # 500 sales of one to three jars, some without a lot, some by the deal
  for n in $(seq 500); do echo "$n $(cat /proc/sys/kernel/random/uuid)"; done |
    jq -Rc --arg lot "$lot" '(split(" ")) as [$n, $id] | ($n | tonumber) as $n |
      {id: $id, at: ("2026-08-08T\(10 + $n % 8):\(10 + $n % 49):00Z"),
       lines: (if $n % 3 == 0 then [{container: "HP", count: 2}] elif $n % 3 == 1 then [{container: "PT", lot: $lot, count: 1}]
               else [{container: "PT", count: 1}, {container: "HP", lot: $lot, count: 1}] end),
       deal: ($n % 3 == 0), paid: {cash: {amount: 40, currency: "USD"}}}' | jq -sc .
}
send() { # show, file: seconds and how many were kept
  curl -sf -u "owner:$password" -H 'Content-Type: application/json' -H "Idempotency-Key: $(cat /proc/sys/kernel/random/uuid)" \
    -o "$folder/answer.json" -w '%{time_total}' \
    --data-binary "@$2" "$address/api/shows/$1/sales"
}
jars() { psql "$(database)" -Atc "SELECT (SELECT count(*) FROM sales), (SELECT count(*) FROM movements), (SELECT count(*) FROM entries)"; }
for round in $(seq 0 "$rounds"); do
  show=$(post /api/shows '{"name": "Bench fair '"$round"'", "town": "Fernby", "starts": "2026-08-08", "ends": "2026-08-09", "state": "accepted",
    "priceList": "'"$list"'"}' | jq -r .id)
  post "/api/shows/$show/pack-out" '{"lines": [{"container": "PT", "lot": "'"$lot"'", "count": 400}, {"container": "HP", "lot": "'"$lot"'", "count": 400}],
    "float": {"amount": 100, "currency": "USD"}}' >/dev/null
  batch >"$folder/batch.json"
  first=$(send "$show" "$folder/batch.json")
  before=$(jars)
  again=$(send "$show" "$folder/batch.json")
  [ "$before" = "$(jars)" ] || { echo "the second sending changed the book: $before, then $(jars)"; exit 1; }
  echo "show $round: 500 sales in $first s, the same again in $again s"
done
broken=$(curl -s -u "owner:$password" "$address/api/ledger/invariants" | jq -c '[.items[] | select(.violations | length > 0)]')
[ "$broken" = "[]" ] || { echo "invariants broken: $broken"; exit 1; }
