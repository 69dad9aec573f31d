-- Recalls: what was called back and why, what it touched, and how it ended. Who holds jars is asked anew at every reading,
-- so that no name stands here.

CREATE TABLE recalls (
  id          uuid PRIMARY KEY,
  lot         text NOT NULL,
  -- the vessel it was named by; null if the lot was named
  barrel      text,
  reason      text NOT NULL,
  -- true where nothing was held and nobody is to be told
  rehearsal   boolean NOT NULL,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT recall_lot_known FOREIGN KEY (lot) REFERENCES lots,
  CONSTRAINT recall_barrel_known FOREIGN KEY (barrel) REFERENCES vessels
);

CREATE TABLE recall_lots (
  recall uuid NOT NULL,
  lot    text NOT NULL,
  -- fraction (0 to 1) of this lot's syrup that came from the recalled lot; 1 for the recalled lot itself
  share  double precision NOT NULL,
  CONSTRAINT recall_lot_key PRIMARY KEY (recall, lot),
  CONSTRAINT recall_lot_recall_known FOREIGN KEY (recall) REFERENCES recalls,
  CONSTRAINT recall_lot_touched_known FOREIGN KEY (lot) REFERENCES lots,
  CONSTRAINT recall_lot_share_range CHECK (share BETWEEN 0 AND 1.000001)
);
CREATE INDEX recall_lot_by_lot ON recall_lots (lot);

CREATE TABLE recall_ends (
  recall      uuid PRIMARY KEY,
  reason      text NOT NULL,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT recall_end_recall_known FOREIGN KEY (recall) REFERENCES recalls
);

CREATE TRIGGER recalls_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON recalls FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER recall_lots_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON recall_lots FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER recall_ends_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON recall_ends FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

GRANT SELECT, INSERT ON recalls, recall_lots, recall_ends TO "${app_role}";

-- A recall asks who bought barrels of a lot.
CREATE INDEX bulk_sale_by_lot ON bulk_sales (lot);
