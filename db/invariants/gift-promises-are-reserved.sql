-- What gift orders count as promised is what is still open of their reservations.
SELECT g.reservation, g.container, g.grade, g.promised, coalesce(s.open, 0) AS open
FROM (SELECT reservation, container, grade, sum(pieces) AS promised
      FROM gift_promised GROUP BY reservation, container, grade) AS g
LEFT JOIN (SELECT reservation, container, grade,
             sum(CASE step WHEN 'reserved' THEN pieces ELSE -pieces END) AS open
           FROM reservation_steps GROUP BY reservation, container, grade) AS s
  ON s.reservation = g.reservation AND s.container = g.container AND s.grade = g.grade
WHERE g.promised <> coalesce(s.open, 0)
