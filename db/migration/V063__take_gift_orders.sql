-- Gift orders: what was ordered, every step of every recipient, what is promised and which jars are in whose box.
-- Names, addresses and card texts stand in gift_buyers and gift_addresses alone, so that they can be removed.

CREATE TABLE gift_buyers (
  id      uuid PRIMARY KEY,
  name    text,
  details jsonb
);

CREATE TABLE gift_orders (
  id          uuid PRIMARY KEY,
  buyer       uuid NOT NULL,
  currency    text NOT NULL,
  -- of the total at ordering, asked as deposit; null where nobody said
  deposit_percent numeric(5, 2),
  -- counts every change; whoever changes an order locks this row first
  version     bigint NOT NULL,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT gift_order_buyer_known FOREIGN KEY (buyer) REFERENCES gift_buyers,
  CONSTRAINT gift_order_currency_form CHECK (currency ~ '^[A-Z]{3}$'),
  CONSTRAINT gift_order_deposit_range CHECK (deposit_percent BETWEEN 0 AND 100)
);

CREATE TABLE gift_lines (
  order_id    uuid NOT NULL,
  n           integer NOT NULL,
  box         uuid NOT NULL,
  boxes       integer NOT NULL,
  -- of one box, as it was when it was ordered
  price       numeric(15, 3) NOT NULL,
  delivery    text NOT NULL,
  -- for one mailing, as it was told to the buyer
  postage     numeric(15, 3),
  carrier     text,
  wanted_by   date,
  send_by     date,
  -- worked back from wanted_by when it was ordered; null without a carrier's zone
  latest_send date,
  -- follows the newest row of gift_steps
  state       text NOT NULL,
  CONSTRAINT gift_line_key PRIMARY KEY (order_id, n),
  CONSTRAINT gift_line_order_known FOREIGN KEY (order_id) REFERENCES gift_orders,
  CONSTRAINT gift_line_box_known FOREIGN KEY (box) REFERENCES gift_boxes,
  CONSTRAINT gift_line_numbers_positive CHECK (n > 0 AND boxes > 0),
  CONSTRAINT gift_line_money_range CHECK (price >= 0 AND postage >= 0),
  CONSTRAINT gift_line_delivery_known CHECK (delivery IN ('post', 'collect', 'by-hand')),
  CONSTRAINT gift_line_state_known CHECK (state IN ('confirmed', 'picked', 'packed', 'sent', 'delivered', 'returned', 'cancelled'))
);

CREATE TABLE gift_addresses (
  order_id uuid NOT NULL,
  n        integer NOT NULL,
  name     text,
  address  jsonb,
  card     text,
  CONSTRAINT gift_address_key PRIMARY KEY (order_id, n),
  CONSTRAINT gift_address_line_known FOREIGN KEY (order_id, n) REFERENCES gift_lines
);

CREATE TABLE gift_payments (
  id          uuid PRIMARY KEY,
  order_id    uuid NOT NULL,
  kind        text NOT NULL,
  -- below zero: paid back
  amount      numeric(15, 3) NOT NULL,
  paid_on     date NOT NULL,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT gift_payment_order_known FOREIGN KEY (order_id) REFERENCES gift_orders,
  CONSTRAINT gift_payment_kind_known CHECK (kind IN ('deposit', 'payment'))
);
CREATE INDEX gift_payment_by_order ON gift_payments (order_id);

CREATE TABLE gift_steps (
  id          uuid PRIMARY KEY,
  order_id    uuid NOT NULL,
  -- null where it was a step of the whole order
  n           integer,
  step        text NOT NULL,
  was         text,
  becomes     text,
  happened_on date NOT NULL,
  -- of the ledger, where jars moved
  movement    uuid,
  -- the step this one takes back
  undoes      uuid,
  -- of a mailing: what it cost and who bears it
  postage     numeric(15, 3),
  paid_by     text,
  carrier     text,
  reason      text,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT gift_step_order_known FOREIGN KEY (order_id) REFERENCES gift_orders,
  CONSTRAINT gift_step_line_known FOREIGN KEY (order_id, n) REFERENCES gift_lines,
  CONSTRAINT gift_step_movement_known FOREIGN KEY (movement) REFERENCES movements,
  CONSTRAINT gift_step_undone_once UNIQUE (undoes),
  CONSTRAINT gift_step_undoes_known FOREIGN KEY (undoes) REFERENCES gift_steps,
  CONSTRAINT gift_step_known CHECK (step IN ('reserve', 'release', 'pick', 'pack', 'send', 'deliver', 'return', 'inspect', 'replace', 'cancel', 'undo')),
  CONSTRAINT gift_step_payer_known CHECK (paid_by IN ('buyer', 'maker'))
);
CREATE INDEX gift_step_by_order ON gift_steps (order_id, n);
CREATE INDEX gift_step_by_movement ON gift_steps (movement);

-- What a step promised (above zero) or gave up or took (below zero), in jars, and in whose stead.
CREATE TABLE gift_promised (
  step          uuid NOT NULL,
  order_id      uuid NOT NULL,
  n             integer NOT NULL,
  reservation   uuid NOT NULL,
  container     text NOT NULL,
  grade         text NOT NULL,
  for_container text NOT NULL,
  for_grade     text NOT NULL,
  pieces        bigint NOT NULL,
  CONSTRAINT gift_promised_step_known FOREIGN KEY (step) REFERENCES gift_steps,
  CONSTRAINT gift_promised_line_known FOREIGN KEY (order_id, n) REFERENCES gift_lines,
  CONSTRAINT gift_promised_some CHECK (pieces <> 0)
);
CREATE INDEX gift_promised_by_line ON gift_promised (order_id, n);
CREATE INDEX gift_promised_by_step ON gift_promised (step);

-- What a step brought to (above zero) or took from (below zero) a recipient's jars: on the gift shelf, sent, or back and not yet inspected.
CREATE TABLE gift_jars (
  step          uuid NOT NULL,
  order_id      uuid NOT NULL,
  n             integer NOT NULL,
  -- no foreign key: its check would lock the item after its balances, against the order in which all others take them
  item          uuid NOT NULL,
  stage         text NOT NULL,
  for_container text NOT NULL,
  for_grade     text NOT NULL,
  pieces        bigint NOT NULL,
  CONSTRAINT gift_jar_step_known FOREIGN KEY (step) REFERENCES gift_steps,
  CONSTRAINT gift_jar_line_known FOREIGN KEY (order_id, n) REFERENCES gift_lines,
  CONSTRAINT gift_jar_stage_known CHECK (stage IN ('shelf', 'sent', 'back')),
  CONSTRAINT gift_jar_some CHECK (pieces <> 0)
);
CREATE INDEX gift_jar_by_line ON gift_jars (order_id, n);
CREATE INDEX gift_jar_by_step ON gift_jars (step);
CREATE INDEX gift_jar_by_item ON gift_jars (item);

CREATE TRIGGER gift_lines_stay BEFORE DELETE OR TRUNCATE ON gift_lines FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER gift_orders_stay BEFORE DELETE OR TRUNCATE ON gift_orders FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER gift_payments_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON gift_payments FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER gift_steps_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON gift_steps FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER gift_promised_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON gift_promised FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER gift_jars_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON gift_jars FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

GRANT SELECT, INSERT ON gift_buyers, gift_orders, gift_lines, gift_addresses, gift_payments, gift_steps, gift_promised, gift_jars TO "${app_role}";
GRANT UPDATE (name, details) ON gift_buyers TO "${app_role}";
GRANT UPDATE (version) ON gift_orders TO "${app_role}";
GRANT UPDATE (state) ON gift_lines TO "${app_role}";
GRANT UPDATE (name, address, card) ON gift_addresses TO "${app_role}";
