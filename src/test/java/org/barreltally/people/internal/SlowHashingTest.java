package org.barreltally.people.internal;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class SlowHashingTest {

  private final Secrets secrets = new Secrets();

  /** 600,000: the OWASP Password Storage Cheat Sheet's figure for PBKDF2-HMAC-SHA-256 (2023). */
  @Test
  void new_hashes_are_made_with_the_recommended_iterations() {
    SlowHashing hashing = new SlowHashing(secrets);
    String stored = hashing.hash("maple und Ähre");
    assertTrue(stored.startsWith("pbkdf2-sha256$600000$"), stored);
    assertTrue(hashing.fits("maple und Ähre", Optional.of(stored)));
    assertFalse(hashing.isOutdated(stored));
    assertTrue(hashing.isOutdated(stored.replace("$600000$", "$599999$")));
  }

  @Test
  void another_password_does_not_fit_and_nobody_has_one() {
    SlowHashing hashing = new SlowHashing(secrets, 10);
    Optional<String> stored = Optional.of(hashing.hash("maple und Ähre"));
    assertTrue(hashing.fits("maple und Ähre", stored));
    assertFalse(hashing.fits("maple und Ahre", stored));
    assertFalse(hashing.fits("", Optional.empty()));
  }
}
