-- Vessels, their fillings and what was read off them. The tag is the vessel, the filling is the record, the lot is the syrup.

CREATE TABLE vessels (
  tag         text PRIMARY KEY,
  kind        text NOT NULL,
  material    text NOT NULL,
  -- what it holds to the brim, millilitres; null where nobody said
  capacity_ml numeric(12, 3),
  -- the filling in it now or last
  filling     uuid,
  -- false from the first filling until it is recorded as emptied and washed
  washed      boolean NOT NULL DEFAULT true,
  CONSTRAINT vessel_tag_form CHECK (tag ~ '^[A-Za-z0-9][A-Za-z0-9._-]{0,15}$'),
  CONSTRAINT vessel_kind_known CHECK (kind IN ('barrel', 'heel')),
  CONSTRAINT vessel_material_known CHECK (material IN ('stainless', 'plastic', 'coated-steel', 'galvanized', 'other')),
  CONSTRAINT vessel_capacity_positive CHECK (capacity_ml > 0)
);

CREATE TABLE fillings (
  id        uuid PRIMARY KEY,
  tag       text NOT NULL,
  place     text NOT NULL,
  filled_on date NOT NULL,
  season    integer NOT NULL,
  -- the syrup in it; a top-up makes a new lot, and the filling carries the new one
  lot       text NOT NULL,
  state     text NOT NULL,
  -- standard uncertainty of the mass in it, grams
  mass_u    double precision NOT NULL,
  -- tare in grams as a scale reads in air; null when it was only dipped
  tare_g    bigint,
  -- what the dipstick said above the scale at 68 degF, when both were read
  dipstick_gap_ml double precision,
  dipstick_gap_beyond boolean,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT filling_vessel_known FOREIGN KEY (tag) REFERENCES vessels,
  CONSTRAINT filling_place_known FOREIGN KEY (place) REFERENCES places,
  CONSTRAINT filling_lot_known FOREIGN KEY (lot) REFERENCES lots,
  CONSTRAINT filling_lot_once UNIQUE (lot),
  CONSTRAINT filling_state_known CHECK (state IN ('full', 'opened', 'drained')),
  CONSTRAINT filling_uncertainty_range CHECK (mass_u >= 0)
);
CREATE INDEX filling_by_tag ON fillings (tag, recorded_at);
CREATE UNIQUE INDEX filling_one_at_a_time ON fillings (tag) WHERE state <> 'drained';
ALTER TABLE vessels ADD CONSTRAINT vessel_filling_known FOREIGN KEY (filling) REFERENCES fillings DEFERRABLE INITIALLY DEFERRED;

-- What an instrument or a taster said, as it was said, with what it came to.
CREATE TABLE barrel_readings (
  id          uuid PRIMARY KEY,
  filling     uuid NOT NULL,
  lot         text NOT NULL,
  kind        text NOT NULL,
  read_on     date NOT NULL,
  -- as entered: quantities with their units, instrument, reference temperature
  entered     jsonb NOT NULL,
  -- grams, Brix at 20 degC or %Tc, by kind, with its standard uncertainty
  result      double precision NOT NULL,
  result_u    double precision NOT NULL,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT barrel_reading_filling_known FOREIGN KEY (filling) REFERENCES fillings,
  CONSTRAINT barrel_reading_lot_known FOREIGN KEY (lot) REFERENCES lots,
  CONSTRAINT barrel_reading_kind_known CHECK (kind IN ('weighing', 'dipstick', 'density', 'reheat'))
);
CREATE INDEX barrel_reading_by_filling ON barrel_readings (filling, recorded_at);

-- Names stay here, outside the rows that are never changed, so that they can be removed.
CREATE TABLE suppliers (
  id      uuid PRIMARY KEY,
  name    text NOT NULL,
  details text,
  CONSTRAINT supplier_name_once UNIQUE (name)
);
CREATE TABLE purchases (
  id          uuid PRIMARY KEY,
  lot         text NOT NULL,
  supplier    uuid NOT NULL,
  bought_on   date NOT NULL,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT purchase_lot_once UNIQUE (lot),
  CONSTRAINT purchase_lot_known FOREIGN KEY (lot) REFERENCES lots,
  CONSTRAINT purchase_supplier_known FOREIGN KEY (supplier) REFERENCES suppliers
);

CREATE TRIGGER fillings_stay BEFORE DELETE OR TRUNCATE ON fillings FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER barrel_readings_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON barrel_readings FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER purchases_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON purchases FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

GRANT SELECT, INSERT ON vessels, fillings, barrel_readings, suppliers, purchases TO "${app_role}";
GRANT UPDATE (filling, washed, material, capacity_ml) ON vessels TO "${app_role}";
GRANT UPDATE (lot, state, mass_u, tare_g) ON fillings TO "${app_role}";
GRANT UPDATE (name, details) ON suppliers TO "${app_role}";
