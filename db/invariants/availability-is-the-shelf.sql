-- What can be promised is counted from the balances at own places; jars of unknown lot and grade are in no pool.
SELECT coalesce(a.container, s.container) AS container, coalesce(a.grade, s.grade) AS grade,
  a.on_hand, s.on_hand AS on_shelf, a.held, s.held AS held_on_shelf, a.out, s.out AS out_on_shelf
FROM availability a
FULL JOIN (
  SELECT i.container, i.grade, sum(b.amount) AS on_hand,
    coalesce(sum(b.amount) FILTER (WHERE i.held AND p.kind = 'home'), 0) AS held,
    coalesce(sum(b.amount) FILTER (WHERE p.kind = 'out'), 0) AS out
  FROM balances b JOIN items i ON i.id = b.item JOIN places p ON p.code = b.place
  WHERE i.container IS NOT NULL AND i.grade IS NOT NULL AND p.kind IN ('home', 'out')
  GROUP BY i.container, i.grade) AS s ON s.container = a.container AND s.grade = a.grade
WHERE coalesce(a.on_hand, 0) <> coalesce(s.on_hand, 0)
  OR coalesce(a.held, 0) <> coalesce(s.held, 0) OR coalesce(a.out, 0) <> coalesce(s.out, 0)
