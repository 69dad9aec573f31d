-- Gift boxes as recipes, what packed boxes weighed, the carriers' zones and days, and what the owner plans to can.

CREATE TABLE gift_boxes (
  id          uuid PRIMARY KEY,
  name        text NOT NULL,
  price       numeric(15, 3) NOT NULL,
  currency    text NOT NULL,
  -- contents with their substitutes in order, carton, ribbon, card
  recipe      jsonb NOT NULL,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT gift_box_price_range CHECK (price >= 0),
  CONSTRAINT gift_box_currency_form CHECK (currency ~ '^[A-Z]{3}$')
);
COMMENT ON TABLE gift_boxes IS 'Never changed: a newer box of the same name takes its place for new orders, and orders made before keep theirs';
CREATE INDEX gift_box_by_name ON gift_boxes (lower(name), id);

CREATE TABLE gift_box_weighings (
  id          uuid PRIMARY KEY,
  box         uuid NOT NULL,
  weighed_on  date NOT NULL,
  -- one packed box, as a scale reads in air
  grams       numeric(12, 3) NOT NULL,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT gift_box_weighing_box_known FOREIGN KEY (box) REFERENCES gift_boxes,
  CONSTRAINT gift_box_weighing_positive CHECK (grams > 0)
);
CREATE INDEX gift_box_weighing_by_box ON gift_box_weighings (box);

CREATE TABLE carrier_tables (
  id          uuid PRIMARY KEY,
  carrier     text NOT NULL,
  -- holds from this day until a later table of the same carrier; of two from the same day the one recorded later
  valid_from  date NOT NULL,
  said        jsonb NOT NULL,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL
);
CREATE INDEX carrier_table_by_day ON carrier_tables (lower(carrier), valid_from, id);

CREATE TABLE planned_canning (
  id           uuid PRIMARY KEY,
  planned_on   date NOT NULL,
  container    text NOT NULL,
  grade        text NOT NULL,
  pieces       bigint NOT NULL,
  withdrawn_at timestamptz,
  recorded_at  timestamptz NOT NULL,
  recorded_by  uuid NOT NULL,
  CONSTRAINT planned_canning_container_known FOREIGN KEY (container) REFERENCES containers,
  CONSTRAINT planned_canning_positive CHECK (pieces > 0)
);
COMMENT ON TABLE planned_canning IS 'What the owner means to can; counted only where somebody asks for it, never promised from';

CREATE TRIGGER gift_boxes_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON gift_boxes FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER gift_box_weighings_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON gift_box_weighings FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER carrier_tables_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON carrier_tables FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

GRANT SELECT, INSERT ON gift_boxes, gift_box_weighings, carrier_tables, planned_canning TO "${app_role}";
GRANT UPDATE (withdrawn_at) ON planned_canning TO "${app_role}";
