package org.barreltally.people;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Clock;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.people.internal.PasswordHash;
import org.barreltally.people.internal.Secrets;
import org.barreltally.people.internal.SlowHashing;
import org.barreltally.people.internal.Users;
import org.junit.jupiter.api.Test;

@QuarkusTest
class PasswordsTest {

  @Inject Passwords passwords;
  @Inject Users users;
  @Inject Secrets secrets;
  @Inject SlowHashing hashing;
  @Inject Clock clock;
  @Inject PersonFixture people;

  @Test
  void a_password_that_proved_right_is_remembered() {
    String name = people.with("table", "a long password");
    assertEquals(Optional.empty(), passwords.recall(name, "a long password"));
    Optional<Person> judged = passwords.judge(name, "a long password", "192.0.2.1");
    assertEquals(name, judged.orElseThrow().name());
    assertEquals(judged, passwords.recall(name, "a long password"));
    assertEquals(Optional.empty(), passwords.recall(name, "a long passwort"));
  }

  @Test
  void an_old_hash_is_renewed_when_its_password_proves_right() {
    String name = "p" + UUID.randomUUID().toString().substring(0, 8);
    String weak = PasswordHash.of("a long password", secrets.salt(), 1_000).stored();
    users.add(new Person(UUID.randomUUID(), name, "A", Role.TABLE), weak, clock.instant());
    passwords.judge(name, "a wrong password", "192.0.2.1");
    assertEquals(weak, users.named(name).orElseThrow().passwordHash());
    passwords.judge(name, "a long password", "192.0.2.1");
    String renewed = users.named(name).orElseThrow().passwordHash();
    assertFalse(hashing.isOutdated(renewed));
    assertTrue(PasswordHash.read(renewed).matches("a long password"));
  }
}
