-- What the owner sets for the farm, one row for each change of each setting. Never changed: what held on a
-- day can always be told, so papers of that day stay as they were.

CREATE TABLE settings (
  id          uuid PRIMARY KEY,
  -- as in the interface: maker, timeZone, instruments.benchScale
  name        text NOT NULL,
  value       jsonb NOT NULL,
  -- holds from this instant until a later one of the same name; of two from the same instant the one recorded later
  valid_from  timestamptz NOT NULL,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT setting_name_form CHECK (name ~ '^[a-zA-Z]{1,40}(\.[a-zA-Z]{1,40})?$'),
  -- a change that began before it was known would change papers already printed
  CONSTRAINT setting_not_backdated CHECK (valid_from >= recorded_at)
);
CREATE TRIGGER settings_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON settings FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

GRANT SELECT, INSERT ON settings TO "${app_role}";
