-- Shops that sell the maker's jars on consignment. What stands on a shop's shelf is still the maker's;
-- a count says what was sold and what is missing, and only that is due.

CREATE TABLE shops (
  code        text PRIMARY KEY,
  name        text NOT NULL,
  -- address and whom to ask; may be changed and removed
  details     text,
  place       text NOT NULL,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT shop_name_once UNIQUE (name),
  CONSTRAINT shop_place_known FOREIGN KEY (place) REFERENCES places,
  CONSTRAINT shop_place_once UNIQUE (place)
);

-- What was agreed with a shop from a day on; of two from the same day the one entered later counts.
CREATE TABLE shop_terms (
  id                 uuid PRIMARY KEY,
  shop               text NOT NULL,
  valid_from         date NOT NULL,
  commission_percent numeric(5, 2) NOT NULL,
  -- who bears what is missing or broken
  missing            text NOT NULL,
  -- how much of it the shop bears
  shop_bears_percent numeric(5, 2) NOT NULL,
  -- null: the retail list that holds on the day of the count
  price_list         uuid,
  recorded_at        timestamptz NOT NULL,
  recorded_by        uuid NOT NULL,
  CONSTRAINT shop_terms_shop_known FOREIGN KEY (shop) REFERENCES shops,
  CONSTRAINT shop_terms_list_known FOREIGN KEY (price_list) REFERENCES price_lists,
  CONSTRAINT shop_terms_commission_range CHECK (commission_percent >= 0 AND commission_percent < 100),
  CONSTRAINT shop_terms_missing_known CHECK (missing IN ('shop', 'maker', 'split')),
  CONSTRAINT shop_terms_bears_range CHECK (shop_bears_percent >= 0 AND shop_bears_percent <= 100),
  CONSTRAINT shop_terms_bears_as_named CHECK (missing = 'split' OR shop_bears_percent = CASE missing WHEN 'shop' THEN 100 ELSE 0 END)
);
CREATE INDEX shop_terms_by_shop ON shop_terms (shop, valid_from, id);

-- Jars brought to a shop (delivered) or fetched home from it (fetched).
CREATE TABLE shop_deliveries (
  id          uuid PRIMARY KEY,
  shop        text NOT NULL,
  direction   text NOT NULL,
  on_day      date NOT NULL,
  movement    uuid NOT NULL,
  lines       jsonb NOT NULL,
  note        text,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT shop_delivery_shop_known FOREIGN KEY (shop) REFERENCES shops,
  CONSTRAINT shop_delivery_direction_known CHECK (direction IN ('delivered', 'fetched')),
  CONSTRAINT shop_delivery_movement_known FOREIGN KEY (movement) REFERENCES movements,
  CONSTRAINT shop_delivery_movement_once UNIQUE (movement)
);
CREATE INDEX shop_delivery_by_shop ON shop_deliveries (shop, on_day, id);

-- A shelf counted. The lines say what stood in the book, what was counted, sold, broken and missing, at which price, and what is due.
CREATE TABLE shop_counts (
  id          uuid PRIMARY KEY,
  shop        text NOT NULL,
  on_day      date NOT NULL,
  -- null where nothing was gone
  movement    uuid,
  terms       uuid NOT NULL,
  lines       jsonb NOT NULL,
  due         numeric(15, 3) NOT NULL,
  currency    text NOT NULL,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT shop_count_shop_known FOREIGN KEY (shop) REFERENCES shops,
  CONSTRAINT shop_count_terms_known FOREIGN KEY (terms) REFERENCES shop_terms,
  CONSTRAINT shop_count_movement_known FOREIGN KEY (movement) REFERENCES movements,
  CONSTRAINT shop_count_movement_once UNIQUE (movement),
  CONSTRAINT shop_count_due_not_negative CHECK (due >= 0),
  CONSTRAINT shop_count_currency_form CHECK (currency ~ '^[A-Z]{3}$')
);
CREATE INDEX shop_count_by_shop ON shop_counts (shop, on_day, id);

-- Who counted, where it can be removed.
CREATE TABLE shop_counters (
  count uuid PRIMARY KEY,
  name  text,
  CONSTRAINT shop_counter_count_known FOREIGN KEY (count) REFERENCES shop_counts
);

-- Money a shop paid; below zero when some was paid back.
CREATE TABLE shop_payments (
  id          uuid PRIMARY KEY,
  shop        text NOT NULL,
  on_day      date NOT NULL,
  amount      numeric(15, 3) NOT NULL,
  currency    text NOT NULL,
  note        text,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT shop_payment_shop_known FOREIGN KEY (shop) REFERENCES shops,
  CONSTRAINT shop_payment_not_zero CHECK (amount <> 0),
  CONSTRAINT shop_payment_currency_form CHECK (currency ~ '^[A-Z]{3}$')
);
CREATE INDEX shop_payment_by_shop ON shop_payments (shop, on_day, id);

CREATE TRIGGER shops_stay BEFORE DELETE OR TRUNCATE ON shops FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER shop_terms_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON shop_terms FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER shop_deliveries_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON shop_deliveries FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER shop_counts_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON shop_counts FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER shop_payments_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON shop_payments FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

GRANT SELECT, INSERT ON shops, shop_terms, shop_deliveries, shop_counts, shop_counters, shop_payments TO "${app_role}";
GRANT UPDATE (name, details) ON shops TO "${app_role}";
GRANT UPDATE (name) ON shop_counters TO "${app_role}";
