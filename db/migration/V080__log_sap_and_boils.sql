-- The sugarhouse's log: sap gathered, concentrate made, boils with what went in and what was drawn off. It moves no stock: what stands
-- in barrels is weighed when they are filled, and the log is what that is compared with.

-- What happened, as it was said. Parts of a boil (feeds, draw-offs, notes) name it.
CREATE TABLE sugarhouse_entries (
  id          uuid PRIMARY KEY,
  kind        text NOT NULL,
  boil        uuid,
  season      integer NOT NULL,
  on_day      date NOT NULL,
  -- whose sap it is; for sap, and for sap boiled without a tank between
  bush        text,
  -- as entered: quantities with their units, instrument, reference temperature. A barrel is named by its tag and nothing refers to the
  -- barrel's record, because it is filled over several draw-offs and entered once it is full.
  entered     jsonb NOT NULL,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT sugarhouse_entry_boil_known FOREIGN KEY (boil) REFERENCES sugarhouse_entries,
  CONSTRAINT sugarhouse_entry_kind_known CHECK (kind IN ('sap', 'concentrate', 'boil', 'feed', 'draw-off', 'note')),
  CONSTRAINT sugarhouse_entry_part_of_boil CHECK ((boil IS NOT NULL) = (kind IN ('feed', 'draw-off', 'note'))),
  CONSTRAINT sugarhouse_entry_sap_of_bush CHECK (bush IS NOT NULL OR kind <> 'sap'),
  CONSTRAINT sugarhouse_entry_season_range CHECK (season BETWEEN 1900 AND 2200)
);
CREATE INDEX sugarhouse_entry_by_season ON sugarhouse_entries (season, kind, id);
CREATE INDEX sugarhouse_entry_by_boil ON sugarhouse_entries (boil, id) WHERE boil IS NOT NULL;

-- What an entry came to, with standard uncertainties (GUM).
CREATE TABLE sugarhouse_amounts (
  entry   uuid NOT NULL,
  role    text NOT NULL,
  -- the tank it went to or came from; null where there was none between
  tank    text,
  -- millilitres at 20 °C
  ml      double precision NOT NULL,
  ml_u    double precision NOT NULL,
  grams   double precision NOT NULL,
  grams_u double precision NOT NULL,
  -- true Brix
  brix    double precision NOT NULL,
  brix_u  double precision NOT NULL,
  -- grams of sugar; its uncertainty is kept, because that of mass and Brix cannot be put together again
  sugar   double precision NOT NULL,
  sugar_u double precision NOT NULL,
  CONSTRAINT sugarhouse_amount_once PRIMARY KEY (entry, role),
  CONSTRAINT sugarhouse_amount_entry_known FOREIGN KEY (entry) REFERENCES sugarhouse_entries,
  CONSTRAINT sugarhouse_amount_role_known CHECK (role IN ('gathered', 'taken', 'made', 'boiled', 'drawn')),
  CONSTRAINT sugarhouse_amount_range CHECK (ml > 0 AND grams > 0 AND brix > 0 AND sugar > 0
    AND ml_u >= 0 AND grams_u >= 0 AND brix_u >= 0 AND sugar_u >= 0)
);
CREATE INDEX sugarhouse_amount_by_tank ON sugarhouse_amounts (tank) WHERE tank IS NOT NULL;

-- An entry taken back, once, with the reason; it stays in the log and counts for nothing.
CREATE TABLE sugarhouse_reversals (
  entry       uuid PRIMARY KEY,
  reason      text NOT NULL,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT sugarhouse_reversal_entry_known FOREIGN KEY (entry) REFERENCES sugarhouse_entries,
  CONSTRAINT sugarhouse_reversal_reason_said CHECK (length(btrim(reason)) > 0)
);

CREATE TRIGGER sugarhouse_entries_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON sugarhouse_entries FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER sugarhouse_amounts_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON sugarhouse_amounts FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER sugarhouse_reversals_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON sugarhouse_reversals FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

GRANT SELECT, INSERT ON sugarhouse_entries, sugarhouse_amounts, sugarhouse_reversals TO "${app_role}";
