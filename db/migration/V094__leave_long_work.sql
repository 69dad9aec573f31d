-- Long work that somebody asked for and may leave: what it is, how far it is, and what came of it. Not part of the book: kept for two days, in
-- no backup, and emptied by PostgreSQL if the server itself falls (UNLOGGED); whoever asked asks again.
CREATE UNLOGGED TABLE errands (
  id          uuid PRIMARY KEY,
  kind        text NOT NULL,
  asked_by    uuid NOT NULL,
  asked_at    timestamptz NOT NULL,
  state       text NOT NULL,
  steps_done  int NOT NULL DEFAULT 0,
  steps       int,
  seen_at     timestamptz NOT NULL,
  ended_at    timestamptz,
  file_name   text,
  media_type  text,
  paper       bytea,
  leads_to    text,
  problem     text,
  CONSTRAINT errand_asker_known FOREIGN KEY (asked_by) REFERENCES users (id),
  CONSTRAINT errand_state_known CHECK (state IN ('waiting', 'at-work', 'done', 'refused')),
  CONSTRAINT errand_ended CHECK ((state IN ('done', 'refused')) = (ended_at IS NOT NULL)),
  CONSTRAINT errand_paper_named CHECK ((paper IS NULL) = (file_name IS NULL) AND (paper IS NULL) = (media_type IS NULL)),
  CONSTRAINT errand_refused_why CHECK ((state = 'refused') = (problem IS NOT NULL))
);
CREATE INDEX errand_by_asker ON errands (asked_by, asked_at);
GRANT SELECT, INSERT, UPDATE, DELETE ON errands TO "${app_role}";
