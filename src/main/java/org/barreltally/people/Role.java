package org.barreltally.people;

import java.util.Arrays;
import java.util.Locale;

/** What a person does at the sugarhouse, and so what they may do here. */
public enum Role {
  OWNER,
  CANNING,
  TABLE,
  PACKING,
  /** Reads everything, changes nothing. */
  BOOKKEEPER;

  /** The stable name in lower case, as stored and as shown over REST. */
  public String code() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Whether this role may change what is in the book; every role may read. */
  public boolean mayWrite() {
    return this != BOOKKEEPER;
  }

  /** The role with this code, which the database guarantees to exist. */
  public static Role of(String code) {
    return Arrays.stream(values())
        .filter(role -> role.code().equals(code))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no role " + code));
  }
}
