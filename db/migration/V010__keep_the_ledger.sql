-- The ledger: places, items, movements and their entries, one balance row per place and item,
-- what can still be promised per container and grade, and reservations.
-- Syrup is kept in whole grams, jars in pieces. ${app_role} is the application's role: it may insert
-- and select in what happened, and never change it.

CREATE FUNCTION refuse_change() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION '% on % refused: what happened is not changed; reverse it and enter it anew', TG_OP, TG_TABLE_NAME
    USING ERRCODE = 'restrict_violation';
END $$;

CREATE TABLE places (
  code       text PRIMARY KEY,
  name       text NOT NULL,
  kind       text NOT NULL,
  -- true where a balance may go below zero: outside accounts, conversion accounts, and places where the fact is already past
  below_zero boolean NOT NULL,
  CONSTRAINT place_code_form CHECK (code ~ '^[a-z0-9][a-z0-9-]{0,39}$'),
  CONSTRAINT place_kind_known CHECK (kind IN ('home', 'out', 'outside', 'conversion'))
);
COMMENT ON COLUMN places.kind IS 'home: own rooms; out: own stock away from home (a show table, a shop shelf); outside: the world beyond the book; conversion: where grams of one thing become another';

INSERT INTO places (code, name, kind, below_zero) VALUES
  ('barrel-room', 'Barrel room', 'home', false),
  ('cool-room', 'Cool room', 'home', false),
  ('opening', 'Opening stock', 'outside', true),
  ('boiled', 'Boiled', 'outside', true),
  ('bought', 'Bought', 'outside', true),
  ('water', 'Water added', 'outside', true),
  ('customer', 'Customers', 'outside', true),
  ('bulk-buyer', 'Bulk buyers', 'outside', true),
  ('landowner', 'Landowners', 'outside', true),
  ('given', 'Given away', 'outside', true),
  ('sampled', 'Sampled', 'outside', true),
  ('broken', 'Broken', 'outside', true),
  ('discarded', 'Discarded', 'outside', true),
  ('filter', 'Held up in the filter', 'outside', true),
  ('overfill', 'Filled over the contents', 'outside', true),
  ('unexplained', 'Unexplained', 'outside', true),
  ('blending', 'Blending', 'conversion', true),
  ('packing', 'Packing into jars', 'conversion', true);

CREATE TABLE items (
  id         uuid PRIMARY KEY,
  lot        text NOT NULL,
  container  text,
  -- grams of syrup in one piece, fixed at packing; null for syrup in bulk
  grams_each numeric(16, 6),
  -- the pool in which pieces can be promised; these two follow the lot's grading and holds
  grade      text,
  held       boolean NOT NULL DEFAULT false,
  CONSTRAINT item_once UNIQUE NULLS NOT DISTINCT (lot, container),
  CONSTRAINT item_grams_with_container CHECK ((container IS NULL) = (grams_each IS NULL)),
  CONSTRAINT item_grams_positive CHECK (grams_each > 0),
  CONSTRAINT item_pieces_graded CHECK (container IS NULL OR grade IS NOT NULL)
);
COMMENT ON TABLE items IS 'What is counted: syrup of a lot in grams (container null), or jars of a lot in pieces';

CREATE TABLE movements (
  id          uuid PRIMARY KEY,
  kind        text NOT NULL,
  happened_at timestamptz NOT NULL,
  recorded_at timestamptz NOT NULL,
  book_year   integer NOT NULL,
  recorded_by uuid NOT NULL,
  reason      text,
  reverses    uuid,
  entry_count smallint NOT NULL,
  CONSTRAINT movement_reversed_once UNIQUE (reverses),
  CONSTRAINT movement_reverses_known FOREIGN KEY (reverses) REFERENCES movements,
  CONSTRAINT movement_happened_first CHECK (happened_at <= recorded_at),
  CONSTRAINT movement_moves CHECK (entry_count >= 2)
);
CREATE INDEX movement_by_time ON movements (happened_at, id);

CREATE TABLE balances (
  place      text NOT NULL,
  item       uuid NOT NULL,
  amount     bigint NOT NULL,
  -- how many entries made this balance; the newest entry carries the same number
  seq        bigint NOT NULL,
  below_zero boolean NOT NULL,
  CONSTRAINT balance_key PRIMARY KEY (place, item),
  CONSTRAINT balance_place_known FOREIGN KEY (place) REFERENCES places,
  CONSTRAINT balance_item_known FOREIGN KEY (item) REFERENCES items,
  CONSTRAINT balance_not_below_zero CHECK (amount >= 0 OR below_zero)
);
CREATE INDEX balance_by_item ON balances (item);

CREATE TABLE entries (
  movement      uuid NOT NULL,
  line          smallint NOT NULL,
  place         text NOT NULL,
  item          uuid NOT NULL,
  amount        bigint NOT NULL,
  balance_after bigint NOT NULL,
  seq           bigint NOT NULL,
  CONSTRAINT entry_key PRIMARY KEY (movement, line),
  CONSTRAINT entry_in_order UNIQUE (place, item, seq),
  CONSTRAINT entry_movement_known FOREIGN KEY (movement) REFERENCES movements,
  CONSTRAINT entry_balance_known FOREIGN KEY (place, item) REFERENCES balances,
  CONSTRAINT entry_moves CHECK (amount <> 0)
);

-- All entries of a movement are inserted by one statement; per item they sum to zero.
CREATE FUNCTION entries_sum_to_zero() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF EXISTS (SELECT 1 FROM fresh GROUP BY movement, item HAVING sum(amount) <> 0) THEN
    RAISE EXCEPTION 'entries of a movement do not sum to zero per item' USING ERRCODE = 'check_violation';
  END IF;
  RETURN NULL;
END $$;
CREATE TRIGGER entries_sum_to_zero AFTER INSERT ON entries
  REFERENCING NEW TABLE AS fresh FOR EACH STATEMENT EXECUTE FUNCTION entries_sum_to_zero();

CREATE TABLE availability (
  container text NOT NULL,
  grade     text NOT NULL,
  on_hand   bigint NOT NULL,
  held      bigint NOT NULL,
  reserved  bigint NOT NULL,
  out       bigint NOT NULL,
  CONSTRAINT availability_key PRIMARY KEY (container, grade),
  CONSTRAINT availability_reserved_not_below_zero CHECK (reserved >= 0)
);
COMMENT ON TABLE availability IS 'Pieces by container and grade: on_hand at home and out; held at home; reserved; out (shows, shops). What can be promised is on_hand - held - reserved - out, and may stand below zero after breakage, hold or re-grading: then it is a to-do';

CREATE TABLE reservation_steps (
  id          uuid PRIMARY KEY,
  reservation uuid NOT NULL,
  container   text NOT NULL,
  grade       text NOT NULL,
  step        text NOT NULL,
  pieces      bigint NOT NULL,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT reservation_step_known CHECK (step IN ('reserved', 'taken', 'released', 'lapsed')),
  CONSTRAINT reservation_step_positive CHECK (pieces > 0),
  CONSTRAINT reservation_pool_known FOREIGN KEY (container, grade) REFERENCES availability
);
CREATE INDEX reservation_step_by_reservation ON reservation_steps (reservation);

CREATE TRIGGER movements_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON movements FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER entries_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON entries FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER reservation_steps_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON reservation_steps FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER items_stay BEFORE DELETE OR TRUNCATE ON items FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER balances_stay BEFORE DELETE OR TRUNCATE ON balances FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

GRANT SELECT, INSERT ON places, items, movements, entries, balances, availability, reservation_steps TO "${app_role}";
GRANT UPDATE (grade, held) ON items TO "${app_role}";
GRANT UPDATE (amount, seq) ON balances TO "${app_role}";
GRANT UPDATE (on_hand, held, reserved, out) ON availability TO "${app_role}";
