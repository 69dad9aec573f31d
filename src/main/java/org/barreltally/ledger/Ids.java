package org.barreltally.ledger;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.UUID;
import org.hibernate.id.uuid.UuidVersion7Strategy;

/** Makes identifiers: UUID version 7 (RFC 9562), which sort by the time they were made. */
@ApplicationScoped
public class Ids {
  public UUID next() {
    return UuidVersion7Strategy.INSTANCE.generateUuid(null);
  }
}
