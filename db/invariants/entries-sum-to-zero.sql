-- Per movement and item the entries sum to zero over all places.
SELECT movement::text AS movement, item::text AS item, sum(amount) AS sum
FROM entries GROUP BY movement, item HAVING sum(amount) <> 0
