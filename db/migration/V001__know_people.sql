-- Who may sign in, and with what. Secrets are kept as hashes only.
-- Names and display names may be changed or removed here: nothing append-only repeats them.

create table users (
  id            uuid        not null,
  name          text        not null,
  display_name  text        not null,
  password_hash text        not null,
  role          text        not null,
  created_at    timestamptz not null,
  constraint users_pk primary key (id),
  constraint users_name_once unique (name),
  constraint users_name_form check (name ~ '^[a-z0-9][a-z0-9._-]{0,39}$'),
  constraint users_display_name_length check (char_length(display_name) between 1 and 80),
  constraint users_role_known check (role in ('owner', 'canning', 'table', 'packing', 'bookkeeper'))
);

-- A token stands for its user on /api. The secret is 256 random bits, so a fast hash is enough.
create table access_tokens (
  id          uuid        not null,
  user_id     uuid        not null,
  name        text        not null,
  secret_hash bytea       not null,
  created_at  timestamptz not null,
  expires_on  date,                  -- last day of use; null: does not expire
  used_on     date,                  -- last day it was seen, for tidying up
  revoked_at  timestamptz,
  constraint access_tokens_pk primary key (id),
  constraint access_tokens_user_fk foreign key (user_id) references users (id),
  constraint access_tokens_secret_once unique (secret_hash),
  constraint access_tokens_secret_length check (octet_length(secret_hash) = 32),
  constraint access_tokens_name_length check (char_length(name) between 1 and 80)
);
create index access_tokens_of_user on access_tokens (user_id, created_at);

-- A session stands for its user on pages; it is removed when it ends.
create table sessions (
  secret_hash bytea       not null,
  user_id     uuid        not null,
  created_at  timestamptz not null,
  used_at     timestamptz not null,  -- coarse: renewed every few minutes
  constraint sessions_pk primary key (secret_hash),
  constraint sessions_user_fk foreign key (user_id) references users (id),
  constraint sessions_secret_length check (octet_length(secret_hash) = 32)
);
create index sessions_of_user on sessions (user_id);

grant select, insert on users, access_tokens to ${app_role};
grant update (display_name, password_hash, role) on users to ${app_role};
grant update (used_on, revoked_at) on access_tokens to ${app_role};
grant select, insert, delete on sessions to ${app_role};
grant update (used_at) on sessions to ${app_role};
