package org.barreltally.documents.internal;

/**
 * A text that is to be set. Texts of the same sizes are set alike.
 *
 * @param field under which a refusal names it
 * @param preferred size of type, points
 * @param wrapping size to which it shrinks before it is wrapped, points
 * @param least size to which it may shrink, points
 */
record Wording(
    String field, String text, boolean bold, double preferred, double wrapping, double least) {

  boolean likeSized(Wording other) {
    return preferred == other.preferred && wrapping == other.wrapping && least == other.least;
  }
}
