-- A reversal takes back exactly what its original moved.
SELECT r.id::text AS reversal, r.reverses::text AS original
FROM movements r
WHERE r.reverses IS NOT NULL AND EXISTS (
  SELECT place, item, -amount FROM entries WHERE movement = r.reverses
  EXCEPT SELECT place, item, amount FROM entries WHERE movement = r.id
  UNION ALL (SELECT place, item, amount FROM entries WHERE movement = r.id
  EXCEPT SELECT place, item, -amount FROM entries WHERE movement = r.reverses))
