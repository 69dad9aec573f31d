-- Settlements of shows as they were told; the newest one holds, and reading it reckons it anew.

CREATE TABLE show_settlements (
  id          uuid PRIMARY KEY,
  show        uuid NOT NULL,
  -- what was said with it: payouts, travel, helper, hours
  said        jsonb NOT NULL,
  -- the answer as it was given
  told        jsonb NOT NULL,
  -- what it posted; null if the book agreed already or a count is still to come
  movement    uuid,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT show_settlement_show_known FOREIGN KEY (show) REFERENCES shows,
  CONSTRAINT show_settlement_movement_known FOREIGN KEY (movement) REFERENCES movements
);
CREATE INDEX show_settlement_by_show ON show_settlements (show, id);

CREATE TRIGGER show_settlements_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON show_settlements FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

GRANT SELECT, INSERT ON show_settlements TO "${app_role}";
