-- Below zero only where the place allows it.
SELECT b.place, b.item::text AS item, b.amount
FROM balances b JOIN places p ON p.code = b.place
WHERE (b.amount < 0 AND NOT p.below_zero) OR b.below_zero <> p.below_zero
