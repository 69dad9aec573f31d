-- A year that is closed takes no more postings. What is recorded later of it is booked in the year after the last closed one, and marked.

ALTER TABLE movements ADD COLUMN late boolean NOT NULL DEFAULT false;
COMMENT ON COLUMN movements.late IS 'it happened in a year that was closed when it was recorded, and is booked in an open one';
CREATE INDEX movement_late ON movements (id) WHERE late;
-- Movements are recorded in the order of their years, almost: ranges of pages tell which hold a year, at no cost to writers.
CREATE INDEX movement_by_book_year ON movements USING brin (book_year) WITH (pages_per_range = 16);

-- Closing a year closes all before it.
CREATE TABLE closed_years (
  year            integer PRIMARY KEY,
  -- the newest movement when it was closed; null in an empty book
  newest_movement uuid,
  closed_at       timestamptz NOT NULL,
  closed_by       uuid NOT NULL,
  CONSTRAINT closed_year_movement_known FOREIGN KEY (newest_movement) REFERENCES movements
);

-- What stood in a year when it was closed, so that anybody can see that it still does.
CREATE TABLE closed_year_sums (
  year      integer PRIMARY KEY,
  movements bigint NOT NULL,
  entries   bigint NOT NULL,
  checksum  numeric NOT NULL,
  CONSTRAINT closed_year_sum_year_known FOREIGN KEY (year) REFERENCES closed_years
);

-- Waits for the postings in flight and lets none begin until the closing ends. It runs as its owner, because the application may only insert.
CREATE FUNCTION hold_postings() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog AS $$
BEGIN
  EXECUTE format('LOCK TABLE %I.movements IN SHARE ROW EXCLUSIVE MODE', TG_TABLE_SCHEMA);
  RETURN NEW;
END $$;
CREATE TRIGGER closed_years_wait BEFORE INSERT ON closed_years FOR EACH ROW EXECUTE FUNCTION hold_postings();

-- A posting that waited for a closing sees it: each question of a function is asked of the book as it stands by then.
CREATE FUNCTION book_in_open_year() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  last_closed integer;
BEGIN
  IF TG_TABLE_SCHEMA = current_schema() THEN
    SELECT max(year) INTO last_closed FROM closed_years;
  ELSE -- a backup is being unpacked beside the book
    EXECUTE format('SELECT max(year) FROM %I.closed_years', TG_TABLE_SCHEMA) INTO last_closed;
  END IF;
  IF NEW.book_year <= last_closed THEN
    NEW.book_year := last_closed + 1;
    NEW.late := true;
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER movements_book_open BEFORE INSERT ON movements FOR EACH ROW EXECUTE FUNCTION book_in_open_year();

CREATE TRIGGER closed_years_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON closed_years FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER closed_year_sums_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON closed_year_sums FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

GRANT SELECT, INSERT ON closed_years, closed_year_sums TO "${app_role}";
