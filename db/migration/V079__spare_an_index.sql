-- Ranges of pages (movement_by_book_year) find a year's movements as well, at no cost to each posting.
DROP INDEX movement_by_year;
