-- Phones of a show table: each has a token of its own that is good for table calls alone, and can be cut off by itself.

-- null: all that the person's role may do
ALTER TABLE access_tokens ADD COLUMN scope text;
ALTER TABLE access_tokens ADD CONSTRAINT access_token_scope_known CHECK (scope IN ('table'));

CREATE TABLE phones (
  id         uuid PRIMARY KEY,
  name       text NOT NULL,
  token      uuid NOT NULL,
  paired_at  timestamptz NOT NULL,
  paired_by  uuid NOT NULL,
  cut_off_at timestamptz,
  CONSTRAINT phone_token_known FOREIGN KEY (token) REFERENCES access_tokens,
  CONSTRAINT phone_token_once UNIQUE (token),
  CONSTRAINT phone_name_length CHECK (char_length(name) BETWEEN 1 AND 60)
);

-- What a phone shows to be paired: valid once and for minutes; only its hash is kept.
CREATE TABLE phone_pairings (
  code_hash  bytea PRIMARY KEY,
  name       text NOT NULL,
  made_by    uuid NOT NULL,
  made_at    timestamptz NOT NULL,
  expires_at timestamptz NOT NULL,
  used_at    timestamptz,
  CONSTRAINT phone_pairing_hash_length CHECK (octet_length(code_hash) = 32)
);

-- Somebody at a table would like gift boxes. Name and phone number are removed when it is done.
CREATE TABLE table_leads (
  -- made by the device
  id          uuid PRIMARY KEY,
  show        uuid NOT NULL,
  said_at     timestamptz NOT NULL,
  name        text,
  phone       text,
  wish        text,
  recorded_at timestamptz NOT NULL,
  recorded_by uuid NOT NULL,
  done_at     timestamptz,
  CONSTRAINT table_lead_show_known FOREIGN KEY (show) REFERENCES shows,
  CONSTRAINT table_lead_names_nobody_when_done CHECK (done_at IS NULL OR (name IS NULL AND phone IS NULL AND wish IS NULL))
);
CREATE INDEX table_lead_open ON table_leads (recorded_at, id) WHERE done_at IS NULL;

GRANT SELECT, INSERT ON phones, phone_pairings, table_leads TO "${app_role}";
GRANT UPDATE (cut_off_at) ON phones TO "${app_role}";
GRANT UPDATE (used_at) ON phone_pairings TO "${app_role}";
GRANT UPDATE (name, phone, wish, done_at) ON table_leads TO "${app_role}";
