-- A balance knows the container of its item, by which listings find it.
SELECT b.place, b.item::text AS item, b.container, i.container AS of_item
FROM balances b JOIN items i ON i.id = b.item WHERE b.container IS DISTINCT FROM i.container
