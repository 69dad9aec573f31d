-- Who signed in or tried to, who signed out, and who made or ended a way in. Names stay out of it: they can be removed
-- from users. What was typed as a name that nobody has is not kept; people type passwords there.
create table entrance_log (
  id          uuid        not null,
  what        text        not null,
  about       uuid,                  -- null: a name that nobody has
  token       uuid,
  address     text,                  -- of the network it came from; null where a change was made by somebody signed in
  recorded_at timestamptz not null,
  constraint entrance_log_pk primary key (id),
  constraint entrance_log_about_known foreign key (about) references users (id),
  constraint entrance_log_token_known foreign key (token) references access_tokens (id),
  constraint entrance_log_address_length check (char_length(address) <= 45),
  constraint entrance_log_what_known check (what in ('signed-in', 'signed-out', 'did-not-fit', 'too-many', 'own-password', 'token-made', 'token-ended'))
);
create index entrance_log_by_time on entrance_log (recorded_at, id);
create index people_log_by_time on people_log (recorded_at, id);
create trigger entrance_log_stands before update or delete or truncate on entrance_log
  for each statement execute function refuse_change();
grant select, insert on entrance_log to "${app_role}";
-- Names of somebody who left can be removed: what they did stays with their record.
grant update (name) on users to "${app_role}";
