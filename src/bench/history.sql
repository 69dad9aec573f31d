-- A history of past seasons, :lots barrels long: each barrel was filled, canned into four sizes and given away, 22 entries in all. What stands
-- in stock today is not touched. Triggers rest meanwhile; the invariants are asked afterwards.
SET session_replication_role = replica;
CREATE TEMP TABLE past AS
  SELECT n, 'OB-' || n AS bulk, 'OP-' || n AS packed, date '2016-03-01' + (n % 3500) AS day,
    gen_random_uuid() AS filling, gen_random_uuid() AS bulk_item, gen_random_uuid() AS syrup,
    gen_random_uuid() AS filled, gen_random_uuid() AS canned, gen_random_uuid() AS given,
    (SELECT id FROM users LIMIT 1) AS by
  FROM generate_series(1, :lots) AS n;
CREATE TEMP TABLE past_jars AS
  SELECT n, packed, size, row_number() OVER (PARTITION BY n ORDER BY size) AS nth, gen_random_uuid() AS item
  FROM past CROSS JOIN unnest('{QT,PT,HP,G250}'::text[]) AS size;

INSERT INTO lots (code, kind, made_on, seasons, brix, brix_u, grade, transmittance, taste, held)
  SELECT bulk, 'bulk', day, ARRAY[extract(year FROM day)::int], 66.9, 0.1, 'amber', 62, 'clean', false FROM past
  UNION ALL SELECT packed, 'packed', day, ARRAY[extract(year FROM day)::int], 66.9, 0.1, 'amber', 62, 'clean', false FROM past;
INSERT INTO lot_gradings (id, lot, graded_on, transmittance, taste, grade, recorded_at, recorded_by)
  SELECT gen_random_uuid(), code, day, 62, 'clean', 'amber', day, by FROM past CROSS JOIN unnest(ARRAY[bulk, packed]) AS code;
INSERT INTO lot_parents (child, parent, grams, share) SELECT packed, bulk, 12000, 1 FROM past;
INSERT INTO items (id, lot, container, grams_each, grade, held)
  SELECT bulk_item, bulk, NULL::text, NULL::numeric, NULL::text, false FROM past
  UNION ALL SELECT syrup, packed, NULL, NULL, NULL, false FROM past
  UNION ALL SELECT item, packed, size, 500, 'amber', false FROM past_jars;
INSERT INTO vessels (tag, kind, material, washed) SELECT 'O-' || n, 'barrel', 'stainless', true FROM generate_series(1, least(40, :lots)) AS n;
INSERT INTO fillings (id, tag, place, filled_on, season, lot, state, mass_u, recorded_at, recorded_by)
  SELECT filling, 'O-' || (n % least(40, :lots) + 1), 'barrel-room', day, extract(year FROM day), bulk, 'drained', 0, day, by FROM past;
UPDATE vessels v SET filling = (SELECT f.id FROM fillings f WHERE f.tag = v.tag ORDER BY f.filled_on DESC LIMIT 1) WHERE v.tag LIKE 'O-%';

INSERT INTO movements (id, kind, happened_at, recorded_at, book_year, recorded_by, entry_count)
  SELECT filled, 'filling', day, day, extract(year FROM day), by, 2 FROM past
  UNION ALL SELECT canned, 'canning', day, day, extract(year FROM day), by, 12 FROM past
  UNION ALL SELECT given, 'write-off', day, day, extract(year FROM day), by, 8 FROM past;
INSERT INTO entries (movement, line, place, item, amount, balance_after, seq)
  SELECT filled, 1, 'boiled', bulk_item, -12000, -12000, 1 FROM past
  UNION ALL SELECT filled, 2, 'barrel-room', bulk_item, 12000, 12000, 1 FROM past
  UNION ALL SELECT canned, 1, 'barrel-room', bulk_item, -12000, 0, 2 FROM past
  UNION ALL SELECT canned, 2, 'blending', bulk_item, 12000, 12000, 1 FROM past
  UNION ALL SELECT canned, 3, 'blending', syrup, -12000, -12000, 1 FROM past
  UNION ALL SELECT canned, 4, 'packing', syrup, 12000, 12000, 1 FROM past
  UNION ALL SELECT canned, (3 + 2 * nth)::smallint, 'packing', item, -6, -6, 1 FROM past JOIN past_jars USING (n)
  UNION ALL SELECT canned, (4 + 2 * nth)::smallint, 'cool-room', item, 6, 6, 1 FROM past JOIN past_jars USING (n)
  UNION ALL SELECT given, (2 * nth - 1)::smallint, 'cool-room', item, -6, 0, 2 FROM past JOIN past_jars USING (n)
  UNION ALL SELECT given, (2 * nth)::smallint, 'given', item, 6, 6, 1 FROM past JOIN past_jars USING (n);
INSERT INTO balances (place, item, amount, seq, below_zero, container)
  SELECT e.place, e.item, sum(e.amount), count(*), p.below_zero, max(i.container)
  FROM entries e JOIN places p ON p.code = e.place JOIN items i ON i.id = e.item
  WHERE e.movement IN (SELECT unnest(ARRAY[filled, canned, given]) FROM past)
  GROUP BY e.place, e.item, p.below_zero;
INSERT INTO canning_runs (lot, movement, run_on, sheet, recorded_at, recorded_by)
  SELECT packed, canned, day, :'sheet'::jsonb, day, by FROM past;
INSERT INTO requests (user_id, key, method_path, content_hash, recorded_at, status, location, body)
  SELECT by, m, 'POST /api/canning/runs', sha256(packed::bytea), day, 201, '/api/canning/runs/' || packed, :'sheet'
  FROM past CROSS JOIN unnest(ARRAY[filled, canned, given]) AS m;
RESET session_replication_role;
VACUUM ANALYZE;
