package org.barreltally.gifts;

import java.util.UUID;

/**
 * Jars that are reserved for a recipient.
 *
 * @param reservation of the ledger
 * @param jar what is reserved
 * @param wanted in whose stead; the same where it is no substitute
 * @param pieces below zero where a step gave them up or took them
 */
public record Promise(int n, UUID reservation, Jar jar, Jar wanted, long pieces) {

  public Promise times(long sign) {
    return new Promise(n, reservation, jar, wanted, sign * pieces);
  }
}
