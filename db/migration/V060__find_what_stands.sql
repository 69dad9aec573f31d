-- A balance that came to nothing stays a row for ever; what stands today is found without reading those.
-- The column changes only when something comes or the last of it goes, so that most updates of a balance touch no index.

ALTER TABLE balances ADD COLUMN standing boolean NOT NULL GENERATED ALWAYS AS (amount <> 0) STORED;
CREATE INDEX balance_standing ON balances (place, item) WHERE standing;
-- At own places little of what ever stood there still stands; outside, everything does.
CREATE STATISTICS balance_standing_by_place (mcv) ON place, standing FROM balances;
