#!/usr/bin/env bash
# Every page of the menu with the demo's season: bytes sent, and the time to answer, warm, as a browser that takes gzip asks it.
. "$(dirname "$0")/common.sh"
export BARRELTALLY_DEMO=true
begin
for _ in $(seq 120); do grep -q "Shows settled" "$folder/out.txt" && break; sleep 0.5; done
sleep 5
curl -s -o "$folder/in.html" -c "$folder/cookie" --data-urlencode username=owner --data-urlencode "password=$password" "$address/sign-in"
open() { curl -s -b "$folder/cookie" --compressed -o "$folder/page.html" -w "$2" "$address$1"; }
pages=$(open / '' && grep -oE 'href="/[a-z-]+"' "$folder/page.html" | cut -d'"' -f2 | sort -u)
for round in 1 2 3; do for page in / $pages; do for _ in $(seq 10); do open "$page" ''; done; done; done
printf '%-16s %8s %8s %8s\n' page bytes median worst
for page in / $pages; do
  for _ in $(seq 31); do open "$page" '%{time_total} %{size_download} %{http_code}\n'; done >"$folder/times.txt"
  sort -n "$folder/times.txt" | awk -v page="$page" '{t[NR] = $1; b = $2; if ($3 != 200) bad = $3}
    END {printf "%-16s %8d %7.0f ms %5.0f ms %s\n", page, b, t[16] * 1000, t[NR] * 1000, bad}'
done
