-- A full book in the tables of V013, the first with canning: :barrels barrels, a run of every three, jars broken and given back, a count, holds,
-- promises, purchases and kept answers. Everything follows from the number, so two books of the same number are alike.

CREATE FUNCTION pg_temp.made(what int, n bigint) RETURNS uuid LANGUAGE sql IMMUTABLE AS
  $$ SELECT ('0196' || lpad(to_hex(what), 4, '0') || '-0000-7000-8000-' || lpad(to_hex(n), 12, '0'))::uuid $$;

INSERT INTO users VALUES
  (pg_temp.made(1, 1), 'owner', 'Owner', 'no password fits this', 'owner', '2024-01-02Z'),
  (pg_temp.made(1, 2), 'cook', 'The cook', 'nor this', 'canning', '2024-01-03Z');
INSERT INTO access_tokens VALUES
  (pg_temp.made(2, 1), pg_temp.made(1, 2), 'a phone', sha256('an invented secret'), '2024-02-01Z', NULL, '2024-03-01', NULL);
INSERT INTO suppliers SELECT pg_temp.made(3, n), 'Neighbour ' || n || ', "invented"', 'comma, and' || chr(10) || 'line' FROM generate_series(1, 40) n;

CREATE TEMP TABLE barrel AS
  SELECT n, 'S24-' || lpad(n::text, 6, '0') AS lot, 'B' || lpad(n::text, 6, '0') AS tag, pg_temp.made(4, n) AS item,
    pg_temp.made(5, n) AS filling, 170000 + n * 7919 % 45000 AS grams, date '2024-03-01' + (n % 45)::int AS day,
    CASE WHEN n % 11 = 0 THEN 'bought' ELSE 'boiled' END AS source,
    (ARRAY['golden', 'amber', 'dark'])[1 + n / 3 % 3] AS grade, (ARRAY[82, 62, 40])[1 + n / 3 % 3] AS transmittance
  FROM generate_series(1, :barrels) n;
INSERT INTO lots SELECT lot, 'bulk', day, '{2024}', 66.0 + n % 20 / 10.0, 0.1, grade, transmittance, 'clean', false FROM barrel;
INSERT INTO items SELECT item, lot, NULL, NULL, grade, false FROM barrel;
INSERT INTO lot_gradings SELECT pg_temp.made(6, n), lot, day, transmittance, 'clean', grade, NULL, day + time '18:00' AT TIME ZONE 'UTC', pg_temp.made(1, 1) FROM barrel;
INSERT INTO vessels SELECT tag, 'barrel', 'stainless', 150000, NULL, n % 2 = 0 FROM barrel;
INSERT INTO fillings SELECT filling, tag, 'barrel-room', day, 2024, lot, CASE WHEN n <= :barrels / 3 * 3 THEN 'drained' ELSE 'full' END,
  90, 19000, NULL, NULL, day + time '18:00' AT TIME ZONE 'UTC', pg_temp.made(1, 1) FROM barrel;
UPDATE vessels v SET filling = b.filling FROM barrel b WHERE b.tag = v.tag;
INSERT INTO barrel_readings SELECT pg_temp.made(7, n), filling, lot, 'weighing', day,
  jsonb_build_object('gross', jsonb_build_object('value', grams + 19000, 'unit', 'g'), 'tare', jsonb_build_object('value', 19000, 'unit', 'g')),
  grams, 90, day + time '18:00' AT TIME ZONE 'UTC', pg_temp.made(1, 1) FROM barrel;
INSERT INTO purchases SELECT pg_temp.made(8, n), lot, pg_temp.made(3, 1 + n % 40), day, day + time '18:00' AT TIME ZONE 'UTC', pg_temp.made(1, 1)
  FROM barrel WHERE source = 'bought';

CREATE TEMP TABLE run AS
  SELECT r, 'R24-' || lpad(r::text, 6, '0') AS lot, pg_temp.made(9, r) AS grams_item, pg_temp.made(10, r) AS pints, pg_temp.made(11, r) AS quarts,
    pg_temp.made(12, r) AS movement, date '2024-06-01' + (r % 90)::int AS day, b.grade, b.transmittance, g.grams,
    g.grams / 2522 AS quart_pieces, (g.grams * 9 / 20) / 1261 * 2 AS pint_pieces, r % 17 = 0 AS held
  FROM generate_series(1, :barrels / 3) r
  JOIN LATERAL (SELECT sum(grams)::bigint AS grams FROM barrel WHERE (n + 2) / 3 = r) g ON true
  JOIN barrel b ON b.n = 3 * r;
INSERT INTO lots SELECT lot, 'packed', day, '{2024}', 66.9, 0.1, grade, transmittance, 'clean', held FROM run;
INSERT INTO items SELECT grams_item, lot, NULL, NULL, grade, held FROM run
  UNION ALL SELECT pints, lot, 'PT', 630.5, grade, held FROM run UNION ALL SELECT quarts, lot, 'QT', 1261, grade, held FROM run;
INSERT INTO lot_parents SELECT r.lot, b.lot, b.grams, b.grams / r.grams::double precision FROM run r JOIN barrel b ON (b.n + 2) / 3 = r.r;
INSERT INTO lot_gradings SELECT pg_temp.made(13, r), lot, day, transmittance, 'clean', grade, NULL, day + time '12:00' AT TIME ZONE 'UTC', pg_temp.made(1, 2) FROM run;
INSERT INTO lot_holds SELECT pg_temp.made(14, r), lot, 'held', 'cloudy', day + time '13:00' AT TIME ZONE 'UTC', pg_temp.made(1, 2) FROM run WHERE held;
INSERT INTO lot_numbers VALUES ('S24', :barrels), ('R24', :barrels / 3);

CREATE TEMP TABLE moved AS
  SELECT pg_temp.made(15, n) AS movement, CASE source WHEN 'bought' THEN 'purchase' ELSE 'filling' END AS kind,
    day + time '17:00' AT TIME ZONE 'UTC' AS at, NULL::uuid AS reverses, NULL::text AS reason FROM barrel
  UNION ALL SELECT movement, 'canning', day + time '10:00' AT TIME ZONE 'UTC', NULL, NULL FROM run
  UNION ALL SELECT pg_temp.made(16, r), 'write-off', day + time '15:00' AT TIME ZONE 'UTC', NULL, 'fell, it''s gone' FROM run
  UNION ALL SELECT pg_temp.made(17, r), 'reversal', day + time '16:00' AT TIME ZONE 'UTC', pg_temp.made(16, r), 'found again' FROM run WHERE r % 5 = 0;
CREATE TEMP TABLE line AS
  SELECT m.at, x.*, row_number() OVER (PARTITION BY x.movement ORDER BY x.place, x.item) AS line FROM moved m JOIN (
    SELECT pg_temp.made(15, n) AS movement, source AS place, item, -grams AS amount FROM barrel
    UNION ALL SELECT pg_temp.made(15, n), 'barrel-room', item, grams FROM barrel
    UNION ALL SELECT r.movement, p.place, b.item, p.sign * b.grams FROM run r JOIN barrel b ON (b.n + 2) / 3 = r.r,
      (VALUES ('barrel-room', -1), ('blending', 1)) p (place, sign)
    UNION ALL SELECT movement, 'blending', grams_item, -grams FROM run
    UNION ALL SELECT movement, 'packing', grams_item, quart_pieces * 1261 + pint_pieces / 2 * 1261 FROM run
    UNION ALL SELECT movement, 'filter', grams_item, grams - (quart_pieces * 1261 + pint_pieces / 2 * 1261) FROM run
    UNION ALL SELECT movement, p.place, pints, p.sign * pint_pieces FROM run, (VALUES ('packing', -1), ('cool-room', 1)) p (place, sign)
    UNION ALL SELECT movement, p.place, quarts, p.sign * quart_pieces FROM run, (VALUES ('packing', -1), ('cool-room', 1)) p (place, sign)
    UNION ALL SELECT pg_temp.made(16, r), p.place, pints, p.sign * 2 FROM run, (VALUES ('cool-room', -1), ('broken', 1)) p (place, sign)
    UNION ALL SELECT pg_temp.made(17, r), p.place, pints, p.sign * 2 FROM run, (VALUES ('cool-room', 1), ('broken', -1)) p (place, sign) WHERE r % 5 = 0
  ) x USING (movement);
INSERT INTO movements SELECT m.movement, kind, at, at + interval '1 minute', 2024, pg_temp.made(1, 1 + (kind <> 'filling')::int), reason, reverses,
  (SELECT count(*) FROM line l WHERE l.movement = m.movement) FROM moved m ORDER BY at, m.movement;
INSERT INTO balances SELECT l.place, l.item, sum(l.amount), count(*), p.below_zero FROM line l JOIN places p ON p.code = l.place GROUP BY 1, 2, 5;
INSERT INTO entries SELECT movement, line, place, item, amount, sum(amount) OVER w, row_number() OVER w FROM line
  WINDOW w AS (PARTITION BY place, item ORDER BY at, movement);
INSERT INTO canning_runs SELECT lot, movement, day, '{"invented": true}', NULL, day + time '10:01' AT TIME ZONE 'UTC', pg_temp.made(1, 2) FROM run;
INSERT INTO stock_counts VALUES (pg_temp.made(18, 1), 'cool-room', '2024-10-01T08:00Z', 'Somebody', NULL, '2024-10-01T09:00Z', pg_temp.made(1, 1));
INSERT INTO stock_count_lines SELECT pg_temp.made(18, 1), 'QT', lot, quart_pieces, quart_pieces, NULL FROM run WHERE r <= 200;

INSERT INTO availability SELECT i.container, i.grade, sum(b.amount), coalesce(sum(b.amount) FILTER (WHERE i.held), 0), 0, 0
  FROM balances b JOIN items i ON i.id = b.item WHERE b.place = 'cool-room' GROUP BY 1, 2;
INSERT INTO reservation_steps SELECT pg_temp.made(19, 3 * n + s.nth), pg_temp.made(20, n), a.container, a.grade, s.step, s.pieces,
    timestamptz '2024-11-01Z' + (3 * n + s.nth) * interval '1 minute', pg_temp.made(1, 1)
  FROM generate_series(1, greatest(:barrels / 30, 1)) n, (SELECT DISTINCT ON (grade) * FROM availability ORDER BY grade, container) a,
    (VALUES (0, 'reserved', 10), (1, 'released', 4)) s (nth, step, pieces) WHERE a.grade = (ARRAY['golden', 'amber', 'dark'])[1 + n % 3];
UPDATE availability a SET reserved = s.open FROM (SELECT container, grade, sum(CASE step WHEN 'reserved' THEN pieces ELSE -pieces END) AS open
  FROM reservation_steps GROUP BY 1, 2) s WHERE s.container = a.container AND s.grade = a.grade;
INSERT INTO requests SELECT pg_temp.made(1, 1), pg_temp.made(21, n), 'POST /api/barrels', sha256(tag::bytea), day + time '18:00' AT TIME ZONE 'UTC',
  201, '/api/barrels/' || tag, '{"tag":"' || tag || '"}' FROM barrel;
