package org.barreltally.people;

import java.util.Locale;

/** What is kept of the ways in: who came, who tried, and what was changed about people. */
public enum EntranceEvent {
  /** Somebody signed in to the pages. */
  SIGNED_IN,
  SIGNED_OUT,
  /** Name and password did not fit; nobody is named where the name is nobody's. */
  DID_NOT_FIT,
  /** Attempts were refused unjudged from here on, for a while. */
  TOO_MANY,
  /** Somebody changed their own password. */
  OWN_PASSWORD,
  /** A token was made, for a script or for a phone. */
  TOKEN_MADE,
  TOKEN_ENDED,
  /** Codes are asked for beside the password from here on. */
  CODES_ON,
  /** They are no longer: by the person, or by the owner. */
  CODES_OFF,
  /** Somebody was given a new password at the machine itself. */
  LET_IN,
  /** The owner let somebody join. */
  JOINED,
  /** The owner gave somebody another role. */
  ROLE,
  /** The owner gave somebody a new password. */
  PASSWORD,
  LEFT,
  RETURNED;

  /** {@code signed-in, did-not-fit, …}. */
  public String code() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /**
   * The one of a code.
   *
   * @throws IllegalArgumentException if there is none
   */
  public static EntranceEvent of(String code) {
    return valueOf(code.toUpperCase(Locale.ROOT).replace('-', '_'));
  }
}
