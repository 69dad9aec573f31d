-- Each step of a gift order tells of the jars what its movement in the ledger did at the gift shelf, at the buyers and at the returns.
SELECT coalesce(t.step, m.step) AS step, coalesce(t.item, m.item) AS item, coalesce(t.stage, m.stage) AS stage, t.told, m.moved
FROM (SELECT step, item, stage, sum(pieces) AS told FROM gift_jars GROUP BY step, item, stage) AS t
FULL JOIN (
  SELECT s.id AS step, e.item,
    CASE e.place WHEN 'gift-shelf' THEN 'shelf' WHEN 'customer' THEN 'sent' ELSE 'back' END AS stage, e.amount AS moved
  FROM gift_steps s JOIN entries e ON e.movement = s.movement
  WHERE e.place IN ('gift-shelf', 'customer', 'gift-returns')) AS m
  ON m.step = t.step AND m.item = t.item AND m.stage = t.stage
WHERE coalesce(t.told, 0) <> coalesce(m.moved, 0)
