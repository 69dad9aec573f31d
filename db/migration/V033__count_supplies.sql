-- Jars, caps, labels and cartons as stock: what came, what runs used up, what was counted.

CREATE TABLE supplies (
  code        text PRIMARY KEY,
  name        text NOT NULL,
  kind        text NOT NULL,
  -- the jar size that uses it up; null: jars of any size, or none where nothing is used per jar
  container   text,
  -- so many for one jar
  per_jar     integer,
  -- or one for so many jars: a carton of twelve
  jars_each   integer,
  -- at or under this it is time to order; null where nobody said
  low_line    bigint,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT supply_code_form CHECK (code ~ '^[A-Z0-9][A-Z0-9-]{0,19}$'),
  CONSTRAINT supply_kind_known CHECK (kind IN ('container', 'cap', 'label', 'carton', 'other')),
  CONSTRAINT supply_container_known FOREIGN KEY (container) REFERENCES containers,
  CONSTRAINT supply_use_one_way CHECK (per_jar IS NULL OR jars_each IS NULL),
  CONSTRAINT supply_numbers_positive CHECK (per_jar > 0 AND jars_each > 0 AND low_line >= 0)
);

-- One row per supply that was ever received or counted; without one it is not counted yet.
-- On hand may stand below zero: a run that happened is a fact, and then it is time to count.
CREATE TABLE supply_balances (
  supply  text PRIMARY KEY,
  on_hand bigint NOT NULL,
  -- how many movements made it; the newest carries the same number
  seq     bigint NOT NULL,
  CONSTRAINT supply_balance_supply_known FOREIGN KEY (supply) REFERENCES supplies
);

CREATE TABLE supply_movements (
  id            uuid PRIMARY KEY,
  supply        text NOT NULL,
  seq           bigint NOT NULL,
  kind          text NOT NULL,
  happened_on   date NOT NULL,
  -- received, used, given back or counted
  pieces        bigint NOT NULL,
  -- what that did to what is on hand: nothing where a later count had it in already
  change        bigint NOT NULL,
  on_hand_after bigint NOT NULL,
  -- the run that used it up, or whose taking back gave it back
  movement      uuid,
  note          text,
  recorded_at   timestamptz NOT NULL,
  recorded_by   uuid NOT NULL,
  CONSTRAINT supply_movement_in_order UNIQUE (supply, seq),
  CONSTRAINT supply_movement_balance_known FOREIGN KEY (supply) REFERENCES supply_balances,
  CONSTRAINT supply_movement_kind_known CHECK (kind IN ('receipt', 'count', 'run', 'taken-back')),
  CONSTRAINT supply_movement_pieces_range CHECK (pieces >= 0),
  CONSTRAINT supply_movement_run_named CHECK ((kind IN ('run', 'taken-back')) = (movement IS NOT NULL)),
  CONSTRAINT supply_movement_run_known FOREIGN KEY (movement) REFERENCES movements
);
CREATE UNIQUE INDEX supply_movement_once_per_run ON supply_movements (movement, supply, kind) WHERE movement IS NOT NULL;
CREATE INDEX supply_movement_by_day ON supply_movements (supply, happened_on);

CREATE TRIGGER supply_movements_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON supply_movements FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER supply_balances_stay BEFORE DELETE OR TRUNCATE ON supply_balances FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

GRANT SELECT, INSERT ON supplies, supply_balances, supply_movements TO "${app_role}";
GRANT UPDATE (on_hand, seq) ON supply_balances TO "${app_role}";
GRANT UPDATE (name, low_line) ON supplies TO "${app_role}";
