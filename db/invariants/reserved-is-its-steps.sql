-- What is reserved is what was reserved less what was taken, released or lapsed; no reservation ends more than it had.
SELECT coalesce(a.container, s.container) AS container, coalesce(a.grade, s.grade) AS grade,
  a.reserved, s.open AS by_steps, s.least
FROM availability a
FULL JOIN (
  SELECT container, grade, sum(open) AS open, min(open) AS least
  FROM (SELECT reservation, container, grade,
          sum(CASE step WHEN 'reserved' THEN pieces ELSE -pieces END) AS open
        FROM reservation_steps GROUP BY reservation, container, grade) AS each
  GROUP BY container, grade) AS s ON s.container = a.container AND s.grade = a.grade
WHERE coalesce(a.reserved, 0) <> coalesce(s.open, 0) OR s.least < 0
