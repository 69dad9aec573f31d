-- From where a session began, for its owner to know it by; of sessions that began before this it is not known.
alter table sessions add column address text;
alter table sessions add constraint sessions_address_length check (char_length(address) <= 45);
