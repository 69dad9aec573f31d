-- A movement has as many entries as its header says.
SELECT m.id::text AS movement, m.entry_count AS said, count(e.line) AS found
FROM movements m LEFT JOIN entries e ON e.movement = m.id
GROUP BY m.id HAVING m.entry_count <> count(e.line)
