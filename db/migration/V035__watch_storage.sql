-- What the thermometer in a storeroom said.

CREATE TABLE storeroom_temperatures (
  id          uuid PRIMARY KEY,
  place       text NOT NULL,
  read_at     timestamptz NOT NULL,
  -- as entered, and in degC for comparing
  value       numeric(12, 4) NOT NULL,
  unit        text NOT NULL,
  celsius     numeric(12, 6) NOT NULL,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT storeroom_temperature_place_known FOREIGN KEY (place) REFERENCES places,
  CONSTRAINT storeroom_temperature_unit_known CHECK (unit IN ('degF', 'degC')),
  CONSTRAINT storeroom_temperature_range CHECK (celsius BETWEEN -60 AND 80),
  CONSTRAINT storeroom_temperature_read_first CHECK (read_at <= recorded_at)
);
CREATE INDEX storeroom_temperature_by_time ON storeroom_temperatures (place, read_at);
CREATE TRIGGER storeroom_temperatures_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON storeroom_temperatures FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

GRANT SELECT, INSERT ON storeroom_temperatures TO "${app_role}";
