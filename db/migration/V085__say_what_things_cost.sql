-- What things cost, and how stock is valued year by year. A cost says what it belongs to; a slip of the pen is taken back with a reason.

CREATE TABLE costs (
  id          uuid PRIMARY KEY,
  on_day      date NOT NULL,
  kind        text NOT NULL,
  -- what it belongs to, one of these
  season      integer,
  lot         text,
  run         text,
  container   text,
  supply      text,
  show        uuid,
  amount      numeric(15, 3) NOT NULL,
  currency    text NOT NULL,
  -- where it was told by the hour
  hours       numeric(9, 2),
  rate        numeric(15, 3),
  -- of a container or supply: the amount is for so many of it, from the day on
  pieces      integer,
  note        text,
  book_year   integer NOT NULL,
  late        boolean NOT NULL DEFAULT false,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT cost_kind_known CHECK (kind IN
    ('fuel', 'filter-aid', 'membrane', 'labour', 'fee', 'syrup', 'jar', 'cap', 'label', 'carton', 'other')),
  CONSTRAINT cost_belongs_to_one CHECK (num_nonnulls(season, lot, run, container, supply, show) = 1),
  CONSTRAINT cost_season_range CHECK (season BETWEEN 1900 AND 2999),
  CONSTRAINT cost_lot_known FOREIGN KEY (lot) REFERENCES lots,
  CONSTRAINT cost_run_known FOREIGN KEY (run) REFERENCES canning_runs,
  CONSTRAINT cost_container_known FOREIGN KEY (container) REFERENCES containers,
  CONSTRAINT cost_supply_known FOREIGN KEY (supply) REFERENCES supplies,
  CONSTRAINT cost_show_known FOREIGN KEY (show) REFERENCES shows,
  CONSTRAINT cost_positive CHECK (amount > 0),
  CONSTRAINT cost_hours_with_rate CHECK ((hours IS NULL) = (rate IS NULL) AND hours > 0 AND rate >= 0),
  CONSTRAINT cost_pieces_of_packing CHECK ((pieces IS NULL) = (container IS NULL AND supply IS NULL) AND pieces > 0),
  CONSTRAINT cost_currency_form CHECK (currency ~ '^[A-Z]{3}$')
);
CREATE INDEX cost_by_year ON costs (book_year, id);

CREATE TABLE cost_reversals (
  cost        uuid PRIMARY KEY,
  reason      text NOT NULL,
  book_year   integer NOT NULL,
  late        boolean NOT NULL DEFAULT false,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT cost_reversal_cost_known FOREIGN KEY (cost) REFERENCES costs
);

-- How stock is valued in a year; of several the newest counts, and a year without one goes by the year before.
CREATE TABLE cost_methods (
  id          uuid PRIMARY KEY,
  year        integer NOT NULL,
  method      text NOT NULL,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT cost_method_known CHECK (method IN ('specific-lot', 'moving-average', 'first-in-first-out')),
  CONSTRAINT cost_method_year_range CHECK (year BETWEEN 1900 AND 2999)
);
CREATE INDEX cost_method_by_year ON cost_methods (year, id);

-- Waits for a closing at work, then books in an open year. What was recorded before the closing stays where it was, so that a backup loads as it was saved.
CREATE FUNCTION book_cost_in_open_year() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  last_closed integer;
BEGIN
  PERFORM pg_advisory_xact_lock_shared(hashtextextended('close a year', 0));
  EXECUTE format('SELECT max(year) FROM %I.closed_years WHERE closed_at <= $1', TG_TABLE_SCHEMA)
    INTO last_closed USING NEW.recorded_at;
  IF NEW.book_year <= last_closed THEN
    NEW.book_year := last_closed + 1;
    NEW.late := true;
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER costs_book_open BEFORE INSERT ON costs FOR EACH ROW EXECUTE FUNCTION book_cost_in_open_year();
CREATE TRIGGER cost_reversals_book_open BEFORE INSERT ON cost_reversals FOR EACH ROW EXECUTE FUNCTION book_cost_in_open_year();

CREATE FUNCTION keep_cost_method_of_closed_year() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  last_closed integer;
BEGIN
  PERFORM pg_advisory_xact_lock_shared(hashtextextended('close a year', 0));
  EXECUTE format('SELECT max(year) FROM %I.closed_years WHERE closed_at <= $1', TG_TABLE_SCHEMA)
    INTO last_closed USING NEW.recorded_at;
  IF NEW.year <= last_closed THEN
    RAISE EXCEPTION 'the year % is closed and keeps its method', NEW.year USING ERRCODE = 'restrict_violation';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER cost_methods_of_open_years BEFORE INSERT ON cost_methods FOR EACH ROW EXECUTE FUNCTION keep_cost_method_of_closed_year();

CREATE TRIGGER costs_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON costs FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER cost_reversals_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON cost_reversals FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER cost_methods_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON cost_methods FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

GRANT SELECT, INSERT ON costs, cost_reversals, cost_methods TO "${app_role}";
