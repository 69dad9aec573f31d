-- A barrel RB whose syrup went into 50 lots of two sizes, 100,000 jars in all: 80,000 with 2,000 buyers by name, each of whom bought 20 jars of two
-- lots; 15,000 sold to people without a name; 5,000 on the shelf. Triggers rest meanwhile; the invariants are asked afterwards.
SET session_replication_role = replica;
CREATE TEMP TABLE who AS SELECT id AS by FROM users LIMIT 1;
INSERT INTO lots (code, kind, made_on, seasons, brix, brix_u, grade, transmittance, taste, held)
  VALUES ('RB', 'bulk', date '2026-03-14', '{2026}', 66.9, 0.1, 'amber', 62, 'clean', false);
INSERT INTO lots (code, kind, made_on, seasons, brix, brix_u, grade, transmittance, taste, held)
  SELECT 'RP-' || n, 'packed', date '2026-06-01', '{2026}', 66.9, 0.1, 'amber', 62, 'clean', false FROM generate_series(0, 49) AS n;
INSERT INTO lot_parents (child, parent, grams, share) SELECT 'RP-' || n, 'RB', 1000, 1 FROM generate_series(0, 49) AS n;
CREATE TEMP TABLE jar AS
  SELECT gen_random_uuid() AS item, gen_random_uuid() AS packed, gen_random_uuid() AS sold, n, size
  FROM generate_series(0, 49) AS n CROSS JOIN unnest('{PT,HP}'::text[]) AS size;
INSERT INTO items (id, lot, container, grams_each, grade, held) SELECT item, 'RP-' || n, size, 500, 'amber', false FROM jar;

-- Each buyer's sale has two lines of 20 jars: pints of one lot, half-pints of the next.
CREATE TEMP TABLE bought AS
  SELECT b, gen_random_uuid() AS sale, gen_random_uuid() AS movement, gen_random_uuid() AS buyer FROM generate_series(1, 2000) AS b;
INSERT INTO sale_buyers (id, name, address, contact)
  SELECT buyer, 'Holder ' || b, ARRAY[b || ' Weir Lane', 'Fernby'], NULL FROM bought;
INSERT INTO movements (id, kind, happened_at, recorded_at, book_year, recorded_by, entry_count)
  SELECT movement, 'sale', '2026-07-01', '2026-07-01', 2026, by, 4 FROM bought, who;
INSERT INTO sale_ids (id) SELECT sale FROM bought;
INSERT INTO sales (id, place, channel, said_at, happened_at, currency, total, deal_saving, tax, change, said, movement, buyer, recorded_at, recorded_by)
  SELECT sale, 'cool-room', 'post', '2026-07-01', '2026-07-01', 'USD', 600, 0, 0, 0, '{}', movement, buyer, '2026-07-01', by FROM bought, who;
CREATE TEMP TABLE line AS
  SELECT b, sale, movement, 1 AS nth, item FROM bought JOIN jar ON size = 'PT' AND n = b % 50
  UNION ALL SELECT b, sale, movement, 2, item FROM bought JOIN jar ON size = 'HP' AND n = (b + 1) % 50;
INSERT INTO sale_lines (sale, line, container, lot, item, pieces, unit_price, price_said, amount)
  SELECT sale, nth, size, 'RP-' || n, item, 20, 15, true, 300 FROM line JOIN jar USING (item);

-- Per size and lot 1,000 were packed, 800 bought by name, 150 sold without one, 50 are left.
INSERT INTO movements (id, kind, happened_at, recorded_at, book_year, recorded_by, entry_count)
  SELECT packed, 'opening', timestamptz '2026-06-01', timestamptz '2026-06-01', 2026, by, 2 FROM jar, who
  UNION ALL SELECT sold, 'sale', timestamptz '2026-07-02', timestamptz '2026-07-02', 2026, by, 2 FROM jar, who;
CREATE TEMP TABLE moved AS
  SELECT packed AS movement, item, 1 AS line, 'opening' AS place, -1000 AS amount, 0 AS seq FROM jar
  UNION ALL SELECT packed, item, 2, 'cool-room', 1000, 0 FROM jar
  UNION ALL SELECT sold, item, 1, 'cool-room', -150, 1 FROM jar
  UNION ALL SELECT sold, item, 2, 'customer', 150, 1 FROM jar
  UNION ALL SELECT movement, item, 2 * nth - 1, 'cool-room', -20, 1 + b FROM line
  UNION ALL SELECT movement, item, 2 * nth, 'customer', 20, 1 + b FROM line;
INSERT INTO entries (movement, line, place, item, amount, balance_after, seq)
  SELECT movement, line, place, item, amount, sum(amount) OVER w, row_number() OVER w FROM moved
  WINDOW w AS (PARTITION BY place, item ORDER BY seq, movement);
INSERT INTO balances (place, item, amount, seq, below_zero, container)
  SELECT e.place, e.item, sum(e.amount), count(*), p.below_zero, max(i.container)
  FROM entries e JOIN places p ON p.code = e.place JOIN items i ON i.id = e.item
  WHERE e.item IN (SELECT item FROM jar) GROUP BY e.place, e.item, p.below_zero;
INSERT INTO availability (container, grade, on_hand, held, reserved, out)
  SELECT size, 'amber', 50 * count(*), 0, 0, 0 FROM jar GROUP BY size
  ON CONFLICT (container, grade) DO UPDATE SET on_hand = availability.on_hand + excluded.on_hand;
RESET session_replication_role;
VACUUM ANALYZE;
