package org.barreltally.gifts;

import java.util.ArrayList;
import java.util.List;
import org.barreltally.measure.ColorClass;

/**
 * What goes into a box.
 *
 * @param count pieces in one box
 * @param substitutes what may go in its place, the first choice first; none if null
 */
public record Content(String container, ColorClass grade, Integer count, List<Jar> substitutes) {

  public Content {
    substitutes =
        substitutes == null || Faults.hasGap(substitutes) ? substitutes : List.copyOf(substitutes);
  }

  /** What it is without a substitute. */
  public Jar jar() {
    return new Jar(container, grade);
  }

  /** What it may be, the first choice first. */
  public List<Jar> choices() {
    List<Jar> choices = new ArrayList<>(List.of(jar()));
    if (substitutes != null) {
      substitutes.stream().filter(other -> !choices.contains(other)).forEach(choices::add);
    }
    return List.copyOf(choices);
  }
}
