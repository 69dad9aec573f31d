-- Sales away from shows: who bought, the number of the paper, and jars that came back.

-- Names and addresses stand beside the sales, so that they can be removed.
CREATE TABLE sale_buyers (
  id      uuid PRIMARY KEY,
  name    text,
  address text[] NOT NULL,
  contact text
);
COMMENT ON TABLE sale_buyers IS 'a buyer whose name is null was removed';

-- The last number given in a year; the row is locked while a sale takes the next, so none is left out.
CREATE TABLE sale_paper_numbers (
  year integer PRIMARY KEY,
  last integer NOT NULL
);

CREATE TABLE sale_papers (
  sale      uuid PRIMARY KEY,
  year      integer NOT NULL,
  number    integer NOT NULL,
  issued_on date NOT NULL,
  CONSTRAINT sale_paper_sale_known FOREIGN KEY (sale) REFERENCES sales,
  CONSTRAINT sale_paper_number_once UNIQUE (year, number)
);

-- Jars that a buyer brought back wait here, so that nobody promises them before somebody looked.
INSERT INTO places (code, name, kind, below_zero) VALUES
  ('to-inspect', 'Returned, to be inspected', 'out', false);

CREATE TABLE sale_returns (
  id          uuid PRIMARY KEY,
  sale        uuid NOT NULL,
  movement    uuid NOT NULL,
  reason      text NOT NULL,
  -- what was paid back; null for nothing
  refund      numeric(15, 3),
  currency    text,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT sale_return_sale_known FOREIGN KEY (sale) REFERENCES sales,
  CONSTRAINT sale_return_movement_known FOREIGN KEY (movement) REFERENCES movements,
  CONSTRAINT sale_return_refund_range CHECK (refund >= 0)
);
CREATE INDEX sale_return_by_sale ON sale_returns (sale, id);

CREATE TABLE sale_return_lines (
  return_id uuid NOT NULL,
  item      uuid NOT NULL,
  pieces    bigint NOT NULL,
  CONSTRAINT sale_return_line_key PRIMARY KEY (return_id, item),
  CONSTRAINT sale_return_line_return_known FOREIGN KEY (return_id) REFERENCES sale_returns,
  CONSTRAINT sale_return_line_item_known FOREIGN KEY (item) REFERENCES items,
  CONSTRAINT sale_return_line_positive CHECK (pieces > 0)
);

CREATE TABLE sale_inspections (
  id          uuid PRIMARY KEY,
  return_id   uuid NOT NULL,
  movement    uuid NOT NULL,
  note        text,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT sale_inspection_return_known FOREIGN KEY (return_id) REFERENCES sale_returns,
  CONSTRAINT sale_inspection_movement_known FOREIGN KEY (movement) REFERENCES movements
);
CREATE INDEX sale_inspection_by_return ON sale_inspections (return_id);

CREATE TRIGGER sale_papers_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON sale_papers FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER sale_returns_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON sale_returns FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER sale_return_lines_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON sale_return_lines FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER sale_inspections_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON sale_inspections FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

GRANT SELECT, INSERT ON sale_buyers, sale_paper_numbers, sale_papers, sale_returns, sale_return_lines, sale_inspections TO "${app_role}";
GRANT UPDATE (name, address, contact) ON sale_buyers TO "${app_role}";
GRANT UPDATE (last) ON sale_paper_numbers TO "${app_role}";
