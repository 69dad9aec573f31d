#!/usr/bin/env bash
# What-ifs over 12 barrels and 20 sizes, 16 clients, bearer token.
. "$(dirname "$0")/common.sh"
begin
draws=""
for i in $(seq 12); do
  barrel "W-$i" 440
  draws+="${draws:+,}{\"barrel\": \"W-$i\", \"all\": true}"
done
fills=""
for i in $(seq 20); do
  post /api/containers "{\"code\": \"W$i\", \"name\": \"Size $i\", \"netContents\": {\"value\": $((i * 50)), \"unit\": \"mL\"}, \"material\": \"glass\"}" >/dev/null
  fills+="${fills:+,}{\"container\": \"W$i\", \"count\": 20}"
done
cat >"$folder/what-if.lua" <<LUA
wrk.method = "POST"
wrk.path = "/api/canning/what-if"
wrk.headers["Content-Type"] = "application/json"
wrk.headers["Authorization"] = "Bearer $(token)"
wrk.body = [[{"on": "2026-06-20", "draws": [$draws], "fillTemperature": {"value": 185, "unit": "degF"}, "fills": [$fills]}]]
LUA
wrk -t2 -c$clients -d10 -s "$folder/what-if.lua" "$address" >/dev/null # warm up
for round in 1 2 3; do
  wrk -t2 -c$clients -d"$seconds" --latency -s "$folder/what-if.lua" "$address" |
    awk -v r=$round '/Requests\/sec/ {print "round " r ": what-ifs per second " $2} /99%/ {print "  99% within " $2} /Non-2xx/ {print}'
done
