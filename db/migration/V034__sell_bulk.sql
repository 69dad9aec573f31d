-- Barrels sold whole. A buyer's name stands beside the sales, so that it can be removed.

CREATE TABLE bulk_buyers (
  id      uuid PRIMARY KEY,
  name    text NOT NULL,
  details text,
  CONSTRAINT bulk_buyer_name_once UNIQUE (name)
);

CREATE TABLE bulk_sales (
  id          uuid PRIMARY KEY,
  tag         text NOT NULL,
  lot         text NOT NULL,
  buyer       uuid NOT NULL,
  movement    uuid NOT NULL,
  sold_on     date NOT NULL,
  -- what is paid, on the agreed figures
  amount      numeric(15, 3) NOT NULL,
  currency    text NOT NULL,
  -- the answer as it was given: ours, theirs, agreed, variance; no names
  ticket      jsonb NOT NULL,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT bulk_sale_vessel_known FOREIGN KEY (tag) REFERENCES vessels,
  CONSTRAINT bulk_sale_lot_known FOREIGN KEY (lot) REFERENCES lots,
  CONSTRAINT bulk_sale_buyer_known FOREIGN KEY (buyer) REFERENCES bulk_buyers,
  CONSTRAINT bulk_sale_movement_known FOREIGN KEY (movement) REFERENCES movements,
  CONSTRAINT bulk_sale_movement_once UNIQUE (movement),
  CONSTRAINT bulk_sale_currency_form CHECK (currency ~ '^[A-Z]{3}$')
);
CREATE INDEX bulk_sale_by_day ON bulk_sales (sold_on, id);

CREATE TRIGGER bulk_sales_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON bulk_sales FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

GRANT SELECT, INSERT ON bulk_buyers, bulk_sales TO "${app_role}";
GRANT UPDATE (name, details) ON bulk_buyers TO "${app_role}";
