-- A balance is the sum of its entries, and its number is how many there are.
SELECT b.place, b.item::text AS item, b.amount AS balance, coalesce(sum(e.amount), 0) AS entries
FROM balances b LEFT JOIN entries e ON e.place = b.place AND e.item = b.item
GROUP BY b.place, b.item HAVING b.amount <> coalesce(sum(e.amount), 0) OR b.seq <> count(e.line)
