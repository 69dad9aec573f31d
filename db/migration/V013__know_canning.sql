-- Container sizes and canning runs.

CREATE TABLE containers (
  code         text PRIMARY KEY,
  name         text NOT NULL,
  -- as the owner said it, and in millilitres at 68 degF (20 degC)
  net_value    numeric(20, 9) NOT NULL,
  net_unit     text NOT NULL,
  net_ml       numeric(20, 9) NOT NULL,
  brimful_ml   numeric(20, 9),
  empty_g      numeric(12, 3),
  material     text NOT NULL,
  CONSTRAINT container_code_form CHECK (code ~ '^[A-Z0-9][A-Z0-9-]{0,11}$'),
  CONSTRAINT container_material_known CHECK (material IN ('glass', 'plastic', 'tin', 'other')),
  CONSTRAINT container_contents_positive CHECK (net_ml > 0),
  CONSTRAINT container_brim_holds_contents CHECK (brimful_ml >= net_ml)
);

-- US sizes of 231 cubic inches to the gallon (NIST SP 811), and the metric glass sizes of common practice.
INSERT INTO containers (code, name, net_value, net_unit, net_ml, material) VALUES
  ('GAL',   'Gallon jug',      1,    'gal',  3785.411784, 'plastic'),
  ('HGAL',  'Half-gallon jug', 0.5,  'gal',  1892.705892, 'plastic'),
  ('QT',    'Quart jug',       1,    'qt',   946.352946,  'plastic'),
  ('PT',    'Pint jug',        1,    'pt',   473.176473,  'plastic'),
  ('HP',    'Half-pint jug',   8,    'floz', 236.5882365, 'plastic'),
  ('G1000', 'Glass 1 L',       1,    'L',    1000,        'glass'),
  ('G500',  'Glass 500 mL',    500,  'mL',   500,         'glass'),
  ('G250',  'Glass 250 mL',    250,  'mL',   250,         'glass'),
  ('G100',  'Glass 100 mL',    100,  'mL',   100,         'glass');

CREATE TABLE canning_runs (
  lot            text PRIMARY KEY,
  movement       uuid NOT NULL,
  run_on         date NOT NULL,
  -- the answer as it was given: blend, fills, heel, shrink by cause
  sheet          jsonb NOT NULL,
  -- why a run below the capping temperature or off the density limits was released; null when it was within
  release_reason text,
  recorded_at    timestamptz NOT NULL,
  recorded_by    uuid NOT NULL,
  CONSTRAINT canning_run_lot_known FOREIGN KEY (lot) REFERENCES lots,
  CONSTRAINT canning_run_movement_known FOREIGN KEY (movement) REFERENCES movements
);
CREATE INDEX canning_run_by_day ON canning_runs (run_on, lot);
CREATE TRIGGER canning_runs_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON canning_runs FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

CREATE TABLE stock_counts (
  id          uuid PRIMARY KEY,
  place       text NOT NULL,
  counted_at  timestamptz NOT NULL,
  -- who counted, a name that can be removed
  counted_by  text NOT NULL,
  movement    uuid,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT stock_count_place_known FOREIGN KEY (place) REFERENCES places,
  CONSTRAINT stock_count_movement_known FOREIGN KEY (movement) REFERENCES movements
);
CREATE TABLE stock_count_lines (
  count     uuid NOT NULL,
  container text NOT NULL,
  lot       text NOT NULL,
  book      bigint NOT NULL,
  counted   bigint NOT NULL,
  -- the lot this one was probably mislabelled with
  swap_with text,
  CONSTRAINT stock_count_line_key PRIMARY KEY (count, container, lot),
  CONSTRAINT stock_count_line_count_known FOREIGN KEY (count) REFERENCES stock_counts,
  CONSTRAINT stock_count_line_range CHECK (counted >= 0)
);
CREATE TRIGGER stock_count_lines_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON stock_count_lines FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

GRANT SELECT, INSERT ON containers, canning_runs, stock_counts, stock_count_lines TO "${app_role}";
GRANT UPDATE (counted_by) ON stock_counts TO "${app_role}";
