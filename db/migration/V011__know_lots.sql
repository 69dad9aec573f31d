-- Lots of syrup: what they are made of, how they were graded, whether they are held.

CREATE TABLE lots (
  code          text PRIMARY KEY,
  kind          text NOT NULL,
  made_on       date NOT NULL,
  -- every crop year whose syrup is in it, ascending
  seasons       integer[] NOT NULL,
  -- true Brix at 20 degC and its standard uncertainty
  brix          double precision NOT NULL,
  brix_u        double precision NOT NULL,
  -- these follow the newest row of lot_gradings and lot_holds
  grade         text,
  transmittance double precision,
  taste         text,
  held          boolean NOT NULL DEFAULT false,
  CONSTRAINT lot_code_form CHECK (code ~ '^[A-Z0-9][A-Z0-9.-]{0,19}$'),
  CONSTRAINT lot_kind_known CHECK (kind IN ('bulk', 'packed')),
  CONSTRAINT lot_has_season CHECK (cardinality(seasons) > 0),
  CONSTRAINT lot_brix_range CHECK (brix BETWEEN 0 AND 100 AND brix_u >= 0),
  CONSTRAINT lot_grade_known CHECK (grade IN ('golden', 'amber', 'dark', 'very-dark', 'processing'))
);
COMMENT ON COLUMN lots.code IS 'At most 20 characters, so that it fits the lot number of a GS1 code (AI 10)';
ALTER TABLE items ADD CONSTRAINT item_lot_known FOREIGN KEY (lot) REFERENCES lots;

-- The last number given per prefix, so that codes run without gaps and two writers never take the same one.
CREATE TABLE lot_numbers (
  prefix text PRIMARY KEY,
  last   integer NOT NULL
);

CREATE TABLE lot_parents (
  child  text NOT NULL,
  parent text NOT NULL,
  -- grams of the parent that went in; zero where only an unwashed vessel links the two
  grams  bigint NOT NULL,
  -- fraction (0 to 1) of the child's syrup that came from this parent, added water not counted
  share  double precision NOT NULL,
  CONSTRAINT lot_parent_key PRIMARY KEY (child, parent),
  CONSTRAINT lot_parent_child_known FOREIGN KEY (child) REFERENCES lots,
  CONSTRAINT lot_parent_parent_known FOREIGN KEY (parent) REFERENCES lots,
  CONSTRAINT lot_parent_not_itself CHECK (child <> parent),
  CONSTRAINT lot_parent_share_range CHECK (grams >= 0 AND share BETWEEN 0 AND 1)
);
CREATE INDEX lot_parent_by_parent ON lot_parents (parent);

CREATE TABLE lot_gradings (
  id            uuid PRIMARY KEY,
  lot           text NOT NULL,
  graded_on     date NOT NULL,
  transmittance double precision NOT NULL,
  taste         text NOT NULL,
  grade         text NOT NULL,
  reason        text,
  recorded_at   timestamptz NOT NULL,
  recorded_by   uuid NOT NULL,
  CONSTRAINT lot_grading_lot_known FOREIGN KEY (lot) REFERENCES lots,
  CONSTRAINT lot_grading_range CHECK (transmittance BETWEEN 0 AND 100)
);
CREATE INDEX lot_grading_by_lot ON lot_gradings (lot, recorded_at);

CREATE TABLE lot_holds (
  id          uuid PRIMARY KEY,
  lot         text NOT NULL,
  step        text NOT NULL,
  reason      text NOT NULL,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT lot_hold_lot_known FOREIGN KEY (lot) REFERENCES lots,
  CONSTRAINT lot_hold_step_known CHECK (step IN ('held', 'released'))
);
CREATE INDEX lot_hold_by_lot ON lot_holds (lot, recorded_at);

CREATE TRIGGER lots_stay BEFORE DELETE OR TRUNCATE ON lots FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER lot_parents_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON lot_parents FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER lot_gradings_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON lot_gradings FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER lot_holds_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON lot_holds FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

GRANT SELECT, INSERT ON lots, lot_numbers, lot_parents, lot_gradings, lot_holds TO "${app_role}";
GRANT UPDATE (grade, transmittance, taste, held) ON lots TO "${app_role}";
GRANT UPDATE (last) ON lot_numbers TO "${app_role}";
