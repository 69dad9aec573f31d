package org.barreltally.errands;

/**
 * What came of an errand.
 *
 * @param fileName of the paper; null if there is none
 * @param mediaType of the paper; null if there is none
 * @param paper null if nothing was drawn
 * @param leadsTo the path of the page where the result stands; null where the paper is all
 */
public record Outcome(String fileName, String mediaType, byte[] paper, String leadsTo) {

  public static Outcome pdf(String fileName, byte[] paper) {
    return new Outcome(fileName, "application/pdf", paper, null);
  }

  public static Outcome at(String leadsTo) {
    return new Outcome(null, null, null, leadsTo);
  }
}
