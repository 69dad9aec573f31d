-- The planner holds place and standing to be independent of each other in an index, however its statistics go, and took a quarter of a million
-- rows at the cool room for likely where 400 stood. One column that names the place while something stands there says it outright; it changes only
-- when something comes or the last of it goes, so that most updates of a balance touch no index. With the container beside it, the jars of one size
-- are found without looking up every item of the place; an item's container never changes.

DROP STATISTICS balance_standing_by_place;
DROP INDEX balance_standing;
ALTER TABLE balances
  DROP COLUMN standing,
  ADD COLUMN container text,
  ADD COLUMN standing_at text GENERATED ALWAYS AS (CASE WHEN amount <> 0 THEN place END) STORED;
UPDATE balances b SET container = i.container FROM items i WHERE i.id = b.item AND i.container IS NOT NULL;
CREATE INDEX balance_standing_at ON balances (standing_at, container, item) WHERE standing_at IS NOT NULL;
