-- Said once, happened once: the first answer to each request id, given again to a repeat.
-- The row is inserted before the work and completed after it, in one transaction, so a row that
-- others can see always has its answer. Bodies with personal data do not belong here.

create table requests (
  user_id      uuid        not null,
  key          uuid        not null,
  method_path  text        not null,
  content_hash bytea       not null,
  recorded_at  timestamptz not null,
  status       int,
  location     text,
  body         text,                 -- text, not jsonb: the repeat is the same byte for byte
  constraint requests_pk primary key (user_id, key),
  constraint requests_user_fk foreign key (user_id) references users (id),
  constraint requests_hash_length check (octet_length(content_hash) = 32),
  constraint requests_status_is_success check (status between 200 and 299)
);

grant select, insert on requests to ${app_role};
grant update (status, location, body) on requests to ${app_role};
