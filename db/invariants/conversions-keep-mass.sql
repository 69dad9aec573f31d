-- Blending gives out as many grams as it takes in. Packing turns grams into pieces of fixed grams each:
-- per movement and lot they agree within half a gram for every size packed.
SELECT e.movement::text AS movement, 'blending' AS conversion, sum(e.amount) AS grams_left
FROM entries e WHERE e.place = 'blending'
GROUP BY e.movement HAVING sum(e.amount) <> 0
UNION ALL
SELECT e.movement::text, 'packing', sum(e.amount * coalesce(i.grams_each, 1))
FROM entries e JOIN items i ON i.id = e.item WHERE e.place = 'packing'
GROUP BY e.movement, i.lot
HAVING abs(sum(e.amount * coalesce(i.grams_each, 1))) > 0.5 * count(*) FILTER (WHERE i.container IS NOT NULL)
