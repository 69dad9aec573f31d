-- Bushes on the maker's own land, where no lease says how many taps there are.

CREATE TABLE own_bushes (
  id          uuid PRIMARY KEY,
  name        text NOT NULL,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL
);
CREATE UNIQUE INDEX own_bush_name_once ON own_bushes (lower(name));

-- Taps counted in the trees by date; of a season the newest counts, of two from the same day the one entered later.
CREATE TABLE own_bush_taps (
  id          uuid PRIMARY KEY,
  bush        uuid NOT NULL,
  season      integer NOT NULL,
  from_day    date NOT NULL,
  taps        integer NOT NULL,
  note        text,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT own_bush_taps_bush_known FOREIGN KEY (bush) REFERENCES own_bushes,
  CONSTRAINT own_bush_taps_range CHECK (taps BETWEEN 0 AND 1000000),
  CONSTRAINT own_bush_taps_season_range CHECK (season BETWEEN 1900 AND 2200)
);
CREATE INDEX own_bush_taps_by_bush ON own_bush_taps (bush, season, from_day, id);

CREATE TRIGGER own_bushes_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON own_bushes FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER own_bush_taps_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON own_bush_taps FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

GRANT SELECT, INSERT ON own_bushes, own_bush_taps TO "${app_role}";
