-- What is on hand of a supply is the sum of its changes, each row carries the balance it left, and none is missing.
SELECT b.supply, b.on_hand, coalesce(sum(m.change), 0) AS changes
FROM supply_balances b LEFT JOIN (
  SELECT supply, change,
    on_hand_after = sum(change) OVER (PARTITION BY supply ORDER BY seq)
      AND seq = row_number() OVER (PARTITION BY supply ORDER BY seq) AS whole
  FROM supply_movements) AS m ON m.supply = b.supply
GROUP BY b.supply, b.on_hand, b.seq
HAVING b.on_hand <> coalesce(sum(m.change), 0) OR b.seq <> count(m.supply) OR NOT coalesce(bool_and(m.whole), true)
