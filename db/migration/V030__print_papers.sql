-- Label sheets of the owner, and what labels were printed. Sheets known at a fresh start are reference data; a sheet never changes,
-- so that a print can be made again as it was.

CREATE TABLE label_sheets (
  code         text PRIMARY KEY,
  name         text NOT NULL,
  paper        text NOT NULL,
  -- of the lengths in this row
  unit         text NOT NULL,
  columns      integer NOT NULL,
  rows         integer NOT NULL,
  margin_left  numeric(10, 5) NOT NULL,
  margin_top   numeric(10, 5) NOT NULL,
  label_width  numeric(10, 5) NOT NULL,
  label_height numeric(10, 5) NOT NULL,
  gap_across   numeric(10, 5) NOT NULL,
  gap_down     numeric(10, 5) NOT NULL,
  CONSTRAINT label_sheet_code_form CHECK (code ~ '^[a-z0-9][a-z0-9-]{0,29}$'),
  CONSTRAINT label_sheet_paper_known CHECK (paper IN ('letter', 'a4')),
  CONSTRAINT label_sheet_unit_known CHECK (unit IN ('in', 'mm')),
  CONSTRAINT label_sheet_has_labels CHECK (columns > 0 AND rows > 0 AND label_width > 0 AND label_height > 0),
  CONSTRAINT label_sheet_inside CHECK (margin_left >= 0 AND margin_top >= 0 AND gap_across >= 0 AND gap_down >= 0)
);

CREATE TABLE label_prints (
  id          uuid PRIMARY KEY,
  lot         text NOT NULL,
  container   text NOT NULL,
  pieces      integer NOT NULL,
  -- a code of label_sheets or of the reference data
  sheet       text NOT NULL,
  start_at    integer NOT NULL,
  reprint_of  uuid,
  reason      text,
  -- what stood on the labels, so that a later change of name or grade does not change it
  said        jsonb NOT NULL,
  printed_at  timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT label_print_lot_known FOREIGN KEY (lot) REFERENCES lots,
  CONSTRAINT label_print_container_known FOREIGN KEY (container) REFERENCES containers,
  CONSTRAINT label_print_original_known FOREIGN KEY (reprint_of) REFERENCES label_prints,
  CONSTRAINT label_print_some CHECK (pieces > 0 AND start_at > 0),
  CONSTRAINT label_print_again_says_why CHECK (reprint_of IS NULL OR reason IS NOT NULL)
);
CREATE INDEX label_print_by_lot ON label_prints (lot, id);

CREATE TRIGGER label_sheets_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON label_sheets FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER label_prints_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON label_prints FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

GRANT SELECT, INSERT ON label_sheets, label_prints TO "${app_role}";
