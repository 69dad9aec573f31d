package org.barreltally.people.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.OptionalLong;
import org.apache.commons.codec.binary.Base32;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TimedCodesTest {

  /** The seed of RFC 6238, appendix B, for HMAC-SHA-1. */
  private static final byte[] SEED = "12345678901234567890".getBytes(StandardCharsets.US_ASCII);

  /** RFC 6238, appendix B, rows of SHA1: eight digits there, of which the last six are ours. */
  @ParameterizedTest
  @CsvSource({
    "59,94287082",
    "1111111109,07081804",
    "1111111111,14050471",
    "1234567890,89005924",
    "2000000000,69279037",
    "20000000000,65353130"
  })
  void codes_are_those_of_the_standard(long second, String eightDigits) {
    long step = TimedCodes.step(Instant.ofEpochSecond(second));
    assertEquals(eightDigits.substring(2), TimedCodes.code(SEED, step));
  }

  @ParameterizedTest
  @CsvSource({"-31,false", "-30,true", "0,true", "29,true", "30,true", "59,true", "60,false"})
  void a_code_fits_half_a_minute_before_and_after(int secondsLater, boolean fits) {
    Instant shown = Instant.ofEpochSecond(1_111_111_110); // begins a step
    String code = TimedCodes.code(SEED, TimedCodes.step(shown));
    assertEquals(
        fits ? OptionalLong.of(TimedCodes.step(shown)) : OptionalLong.empty(),
        TimedCodes.fitting(SEED, code, shown.plusSeconds(secondsLater)));
  }

  /** RFC 4648, 10: the library that writes seeds for phones. */
  @Test
  void seeds_are_written_as_the_standard_says() {
    assertEquals(
        "MZXW6YTBOI======",
        new Base32().encodeToString("foobar".getBytes(StandardCharsets.US_ASCII)));
    assertEquals(32, new Base32().encodeToString(SEED).length(), "no padding for 20 bytes");
  }
}
