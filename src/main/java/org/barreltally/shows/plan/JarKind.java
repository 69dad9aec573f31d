package org.barreltally.shows.plan;

import java.util.Comparator;
import org.barreltally.measure.ColorClass;

/** A container and grade: what a buyer asks for, and what is promised and planned by. */
public record JarKind(String container, ColorClass grade) implements Comparable<JarKind> {

  @Override
  public int compareTo(JarKind other) {
    return Comparator.comparing(JarKind::container)
        .thenComparing(JarKind::grade)
        .compare(this, other);
  }

  /** {@code PT amber}. */
  public String words() {
    return container + " " + grade.code();
  }
}
