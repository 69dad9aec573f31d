-- Sales at show tables and away from them, each under the id its device made.

-- Jars whose lot nobody wrote down: one item per container and, where it is known, grade.
ALTER TABLE items ALTER COLUMN lot DROP NOT NULL;
ALTER TABLE items DROP CONSTRAINT item_once;
CREATE UNIQUE INDEX item_once ON items (lot, container) NULLS NOT DISTINCT WHERE lot IS NOT NULL;
CREATE UNIQUE INDEX item_without_lot_once ON items (container, grade) NULLS NOT DISTINCT WHERE lot IS NULL;
ALTER TABLE items DROP CONSTRAINT item_grams_with_container;
ALTER TABLE items ADD CONSTRAINT item_grams_with_container
  CHECK ((container IS NULL OR lot IS NULL) = (grams_each IS NULL));
ALTER TABLE items DROP CONSTRAINT item_pieces_graded;
ALTER TABLE items ADD CONSTRAINT item_pieces_graded CHECK (container IS NULL OR lot IS NULL OR grade IS NOT NULL);
ALTER TABLE items ADD CONSTRAINT item_without_lot_is_jars CHECK (lot IS NOT NULL OR container IS NOT NULL);
COMMENT ON COLUMN items.lot IS 'null for jars sold or carried without saying of which lot; counts settle them';

-- Every id under which a sale was told; whoever enters it first keeps the sale.
CREATE TABLE sale_ids (
  id uuid PRIMARY KEY
);

CREATE TABLE sales (
  -- made by the device that recorded it
  id          uuid PRIMARY KEY,
  place       text NOT NULL,
  channel     text NOT NULL,
  -- by the device's clock; happened_at is what the book goes by
  said_at     timestamptz NOT NULL,
  happened_at timestamptz NOT NULL,
  price_list  uuid,
  currency    text NOT NULL,
  -- what the goods came to after deals; null if a price was not known
  total       numeric(15, 3),
  -- what a deal took off the plain prices
  deal_saving numeric(15, 3) NOT NULL,
  -- the tax in the total; none where no rate was entered
  tax         numeric(15, 3) NOT NULL,
  -- what was handed over; null if it was not said
  cash        numeric(15, 3),
  card        numeric(15, 3),
  owing       numeric(15, 3),
  change      numeric(15, 3) NOT NULL,
  -- the sale as it was said, in canonical form: a repeat is compared with it
  said        text NOT NULL,
  movement    uuid NOT NULL,
  buyer       uuid,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT sale_id_told FOREIGN KEY (id) REFERENCES sale_ids,
  CONSTRAINT sale_place_known FOREIGN KEY (place) REFERENCES places,
  CONSTRAINT sale_channel_known CHECK (channel IN ('table', 'farm', 'post', 'wholesale')),
  CONSTRAINT sale_movement_known FOREIGN KEY (movement) REFERENCES movements,
  CONSTRAINT sale_movement_once UNIQUE (movement),
  CONSTRAINT sale_currency_form CHECK (currency ~ '^[A-Z]{3}$')
);
CREATE INDEX sale_by_place ON sales (place, happened_at, id);

CREATE TABLE sale_lines (
  sale       uuid NOT NULL,
  line       smallint NOT NULL,
  container  text NOT NULL,
  -- as it was said; may be no lot of the book
  lot        text,
  item       uuid NOT NULL,
  pieces     bigint NOT NULL,
  -- for one piece; null if it is not known
  unit_price numeric(15, 3),
  -- whether the price was said with the sale, not looked up
  price_said boolean NOT NULL,
  -- what the line came to, its share of a deal in it; null if the price is not known
  amount     numeric(15, 3),
  CONSTRAINT sale_line_key PRIMARY KEY (sale, line),
  CONSTRAINT sale_line_sale_known FOREIGN KEY (sale) REFERENCES sales,
  CONSTRAINT sale_line_item_known FOREIGN KEY (item) REFERENCES items,
  CONSTRAINT sale_line_positive CHECK (pieces > 0)
);
CREATE INDEX sale_line_by_item ON sale_lines (item);

-- What somebody should look at; nothing of it kept the sale out.
CREATE TABLE sale_notes (
  sale   uuid NOT NULL,
  line   smallint NOT NULL,
  code   text NOT NULL,
  detail text NOT NULL,
  CONSTRAINT sale_note_sale_known FOREIGN KEY (sale) REFERENCES sales
);
CREATE INDEX sale_note_by_sale ON sale_notes (sale);

-- An id that came again with other content: both are kept, the first one counts.
CREATE TABLE sale_conflicts (
  id          uuid PRIMARY KEY,
  sale        uuid NOT NULL,
  place       text NOT NULL,
  said        text NOT NULL,
  said_hash   bytea NOT NULL,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT sale_conflict_sale_known FOREIGN KEY (sale) REFERENCES sales,
  CONSTRAINT sale_conflict_once UNIQUE (sale, said_hash)
);

CREATE TRIGGER sale_ids_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON sale_ids FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER sales_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON sales FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER sale_lines_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON sale_lines FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER sale_notes_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON sale_notes FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER sale_conflicts_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON sale_conflicts FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

GRANT SELECT, INSERT ON sale_ids, sales, sale_lines, sale_notes, sale_conflicts TO "${app_role}";
