-- The shares of a lot's parents add up to one.
SELECT child AS lot, sum(share) AS shares
FROM lot_parents GROUP BY child HAVING abs(sum(share) - 1) > 1e-9
