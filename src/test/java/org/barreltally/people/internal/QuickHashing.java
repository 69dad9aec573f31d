package org.barreltally.people.internal;

import io.quarkus.test.Mock;
import jakarta.inject.Inject;
import jakarta.inject.Singleton;

/**
 * The program's own hashing with few iterations, for the tests inside it: their hundreds of
 * passwords are worth nothing. The built program is tested with all of them.
 */
@Mock
@Singleton
public class QuickHashing extends SlowHashing {

  @Inject
  QuickHashing(Secrets secrets) {
    super(secrets, 2_000);
  }
}
