-- Leases of trees that are paid for in syrup: what was agreed for a season, taps by date, what was handed over, and what is carried on.

-- Names and addresses may be changed and removed; nothing else names a landowner but by id.
CREATE TABLE landowners (
  id          uuid PRIMARY KEY,
  name        text NOT NULL,
  address     text,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL
);
CREATE UNIQUE INDEX landowner_name_once ON landowners (lower(name));

CREATE TABLE leases (
  id          uuid PRIMARY KEY,
  landowner   uuid NOT NULL,
  bush        text NOT NULL,
  season      integer NOT NULL,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT lease_landowner_known FOREIGN KEY (landowner) REFERENCES landowners,
  CONSTRAINT lease_once_a_season UNIQUE (landowner, bush, season),
  CONSTRAINT lease_season_range CHECK (season BETWEEN 1900 AND 2200)
);
CREATE INDEX lease_by_season ON leases (season, id);

-- What was agreed; of several the newest counts, so that a slip of the pen is mended by agreeing anew.
CREATE TABLE lease_terms (
  id                uuid PRIMARY KEY,
  lease             uuid NOT NULL,
  basis             text NOT NULL,
  governs           text NOT NULL,
  rate_per_tap      numeric(15, 3) NOT NULL,
  -- of a gallon; null only where list prices alone tell what a jar counts for
  price             numeric(15, 3),
  currency          text NOT NULL,
  price_list        uuid,
  container_charges jsonb NOT NULL,
  recorded_at       timestamptz NOT NULL,
  recorded_by       uuid NOT NULL,
  CONSTRAINT lease_terms_lease_known FOREIGN KEY (lease) REFERENCES leases,
  CONSTRAINT lease_terms_list_known FOREIGN KEY (price_list) REFERENCES price_lists,
  CONSTRAINT lease_terms_basis_known CHECK (basis IN ('volume', 'list-value', 'volume-plus-container')),
  CONSTRAINT lease_terms_governs_known CHECK (governs IN ('set', 'agreed')),
  CONSTRAINT lease_terms_rate_not_negative CHECK (rate_per_tap >= 0),
  CONSTRAINT lease_terms_price_positive CHECK (price > 0),
  CONSTRAINT lease_terms_price_where_volume CHECK (price IS NOT NULL OR basis = 'list-value'),
  CONSTRAINT lease_terms_currency_form CHECK (currency ~ '^[A-Z]{3}$')
);
CREATE INDEX lease_terms_by_lease ON lease_terms (lease, id);

-- Counts of taps by date: set (counted in the trees) or agreed. Of two from the same day the one entered later counts.
CREATE TABLE lease_taps (
  id          uuid PRIMARY KEY,
  lease       uuid NOT NULL,
  kind        text NOT NULL,
  from_day    date NOT NULL,
  taps        integer NOT NULL,
  note        text,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT lease_taps_lease_known FOREIGN KEY (lease) REFERENCES leases,
  CONSTRAINT lease_taps_kind_known CHECK (kind IN ('set', 'agreed')),
  CONSTRAINT lease_taps_range CHECK (taps BETWEEN 0 AND 1000000)
);
CREATE INDEX lease_taps_by_lease ON lease_taps (lease, from_day, id);

-- Jars handed to a landowner; each line with its contents and what one was worth on the day.
CREATE TABLE lease_deliveries (
  id          uuid PRIMARY KEY,
  lease       uuid NOT NULL,
  on_day      date NOT NULL,
  movement    uuid NOT NULL,
  lines       jsonb NOT NULL,
  note        text,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT lease_delivery_lease_known FOREIGN KEY (lease) REFERENCES leases,
  CONSTRAINT lease_delivery_movement_known FOREIGN KEY (movement) REFERENCES movements,
  CONSTRAINT lease_delivery_movement_once UNIQUE (movement)
);
CREATE INDEX lease_delivery_by_lease ON lease_deliveries (lease, on_day, id);

-- A lease closed at the season's end, with what was left: owed to the landowner, or below zero what was handed over too much.
CREATE TABLE lease_closings (
  lease       uuid PRIMARY KEY,
  on_day      date NOT NULL,
  credit      numeric(15, 3) NOT NULL,
  -- millilitres at 20 °C; null where only money was reckoned
  credit_ml   numeric(15, 3),
  currency    text NOT NULL,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT lease_closing_lease_known FOREIGN KEY (lease) REFERENCES leases,
  CONSTRAINT lease_closing_currency_form CHECK (currency ~ '^[A-Z]{3}$')
);

-- Which lease a closed one's remainder went on to; each remainder once.
CREATE TABLE lease_carries (
  from_lease  uuid PRIMARY KEY,
  into_lease  uuid NOT NULL,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT lease_carry_from_closed FOREIGN KEY (from_lease) REFERENCES lease_closings,
  CONSTRAINT lease_carry_into_known FOREIGN KEY (into_lease) REFERENCES leases,
  CONSTRAINT lease_carry_goes_on CHECK (from_lease <> into_lease)
);
CREATE INDEX lease_carry_into ON lease_carries (into_lease);

CREATE TRIGGER landowners_stay BEFORE DELETE OR TRUNCATE ON landowners FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER leases_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON leases FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER lease_terms_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON lease_terms FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER lease_taps_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON lease_taps FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER lease_deliveries_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON lease_deliveries FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER lease_closings_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON lease_closings FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER lease_carries_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON lease_carries FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

GRANT SELECT, INSERT ON landowners, leases, lease_terms, lease_taps, lease_deliveries, lease_closings, lease_carries TO "${app_role}";
GRANT UPDATE (name, address) ON landowners TO "${app_role}";
