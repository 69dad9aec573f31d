-- Codes at sign-in, beside the password: a phone makes them from a seed and the clock (RFC 6238). Whoever wants them has one seed.
create table code_seeds (
  user_id      uuid        not null,
  seed         bytea       not null,            -- as it is: codes cannot be judged by a hash of it
  begun_at     timestamptz not null,
  confirmed_at timestamptz,                     -- null: being set up, not asked for yet
  last_step    bigint,                          -- of the last code taken; none is taken twice, nor one before it
  misses       integer     not null default 0,  -- in a row, each beside the right password
  constraint code_seeds_pk primary key (user_id),
  constraint code_seeds_user_known foreign key (user_id) references users (id),
  constraint code_seeds_seed_length check (octet_length(seed) = 20),
  constraint code_seeds_misses_positive check (misses >= 0)
);
-- For who has no phone at hand, each good once. 125 random bits, so a fast hash is enough.
create table spare_codes (
  user_id   uuid        not null,
  code_hash bytea       not null,
  used_at   timestamptz,
  constraint spare_codes_pk primary key (user_id, code_hash),
  constraint spare_codes_user_known foreign key (user_id) references users (id),
  constraint spare_codes_hash_length check (octet_length(code_hash) = 32)
);
grant select, insert, delete on code_seeds, spare_codes to "${app_role}";
grant update (confirmed_at, last_step, misses) on code_seeds to "${app_role}";
grant update (used_at) on spare_codes to "${app_role}";

alter table entrance_log drop constraint entrance_log_what_known;
alter table entrance_log add constraint entrance_log_what_known check (what in ('signed-in', 'signed-out', 'did-not-fit',
  'too-many', 'own-password', 'token-made', 'token-ended', 'codes-on', 'codes-off', 'let-in'));
alter table people_log drop constraint people_log_what_known;
alter table people_log add constraint people_log_what_known check (what in ('joined', 'role', 'password', 'left', 'returned', 'codes-off'));
