-- Puts a history made by history.sql into one year, 2025. Triggers rest meanwhile; the invariants are asked afterwards.
SET session_replication_role = replica;
UPDATE movements SET book_year = 2025, happened_at = '2025-03-14 12:00+00', recorded_at = greatest(recorded_at, '2025-03-14 12:00+00');
UPDATE lots SET made_on = '2025-03-14', seasons = '{2025}';
UPDATE fillings SET filled_on = '2025-03-14', season = 2025;
