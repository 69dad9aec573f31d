package org.barreltally.gifts;

/**
 * Jars that a recipient gets.
 *
 * @param wanted what was asked for
 * @param jar what it will be: the same, or a substitute
 */
public record Allotted(int n, Jar wanted, Jar jar, long pieces) {

  public boolean substitute() {
    return !jar.equals(wanted);
  }
}
