package org.barreltally.supplies;

import java.util.Locale;

/**
 * Something that packing uses up. With {@code perJar} or {@code jarsEach} a canning run uses it;
 * with neither, only receipts and counts move it.
 *
 * @param container the jar size that uses it up; null for jars of any size
 * @param perJar so many for one jar, 1 to 100; null where not used per jar
 * @param jarsEach one for so many jars, 2 to 10,000 (a carton of twelve); null where not used so
 * @param lowLine pieces at or under which it is time to order; null where nobody said
 */
public record Supply(
    String code,
    String name,
    Kind kind,
    String container,
    Integer perJar,
    Integer jarsEach,
    Long lowLine) {

  /** What it is. */
  public enum Kind {
    CONTAINER,
    CAP,
    LABEL,
    CARTON,
    OTHER;

    /** {@code container, cap, label, carton, other}. */
    public String code() {
      return name().toLowerCase(Locale.ROOT);
    }

    /** The kind with this code, which the database guarantees to exist. */
    public static Kind of(String code) {
      return valueOf(code.toUpperCase(Locale.ROOT));
    }
  }

  /** Whether filling a jar of that size uses it up. */
  public boolean usedBy(String size) {
    return (perJar != null || jarsEach != null) && (container == null || container.equals(size));
  }

  /** How many so many jars use up; a carton begun is a carton used. */
  public long needed(long jars) {
    if (jarsEach != null) {
      return (jars + jarsEach - 1) / jarsEach;
    }
    return perJar == null ? 0 : jars * perJar;
  }
}
