package org.barreltally.people.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.HexFormat;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SecretsTest {

  private final Secrets secrets = new Secrets();

  /** FIPS 180-4 example: SHA-256 of "abc". */
  @Test
  void secrets_are_kept_under_SHA_256() {
    assertEquals(
        "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
        HexFormat.of().formatHex(Secrets.hash("abc")));
  }

  @Test
  void a_password_to_read_out_has_no_letter_mistaken_for_a_digit() {
    String password = secrets.readablePassword();
    assertTrue(password.matches("([0-9a-hjkmnp-tv-z]{5}-){3}[0-9a-hjkmnp-tv-z]{5}"), password);
  }

  @Test
  void no_secret_comes_twice() {
    Set<String> made = new HashSet<>();
    IntStream.range(0, 1_000).forEach(i -> made.add(secrets.secret("btl_")));
    assertEquals(1_000, made.size());
  }
}
