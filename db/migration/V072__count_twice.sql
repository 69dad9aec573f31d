-- Counting rounds: a place is counted by two people who see neither the book nor each other; what differs is counted again.

CREATE TABLE count_rounds (
  id          uuid PRIMARY KEY,
  place       text NOT NULL,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT count_round_place_known FOREIGN KEY (place) REFERENCES places
);

CREATE TABLE count_sheets (
  round       uuid NOT NULL,
  -- 1 and 2: the two counters; 3: the recount
  nth         smallint NOT NULL,
  -- who counted, a name that can be removed
  counted_by  text NOT NULL,
  counted_at  timestamptz NOT NULL,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT count_sheet_key PRIMARY KEY (round, nth),
  CONSTRAINT count_sheet_round_known FOREIGN KEY (round) REFERENCES count_rounds,
  CONSTRAINT count_sheet_nth CHECK (nth BETWEEN 1 AND 3)
);

CREATE TABLE count_sheet_lines (
  round     uuid NOT NULL,
  nth       smallint NOT NULL,
  container text NOT NULL,
  lot       text NOT NULL,
  counted   bigint NOT NULL,
  CONSTRAINT count_sheet_line_key PRIMARY KEY (round, nth, container, lot),
  CONSTRAINT count_sheet_line_sheet_known FOREIGN KEY (round, nth) REFERENCES count_sheets,
  CONSTRAINT count_sheet_line_range CHECK (counted >= 0)
);

CREATE TABLE count_round_ends (
  round       uuid PRIMARY KEY,
  -- the count that the book followed; null if the round was given up
  count       uuid,
  -- why it was given up
  reason      text,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT count_round_end_round_known FOREIGN KEY (round) REFERENCES count_rounds,
  CONSTRAINT count_round_end_count_known FOREIGN KEY (count) REFERENCES stock_counts,
  CONSTRAINT count_round_end_one_way CHECK ((count IS NULL) <> (reason IS NULL))
);

-- Where jars that were short went, if it was said; and whether the lot never stood at that place by the book.
ALTER TABLE stock_count_lines ADD COLUMN cause text;
ALTER TABLE stock_count_lines ADD COLUMN never_there boolean NOT NULL DEFAULT false;

CREATE TRIGGER count_rounds_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON count_rounds FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER count_sheets_stay BEFORE DELETE OR TRUNCATE ON count_sheets FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER count_sheet_lines_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON count_sheet_lines FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER count_round_ends_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON count_round_ends FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

GRANT SELECT, INSERT ON count_rounds, count_sheets, count_sheet_lines, count_round_ends TO "${app_role}";
GRANT UPDATE (counted_by) ON count_sheets TO "${app_role}";
