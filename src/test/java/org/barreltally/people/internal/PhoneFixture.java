package org.barreltally.people.internal;

import java.time.Instant;
import org.apache.commons.codec.binary.Base32;

/** A phone that makes codes from the seed it was given, as text. */
public record PhoneFixture(String seed) {

  /** What it shows at an instant. */
  public String shows(Instant at) {
    return TimedCodes.code(new Base32().decode(seed), TimedCodes.step(at));
  }
}
