-- Net contents checks as they were answered, and the allowed variations the owner read from the handbook. Never changed.

CREATE TABLE net_contents_checks (
  id          uuid PRIMARY KEY,
  lot         text NOT NULL,
  container   text NOT NULL,
  regime      text NOT NULL,
  average     text NOT NULL,
  individual  text NOT NULL,
  -- the answer as it was given, with every weight
  sheet       jsonb NOT NULL,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT net_contents_check_run_known FOREIGN KEY (lot) REFERENCES canning_runs,
  CONSTRAINT net_contents_check_container_known FOREIGN KEY (container) REFERENCES containers,
  CONSTRAINT net_contents_check_regime_known CHECK (regime IN ('eu', 'us')),
  CONSTRAINT net_contents_check_average_known CHECK (average IN ('pass', 'fail')),
  CONSTRAINT net_contents_check_individual_known CHECK (individual IN ('pass', 'fail', 'second-sample', 'not-checked'))
);
CREATE INDEX net_contents_check_by_lot ON net_contents_checks (lot, id);
CREATE TRIGGER net_contents_checks_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON net_contents_checks FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

CREATE TABLE allowed_variations (
  id          uuid PRIMARY KEY,
  -- for one container, or for nominal contents over one volume up to and with another
  container   text,
  over_ml     numeric(20, 9),
  up_to_ml    numeric(20, 9),
  -- as the owner said it
  said        jsonb NOT NULL,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT allowed_variation_container_known FOREIGN KEY (container) REFERENCES containers,
  CONSTRAINT allowed_variation_one_way CHECK ((container IS NULL) = (up_to_ml IS NOT NULL) AND (over_ml IS NULL) = (up_to_ml IS NULL)),
  CONSTRAINT allowed_variation_range CHECK (over_ml >= 0 AND over_ml < up_to_ml)
);
CREATE TRIGGER allowed_variations_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON allowed_variations FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

GRANT SELECT, INSERT ON net_contents_checks, allowed_variations TO "${app_role}";
