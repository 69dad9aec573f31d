-- A person who left no longer signs in; what they did stays with their name.
alter table users add column left_at timestamptz;
grant update (left_at) on users to "${app_role}";
-- Who changed what about people, and when. Names stay out of it: they can be removed from users.
create table people_log (
  id          uuid        not null,
  about       uuid        not null,
  what        text        not null,
  role        text,
  recorded_at timestamptz not null,
  recorded_by uuid        not null,
  constraint people_log_pk primary key (id),
  constraint people_log_about_known foreign key (about) references users (id),
  constraint people_log_by_known foreign key (recorded_by) references users (id),
  constraint people_log_what_known check (what in ('joined', 'role', 'password', 'left', 'returned'))
);
create trigger people_log_stands before update or delete or truncate on people_log
  for each statement execute function refuse_change();
grant select, insert on people_log to "${app_role}";
