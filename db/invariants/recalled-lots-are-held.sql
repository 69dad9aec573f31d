-- What an open recall touched is held.
SELECT r.id::text AS recall, t.lot
FROM recalls r JOIN recall_lots t ON t.recall = r.id JOIN lots l ON l.code = t.lot
WHERE NOT r.rehearsal AND NOT l.held AND NOT EXISTS (SELECT 1 FROM recall_ends e WHERE e.recall = r.id)
