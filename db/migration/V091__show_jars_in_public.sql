-- Lots whose page anybody may open who scans a jar; the owner says so lot by lot, and may take it back.
CREATE TABLE public_lots (
  lot   text PRIMARY KEY,
  since timestamptz NOT NULL,
  CONSTRAINT public_lot_known FOREIGN KEY (lot) REFERENCES lots
);
GRANT SELECT, INSERT, DELETE ON public_lots TO "${app_role}";
