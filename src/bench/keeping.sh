#!/usr/bin/env bash
# Backup and restore by call and by command, of the demo season and of a book with more entries (ENTRIES, 0 for none).
. "$(dirname "$0")/common.sh"
entries=${ENTRIES:-1000000}
jar=$root/target/quarkus-app/quarkus-run.jar

timed() { # words, command
  local from to words=$1
  shift
  from=$(date +%s.%N)
  "$@" >"$folder/said.txt"
  to=$(date +%s.%N)
  echo "$words: $(awk -v a="$from" -v b="$to" 'BEGIN {printf "%.2f", b - a}') s"
}

measure() { # words
  timed "$1, backup by call" curl -sf -u "owner:$password" -X POST "$address/api/backups"
  echo "  $(jq -r '"\(.rows) rows, \(.bytes) bytes"' "$folder/said.txt")"
  rm -f "$folder/book.zip"
  timed "$1, backup by command, program running" env BARRELTALLY_DATA="$folder/data" java -jar "$jar" backup "$folder/book.zip"
  rm -rf "$folder/restored"
  timed "$1, restore by command into a new folder, database made anew" \
    env BARRELTALLY_DATA="$folder/restored" java -jar "$jar" restore "$folder/book.zip"
  timed "$1, backup by command, program stopped" env BARRELTALLY_DATA="$folder/restored" java -jar "$jar" backup "$folder/again.zip"
  rm -f "$folder/again.zip"
}

BARRELTALLY_DEMO=true begin
until grep -q "Shrink in all" "$folder/out.txt"; do sleep 0.2; done
measure "Demo season"
if ((entries > 0)); then
  # jars to and fro between two rooms, a pair of entries each, as a long history has them
  psql -qv ON_ERROR_STOP=1 -v pairs=$((entries / 2)) "$(database)" <<'SQL'
BEGIN;
CREATE TEMP TABLE jar AS
  SELECT b.item, b.seq, b.amount,
    coalesce((SELECT c.seq FROM balances c WHERE c.item = b.item AND c.place = 'broken'), 0) AS out_seq,
    coalesce((SELECT c.amount FROM balances c WHERE c.item = b.item AND c.place = 'broken'), 0) AS out_amount
  FROM balances b JOIN items i ON i.id = b.item
  WHERE b.place = 'cool-room' AND i.container IS NOT NULL AND b.amount > 0 ORDER BY b.amount DESC LIMIT 1;
INSERT INTO balances (place, item, amount, seq, below_zero, container)
  SELECT 'broken', j.item, 0, 0, true, i.container FROM jar j JOIN items i ON i.id = j.item ON CONFLICT DO NOTHING;
CREATE TEMP TABLE step AS
  SELECT n, ('01980000-0000-7000-8000-' || lpad(to_hex(n), 12, '0'))::uuid AS id,
    CASE WHEN n % 2 = 1 THEN -1 ELSE 1 END AS d FROM generate_series(1, 2 * (:pairs / 2)) n;
INSERT INTO movements
  SELECT id, 'write-off', '2026-07-01'::timestamptz + n * interval '1 second', '2026-08-01'::timestamptz + n * interval '1 second',
    2026, (SELECT id FROM users LIMIT 1), 'to and fro', NULL, 2 FROM step;
UPDATE balances b SET seq = b.seq + (SELECT count(*) FROM step) FROM jar j WHERE b.item = j.item AND b.place IN ('cool-room', 'broken');
INSERT INTO entries
  SELECT s.id, v.line, v.place, j.item, v.d, CASE WHEN s.n % 2 = 1 THEN v.before + v.d ELSE v.before END, v.seq
  FROM step s, jar j,
    LATERAL (VALUES (1, 'cool-room', s.d, j.amount, j.seq + s.n), (2, 'broken', -s.d, j.out_amount, j.out_seq + s.n)) AS v (line, place, d, before, seq);
COMMIT;
SQL
  measure "$entries more entries"
fi
