package org.barreltally.people.internal;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Base64;
import java.util.HexFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PasswordHashTest {

  private static final byte[] SALT = "sixteen bytes at".getBytes(US_ASCII);

  /** RFC 7914, section 11: PBKDF2-HMAC-SHA-256 test vectors, first 32 of their 64 bytes. */
  @ParameterizedTest
  @CsvSource({
    "passwd,salt,1,55ac046e56e3089fec1691c22544b605f94185216dde0465e68b9d57c20dacbc",
    "Password,NaCl,80000,4ddcd8f60b98be21830cee5ef22701f9641a4418d04c0414aeff08876b34ab56"
  })
  void it_is_the_published_function(String password, String salt, int iterations, String hex) {
    String stored = PasswordHash.of(password, salt.getBytes(US_ASCII), iterations).stored();
    byte[] hash = Base64.getDecoder().decode(stored.substring(stored.lastIndexOf('$') + 1));
    assertEquals(hex, HexFormat.of().formatHex(hash));
  }

  @Test
  void what_is_stored_judges_as_the_original() {
    PasswordHash read = PasswordHash.read(PasswordHash.of("maple und Ähre", SALT, 10).stored());
    assertTrue(read.matches("maple und Ähre"));
    assertFalse(read.matches("maple und Ahre"));
    assertFalse(read.matches(""));
  }

  @Test
  void one_password_typed_on_two_devices_is_one() {
    assertTrue(PasswordHash.of("\u00c4hre", SALT, 10).matches("A\u0308hre"));
  }

  @Test
  void another_salt_makes_another_hash() {
    byte[] other = "another sixteen.".getBytes(US_ASCII);
    assertNotEquals(
        PasswordHash.of("same", SALT, 10).stored(), PasswordHash.of("same", other, 10).stored());
  }

  @Test
  void a_hash_of_fewer_iterations_is_known_as_weaker() {
    PasswordHash hash = PasswordHash.of("x", SALT, 10);
    assertTrue(hash.isWeakerThan(11));
    assertFalse(hash.isWeakerThan(10));
  }

  @Test
  void nobody_has_no_password() {
    PasswordHash nobody = PasswordHash.ofNobody(new Secrets(), 10);
    assertFalse(nobody.matches(""));
    assertFalse(nobody.isWeakerThan(10));
  }

  @Test
  void an_unknown_form_is_a_defect() {
    assertThrows(IllegalStateException.class, () -> PasswordHash.read("md5$1$a$b"));
  }
}
