-- Entry by entry, what stood before plus what moved is what stood after, and none is missing.
SELECT place, item::text AS item, seq, balance_after
FROM (SELECT place, item, seq, amount, balance_after,
        lag(balance_after, 1, 0::bigint) OVER w AS before, row_number() OVER w AS nth
      FROM entries WINDOW w AS (PARTITION BY place, item ORDER BY seq)) AS history
WHERE before + amount <> balance_after OR nth <> seq
