#!/usr/bin/env bash
# The book of a season with 500 barrels and 1,000 lots, and its movements as CSV: what each takes, and the heap meanwhile.
gc=$(mktemp)
JAVA_OPTIONS="${JAVA_OPTIONS:-} -Xlog:gc:file=$gc"
. "$(dirname "$0")/common.sh"
trap 'finish; rm -rf "$folder" "$gc"' EXIT
here=$(cd "$(dirname "$0")" && pwd)
begin
owner=$(database | sed s/user=barreltally/user=postgres/)
# one run over REST, whose sheet the others get
barrel SB-1 208
post /api/canning/runs '{"on": "2026-06-20", "draws": [{"barrel": "SB-1", "all": true}], "fillTemperature": {"value": 186, "unit": "degF"},
  "fills": [{"container": "PT", "count": 100}], "transmittance": 59, "taste": "clean"}' >/dev/null
sheet=$(psql "$(database)" -Atc "SELECT sheet FROM canning_runs LIMIT 1")
psql -q "$owner" -v ON_ERROR_STOP=1 -v lots="${BARRELS:-500}" -v "sheet=$sheet" -f "$here/history.sql" >/dev/null
psql -q "$owner" -v ON_ERROR_STOP=1 -f "$here/season-book.sql" >/dev/null
pass=$(token)
get() { # label, path, file
  echo "$1: $(curl -sf -o "$folder/$3" -w '%{time_total} s, %{size_download} bytes' -H "Authorization: Bearer $pass" "$address$2")"
}
for round in 1 2 3 4 5; do get "book, round $round" "/api/season-book.pdf?season=2025" book.pdf; done
pdfinfo "$folder/book.pdf" | grep Pages
for round in 1 2 3; do get "movements as CSV, round $round" "/api/movements?as=csv" movements.csv; done
echo "lines of CSV: $(wc -l <"$folder/movements.csv")"
echo "heap left after collections: $(grep -o '[0-9]*M->[0-9]*M' "$gc" | tail -20 | sed 's/.*->//' | sort -n | sed -n '1p;$p' | tr '\n' ' ')"
broken=$(curl -s -u "owner:$password" "$address/api/ledger/invariants" | jq -c '[.items[] | select(.violations | length > 0)]')
[ "$broken" = "[]" ] || { echo "invariants broken: $broken"; exit 1; }
