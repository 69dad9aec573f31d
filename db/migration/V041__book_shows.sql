-- Shows: what was booked, how it went through its states, what was paid for it and promised to it.

CREATE TABLE shows (
  id         uuid PRIMARY KEY,
  -- also the code of the place in the ledger that is the show's table
  code       text NOT NULL,
  state      text NOT NULL,
  name       text NOT NULL,
  town       text NOT NULL,
  starts     date NOT NULL,
  ends       date NOT NULL,
  -- the whole span for which helper, vehicle and kit are bound: from the set-up to the end of the last day
  bound_from timestamptz NOT NULL,
  bound_to   timestamptz NOT NULL,
  -- all that is booked, as it was said; organisers' and helpers' names can be changed here
  booking    jsonb NOT NULL,
  -- counts every change of the record
  version    integer NOT NULL,
  -- counts the changes of what stands in the calendar
  sequence   integer NOT NULL,
  booked_at  timestamptz NOT NULL,
  booked_by  uuid NOT NULL,
  changed_at timestamptz NOT NULL,
  CONSTRAINT show_code_once UNIQUE (code),
  CONSTRAINT show_place_known FOREIGN KEY (code) REFERENCES places,
  CONSTRAINT show_state_known CHECK (state IN
    ('applied', 'accepted', 'declined', 'paid', 'packed', 'running', 'closed', 'settled', 'called-off')),
  CONSTRAINT show_ends_after_start CHECK (ends >= starts),
  CONSTRAINT show_bound_in_order CHECK (bound_to > bound_from)
);
CREATE INDEX show_by_day ON shows (starts, id);
CREATE INDEX show_by_last_day ON shows (ends);

-- Every state a show came into, the first included.
CREATE TABLE show_steps (
  id          uuid PRIMARY KEY,
  show        uuid NOT NULL,
  state       text NOT NULL,
  reason      text,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT show_step_show_known FOREIGN KEY (show) REFERENCES shows
);
CREATE INDEX show_step_by_show ON show_steps (show, recorded_at);

-- What was paid to the organiser; below zero where some of it came back.
CREATE TABLE show_payments (
  id          uuid PRIMARY KEY,
  show        uuid NOT NULL,
  paid_on     date NOT NULL,
  amount      numeric(16, 4) NOT NULL,
  currency    text NOT NULL,
  note        text,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT show_payment_show_known FOREIGN KEY (show) REFERENCES shows,
  CONSTRAINT show_payment_pays CHECK (amount <> 0)
);
CREATE INDEX show_payment_by_show ON show_payments (show, id);

-- Which reservations of the ledger are for which show.
CREATE TABLE show_reservations (
  reservation uuid PRIMARY KEY,
  show        uuid NOT NULL,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  CONSTRAINT show_reservation_show_known FOREIGN KEY (show) REFERENCES shows
);
CREATE INDEX show_reservation_by_show ON show_reservations (show, reservation);

CREATE TRIGGER shows_stay BEFORE DELETE OR TRUNCATE ON shows FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER show_steps_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON show_steps FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER show_payments_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON show_payments FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER show_reservations_stand BEFORE UPDATE OR DELETE OR TRUNCATE ON show_reservations FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

GRANT SELECT, INSERT ON shows, show_steps, show_payments, show_reservations TO "${app_role}";
GRANT UPDATE (state, name, town, starts, ends, bound_from, bound_to, booking, version, sequence, changed_at)
  ON shows TO "${app_role}";
