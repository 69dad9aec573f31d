#!/usr/bin/env bash
# What stands of each lot in the cool room, by the program and by a spreadsheet (LibreOffice Calc, headless) that sums the same entries with
# SUMIFS, as somebody would who keeps a list of all that came and went. Both must come to the same jars.
. "$(dirname "$0")/common.sh"
here=$(cd "$(dirname "$0")" && pwd)
entries=${ENTRIES:-20000}
rounds=${ROUNDS:-3}
begin
for n in 1 2 3; do barrel "R-1-$n" 80000; done
pass=$(token)
wrk -t1 -c1 -d2 -s "$here/run.lua" "$address" -- "$pass" 1 >/dev/null
sheet=$(psql "$(database)" -Atc "SELECT sheet FROM canning_runs LIMIT 1")
psql -q "$(database | sed s/user=barreltally/user=postgres/)" -v ON_ERROR_STOP=1 -v lots=$((entries / 22)) -v "sheet=$sheet" -f "$here/history.sql" >/dev/null

psql "$(database)" -AtF$'\t' -c "SELECT e.place, i.lot || ' ' || i.container, e.amount FROM entries e JOIN items i ON i.id = e.item
  WHERE i.container IS NOT NULL" >"$folder/entries.tsv"
cut -f2 "$folder/entries.tsv" | sort -u >"$folder/things.txt"
lines=$(wc -l <"$folder/entries.tsv")
{
  cat <<'X'
<?xml version="1.0" encoding="UTF-8"?>
<office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0" xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2" office:version="1.3" office:mimetype="application/vnd.oasis.opendocument.spreadsheet"><office:body><office:spreadsheet><table:table table:name="Stands">
X
  awk -v n="$lines" '{printf "<table:table-row><table:table-cell office:value-type=\"string\"><text:p>%s</text:p></table:table-cell><table:table-cell table:formula=\"of:=SUMIFS([$Entries.$C$1:.$C$%d];[$Entries.$B$1:.$B$%d];[.A%d];[$Entries.$A$1:.$A$%d];&quot;cool-room&quot;)\"/></table:table-row>\n", $0, n, n, NR, n}' "$folder/things.txt"
  echo '</table:table><table:table table:name="Entries">'
  awk -F'\t' '{printf "<table:table-row><table:table-cell office:value-type=\"string\"><text:p>%s</text:p></table:table-cell><table:table-cell office:value-type=\"string\"><text:p>%s</text:p></table:table-cell><table:table-cell office:value-type=\"float\" office:value=\"%s\"/></table:table-row>\n", $1, $2, $3}' "$folder/entries.tsv"
  echo '</table:table></office:spreadsheet></office:body></office:document>'
} >"$folder/book.fods"

stock() { # all parts of the list, as the program gives it
  local after=""
  : >"$folder/stock.txt"
  while :; do
    curl -sf -H "Authorization: Bearer $pass" -G "$address/api/stock" -d place=cool-room -d limit=500 ${after:+--data-urlencode "after=$after"} >"$folder/part.json"
    jq -r '.items[] | select(.container) | "\(.lot) \(.container),\(.onHand)"' "$folder/part.json" >>"$folder/stock.txt"
    after=$(jq -r '.next // empty' "$folder/part.json")
    [ -n "$after" ] || break
  done
}
for _ in 1 2 3 4 5; do stock; done
for round in $(seq "$rounds"); do
  from=$(date +%s.%N)
  (cd "$folder" && soffice --headless -env:UserInstallation="file://$folder/office" --convert-to csv book.fods >/dev/null 2>&1)
  between=$(date +%s.%N)
  stock
  to=$(date +%s.%N)
  grep -v ',0$' "$folder/book.csv" | sort >"$folder/a"
  grep -v ',0$' "$folder/stock.txt" | sort >"$folder/b"
  cmp -s "$folder/a" "$folder/b" || { echo "the two differ:"; diff "$folder/a" "$folder/b" | head -5; exit 1; }
  awk -v n="$round" -v a="$from" -v b="$between" -v c="$to" -v e="$lines" -v t="$(wc -l <"$folder/b")" 'BEGIN {
    printf "round %d: %d sums over %d entries: spreadsheet opened, reckoned and saved in %.2f s, the program listed all of it in %.2f s, %.1f times\n",
      n, t, e, b - a, c - b, (b - a) / (c - b)}'
done
