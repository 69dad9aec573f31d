-- A closed year holds what it held when it was closed, entry by entry.
SELECT s.year, s.movements AS movements_then, now.movements AS movements_now, s.entries AS entries_then, now.entries AS entries_now
FROM closed_year_sums s CROSS JOIN LATERAL (
  SELECT count(DISTINCT m.id) AS movements, count(*) AS entries,
    coalesce(sum(hashtextextended(concat_ws(' ', e.movement, e.line, e.place, e.item, e.amount), 0)), 0) AS checksum
  FROM movements m JOIN entries e ON e.movement = m.id WHERE m.book_year = s.year) AS now
WHERE (now.movements, now.entries, now.checksum) IS DISTINCT FROM (s.movements, s.entries, s.checksum)
