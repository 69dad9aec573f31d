package org.barreltally.people.internal;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class SlowHashingTest {

  private final Secrets secrets = new Secrets();
  private final SlowHashing hashing = new SlowHashing(secrets);

  /** 600,000: the OWASP Password Storage Cheat Sheet's figure for PBKDF2-HMAC-SHA-256 (2023). */
  @Test
  void new_hashes_are_made_with_the_recommended_iterations() {
    String stored = hashing.hash("maple und Ähre");
    assertTrue(stored.startsWith("pbkdf2-sha256$600000$"), stored);
    assertTrue(hashing.fits("maple und Ähre", Optional.of(stored)));
    assertFalse(hashing.fits("maple und Ahre", Optional.of(stored)));
    assertFalse(hashing.isOutdated(stored));
  }

  @Test
  void a_hash_of_fewer_iterations_is_outdated() {
    assertTrue(hashing.isOutdated(PasswordHash.of("x", secrets.salt(), 599_999).stored()));
  }

  @Test
  void nobody_has_no_password() {
    assertFalse(hashing.fits("", Optional.empty()));
  }
}
