-- Price lists and tax rates. A list never changes: a new version is a new list of the same family, so past sales keep their prices.

CREATE TABLE price_lists (
  id           uuid PRIMARY KEY,
  name         text NOT NULL,
  audience     text NOT NULL,
  valid_from   date NOT NULL,
  -- the last day; null while it is open
  valid_to     date,
  currency     text NOT NULL,
  -- whether the prices have the tax in them
  tax_included boolean NOT NULL,
  -- the first version of this list; itself for a first version
  family       uuid NOT NULL,
  version      integer NOT NULL,
  replaces     uuid,
  recorded_at  timestamptz NOT NULL,
  recorded_by  uuid NOT NULL,
  CONSTRAINT price_list_audience_known CHECK (audience IN ('retail', 'show', 'wholesale', 'bulk')),
  CONSTRAINT price_list_days_in_order CHECK (valid_to >= valid_from),
  CONSTRAINT price_list_currency_form CHECK (currency ~ '^[A-Z]{3}$'),
  CONSTRAINT price_list_family_known FOREIGN KEY (family) REFERENCES price_lists,
  CONSTRAINT price_list_replaced_known FOREIGN KEY (replaces) REFERENCES price_lists,
  CONSTRAINT price_list_replaced_once UNIQUE (replaces),
  CONSTRAINT price_list_version_once UNIQUE (family, version),
  CONSTRAINT price_list_first_version CHECK (version >= 1 AND (version = 1) = (replaces IS NULL) AND (version = 1) = (family = id))
);
CREATE INDEX price_list_by_audience ON price_lists (audience, valid_from, id);

CREATE TABLE price_lines (
  list          uuid NOT NULL,
  line          integer NOT NULL,
  container     text NOT NULL,
  -- null for every grade that has no line of its own
  grade         text,
  product_class text NOT NULL,
  -- of one jar, in the currency of the list
  amount        numeric(15, 3) NOT NULL,
  PRIMARY KEY (list, line),
  CONSTRAINT price_line_list_known FOREIGN KEY (list) REFERENCES price_lists,
  CONSTRAINT price_line_container_known FOREIGN KEY (container) REFERENCES containers,
  CONSTRAINT price_line_grade_known CHECK (grade IN ('golden', 'amber', 'dark', 'very-dark', 'processing')),
  CONSTRAINT price_line_class_known CHECK (product_class IN ('food', 'gift', 'other')),
  CONSTRAINT price_line_not_negative CHECK (amount >= 0)
);
CREATE UNIQUE INDEX price_line_once ON price_lines (list, container, coalesce(grade, ''));

CREATE TABLE price_deals (
  list      uuid NOT NULL,
  line      integer NOT NULL,
  container text NOT NULL,
  -- null for jars of any grade, mixed as the buyer likes
  grade     text,
  pieces    integer NOT NULL,
  -- of so many jars together, in the currency of the list
  amount    numeric(15, 3) NOT NULL,
  PRIMARY KEY (list, line),
  CONSTRAINT price_deal_list_known FOREIGN KEY (list) REFERENCES price_lists,
  CONSTRAINT price_deal_container_known FOREIGN KEY (container) REFERENCES containers,
  CONSTRAINT price_deal_grade_known CHECK (grade IN ('golden', 'amber', 'dark', 'very-dark', 'processing')),
  CONSTRAINT price_deal_of_several CHECK (pieces >= 2),
  CONSTRAINT price_deal_not_negative CHECK (amount >= 0)
);
CREATE UNIQUE INDEX price_deal_once ON price_deals (list, container, coalesce(grade, ''), pieces);

CREATE TABLE price_list_withdrawals (
  list         uuid PRIMARY KEY,
  -- the first day on which it no longer holds
  withdrawn_on date NOT NULL,
  reason       text NOT NULL,
  recorded_at  timestamptz NOT NULL,
  recorded_by  uuid NOT NULL,
  CONSTRAINT price_list_withdrawn_known FOREIGN KEY (list) REFERENCES price_lists
);

CREATE TABLE tax_rates (
  id            uuid PRIMARY KEY,
  product_class text NOT NULL,
  -- as the owner wrote it, and in small letters with single blanks
  place         text NOT NULL,
  place_key     text NOT NULL,
  percent       numeric(7, 4) NOT NULL,
  -- of two from the same day the one entered later counts
  valid_from    date NOT NULL,
  source        text,
  recorded_at   timestamptz NOT NULL,
  recorded_by   uuid NOT NULL,
  CONSTRAINT tax_rate_class_known CHECK (product_class IN ('food', 'gift', 'other')),
  CONSTRAINT tax_rate_range CHECK (percent >= 0 AND percent <= 100)
);
CREATE INDEX tax_rate_by_place ON tax_rates (product_class, place_key, valid_from, id);

CREATE TRIGGER price_lists_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON price_lists FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER price_lines_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON price_lines FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER price_deals_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON price_deals FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER price_list_withdrawals_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON price_list_withdrawals FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER tax_rates_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON tax_rates FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

GRANT SELECT, INSERT ON price_lists, price_lines, price_deals, price_list_withdrawals, tax_rates TO "${app_role}";
