#!/usr/bin/env bash
# A recall over REST of 100,000 jars in 51 lots with 2,000 holders by name: rehearsals, one real one, and what reading it again takes.
. "$(dirname "$0")/common.sh"
here=$(cd "$(dirname "$0")" && pwd)
rounds=${ROUNDS:-10}
begin
psql -q "$(database | sed s/user=barreltally/user=postgres/)" -v ON_ERROR_STOP=1 -f "$here/recall.sql" >/dev/null
pass=$(token)
recall() { # rehearsal: seconds it took; the answer stays in the folder
  curl -s -o "$folder/recall.json" -w '%{time_total}\n' -H "Authorization: Bearer $pass" -H 'Content-Type: application/json' \
    -H "Idempotency-Key: $(cat /proc/sys/kernel/random/uuid)" -d '{"lot": "RB", "reason": "measured", "rehearsal": '"$1"'}' "$address/api/recalls"
}
for _ in 1 2 3; do recall true >/dev/null; done
for round in $(seq "$rounds"); do echo "rehearsal, round $round: $(recall true) s"; done
echo "recall: $(recall false) s"
jq -c '{lots: (.touched | length), held: ([.touched[] | select(.held)] | length), holders: (.holders | length),
  named: ([.holders[].lines[].count] | add), public: .publicRemainder.jars, onHand: ([.onHand[].count] | add), total, accounted}' "$folder/recall.json"
id=$(jq -r .id "$folder/recall.json")
for round in 1 2 3; do
  echo "read again: $(curl -s -o /dev/null -w '%{time_total}' -H "Authorization: Bearer $pass" "$address/api/recalls/$id") s"
done
echo "letters: $(curl -s -o "$folder/letters.pdf" -w '%{time_total} s, %{size_download} bytes' -H "Authorization: Bearer $pass" "$address/api/recalls/$id/letters.pdf")"
broken=$(curl -s -u "owner:$password" "$address/api/ledger/invariants" | jq -c '[.items[] | select(.violations | length > 0)]')
[ "$broken" = "[]" ] || { echo "invariants broken: $broken"; exit 1; }
