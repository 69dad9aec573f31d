package org.barreltally.ledger;

import java.util.UUID;

/**
 * Who is writing in the book at this moment. Implemented where people are known; the ledger keeps
 * only the id, so that a name can be removed later.
 */
public interface RecordedBy {
  UUID user();
}
