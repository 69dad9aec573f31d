-- A lot T-M with 1,000 relatives: ten generations of 50 lots above it and ten below, each lot made of two of the generation before.
SET session_replication_role = replica;
CREATE TEMP TABLE kin AS
  SELECT g, n, CASE WHEN g = 0 THEN 'T-M' ELSE 'T' || CASE WHEN g < 0 THEN 'A' ELSE 'D' END || abs(g) || '-' || n END AS code
  FROM generate_series(-10, 10) AS g CROSS JOIN generate_series(0, 49) AS n WHERE g <> 0 OR n = 0;
INSERT INTO lots (code, kind, made_on, seasons, brix, brix_u, grade, transmittance, taste, held)
  SELECT code, CASE WHEN g > 9 THEN 'packed' ELSE 'bulk' END, date '2026-04-01', '{2026}', 66.9, 0.1, 'amber', 62, 'clean', false FROM kin;
INSERT INTO lot_parents (child, parent, grams, share)
  SELECT c.code, p.code, 1000, 1.0 / count(*) OVER (PARTITION BY c.code)
  FROM kin c JOIN kin p ON p.g = c.g - 1 AND (c.g IN (0, 1) OR p.n IN (c.n, (c.n + 1) % 50));
INSERT INTO items (id, lot) SELECT gen_random_uuid(), code FROM kin;
INSERT INTO items (id, lot, container, grams_each, grade) SELECT gen_random_uuid(), code, 'PT', 500, 'amber' FROM kin WHERE g > 9;
INSERT INTO balances (place, item, amount, seq, below_zero, container)
  SELECT place, i.id, amount, 1, place = 'packing', i.container
  FROM kin JOIN items i ON i.lot = code
    CROSS JOIN (VALUES ('packing', -12), ('cool-room', 12)) AS v (place, amount) WHERE i.container IS NOT NULL;
RESET session_replication_role;
VACUUM ANALYZE;
