-- Every entry of the sugarhouse's log has the amounts of its kind and no others, each with the sugar its mass and Brix say; a part is of its boil's season
-- and day, and its boil is a boil.
SELECT e.id::text AS entry, e.kind, coalesce(string_agg(a.role, ', ' ORDER BY a.role), 'none') AS amounts
FROM sugarhouse_entries e LEFT JOIN sugarhouse_amounts a ON a.entry = e.id
  LEFT JOIN sugarhouse_entries b ON b.id = e.boil
GROUP BY e.id, b.id
HAVING coalesce(string_agg(a.role, ', ' ORDER BY a.role), 'none') <> CASE e.kind WHEN 'sap' THEN 'gathered' WHEN 'concentrate' THEN 'made, taken'
    WHEN 'feed' THEN 'boiled' WHEN 'draw-off' THEN 'drawn' ELSE 'none' END
  OR bool_or(abs(a.sugar - a.grams * a.brix / 100) > 1e-6 * a.sugar)
  OR (b.id IS NOT NULL AND (b.kind <> 'boil' OR b.season <> e.season OR b.on_day <> e.on_day))
