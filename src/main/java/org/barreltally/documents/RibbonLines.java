package org.barreltally.documents;

import java.util.Optional;
import org.barreltally.measure.ColorClass;

/** Says which award a price card may show. Awards are known where shows are. */
public interface RibbonLines {

  /**
   * The line for jars of a size and grade, for example {@code First ribbon, Elmshire Fair 2026}.
   *
   * @param grade null where the card is for every grade
   */
  Optional<String> on(String container, ColorClass grade);
}
