package org.barreltally.start;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.UUID;
import org.barreltally.ledger.RecordedBy;
import org.barreltally.people.CurrentUser;

/** Whoever is signed in is who writes in the book. */
@ApplicationScoped
public class SignedInRecorder implements RecordedBy {

  private final CurrentUser user;

  SignedInRecorder(CurrentUser user) {
    this.user = user;
  }

  @Override
  public UUID user() {
    return user.id();
  }
}
