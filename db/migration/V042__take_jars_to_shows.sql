-- Jars out to show tables and home again: what was said beside the movements of the ledger.

-- The change money that went along with a pack-out. It counts while the movement stands.
CREATE TABLE show_pack_outs (
  id          uuid PRIMARY KEY,
  show        uuid NOT NULL,
  movement    uuid NOT NULL,
  float       numeric(16, 4),
  currency    text,
  note        text,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT show_pack_out_show_known FOREIGN KEY (show) REFERENCES shows,
  CONSTRAINT show_pack_out_movement_known FOREIGN KEY (movement) REFERENCES movements,
  CONSTRAINT show_pack_out_float_range CHECK (float >= 0),
  CONSTRAINT show_pack_out_float_has_currency CHECK ((float IS NULL) = (currency IS NULL))
);
CREATE INDEX show_pack_out_by_show ON show_pack_outs (show, id);

CREATE TABLE show_transfers (
  id          uuid PRIMARY KEY,
  from_show   uuid NOT NULL,
  to_show     uuid NOT NULL,
  movement    uuid NOT NULL,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT show_transfer_from_known FOREIGN KEY (from_show) REFERENCES shows,
  CONSTRAINT show_transfer_to_known FOREIGN KEY (to_show) REFERENCES shows,
  CONSTRAINT show_transfer_movement_known FOREIGN KEY (movement) REFERENCES movements,
  CONSTRAINT show_transfer_not_to_itself CHECK (from_show <> to_show)
);
CREATE INDEX show_transfer_by_from ON show_transfers (from_show, id);
CREATE INDEX show_transfer_by_to ON show_transfers (to_show, id);

-- A count of what came home.
CREATE TABLE show_backs (
  id          uuid PRIMARY KEY,
  show        uuid NOT NULL,
  -- null where nothing came home: then it says that all of it was sold
  movement    uuid,
  -- the lines as they were told: container, lot, count, broken, sampled, wet labels
  lines       jsonb NOT NULL,
  note        text,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT show_back_show_known FOREIGN KEY (show) REFERENCES shows,
  CONSTRAINT show_back_movement_known FOREIGN KEY (movement) REFERENCES movements
);
CREATE INDEX show_back_by_show ON show_backs (show, id);

-- A count of a cash drawer. The newest count of each drawer holds.
CREATE TABLE show_drawers (
  id          uuid PRIMARY KEY,
  show        uuid NOT NULL,
  drawer      text NOT NULL,
  -- as it was told: how many of each note and coin, and the total somebody wrote down
  said        jsonb NOT NULL,
  counted     numeric(16, 4) NOT NULL,
  currency    text NOT NULL,
  -- why it does not add up; null where it does
  finding     text,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT show_drawer_show_known FOREIGN KEY (show) REFERENCES shows,
  CONSTRAINT show_drawer_range CHECK (counted >= 0)
);
CREATE INDEX show_drawer_by_show ON show_drawers (show, drawer, id);

-- What somebody has to look at after a show, until it is done.
CREATE TABLE show_to_dos (
  id          uuid PRIMARY KEY,
  show        uuid NOT NULL,
  kind        text NOT NULL,
  container   text,
  lot         text,
  count       bigint,
  reason      text NOT NULL,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  done_at     timestamptz,
  done_by     uuid,
  CONSTRAINT show_to_do_show_known FOREIGN KEY (show) REFERENCES shows,
  CONSTRAINT show_to_do_kind_known CHECK (kind IN ('wet-labels', 'check-labels')),
  CONSTRAINT show_to_do_done_by_somebody CHECK ((done_at IS NULL) = (done_by IS NULL))
);
CREATE INDEX show_to_do_by_show ON show_to_dos (show, id);

-- Classes entered and how they were judged; the newest row of a class, lot and size holds.
CREATE TABLE show_awards (
  id          uuid PRIMARY KEY,
  show        uuid NOT NULL,
  class       text NOT NULL,
  lot         text NOT NULL,
  container   text,
  score       numeric(7, 3),
  ribbon      text,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT show_award_show_known FOREIGN KEY (show) REFERENCES shows,
  CONSTRAINT show_award_lot_known FOREIGN KEY (lot) REFERENCES lots,
  CONSTRAINT show_award_container_known FOREIGN KEY (container) REFERENCES containers,
  CONSTRAINT show_award_score_range CHECK (score BETWEEN 0 AND 1000)
);
CREATE INDEX show_award_by_lot ON show_awards (lot, id);
CREATE INDEX show_award_by_show ON show_awards (show, id);

CREATE TRIGGER show_pack_outs_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON show_pack_outs FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER show_transfers_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON show_transfers FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER show_backs_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON show_backs FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER show_drawers_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON show_drawers FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER show_to_dos_stay BEFORE DELETE OR TRUNCATE ON show_to_dos FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER show_awards_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON show_awards FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

GRANT SELECT, INSERT ON show_pack_outs, show_transfers, show_backs, show_drawers, show_to_dos, show_awards TO "${app_role}";
GRANT UPDATE (done_at, done_by) ON show_to_dos TO "${app_role}";
