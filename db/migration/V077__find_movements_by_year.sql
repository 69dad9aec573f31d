-- A year's balance reads the movements booked in it and after it, and none before.
CREATE INDEX movement_by_year ON movements (book_year, id);
