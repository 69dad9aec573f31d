package org.barreltally.gifts;

import org.barreltally.measure.ColorClass;

/** A size and grade of jar, as it is promised. */
public record Jar(String container, ColorClass grade) {

  /** For people: {@code HP golden}. */
  public String words() {
    return container + " " + grade.code();
  }
}
