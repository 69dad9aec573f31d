package org.barreltally.barrels;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a vessel is made of. */
public enum Material {
  STAINLESS,
  PLASTIC,
  COATED_STEEL,
  GALVANIZED,
  OTHER;

  public String code() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  public static Material of(String code) {
    return Arrays.stream(values()).filter(m -> m.code().equals(code)).findFirst().orElseThrow();
  }

  /**
   * A caution that stands beside vessels of this material. The book stores the material; it does
   * not judge the vessel. Source: the food-grade list and lead pages of Ontario and CFIA.
   */
  public Optional<String> caution() {
    return switch (this) {
      case GALVANIZED ->
          Optional.of(
              "Galvanized barrels are not on food-grade lists for syrup: zinc and lead can pass into it."
                  + " Ask your inspector before you fill or pack from this one.");
      case OTHER ->
          Optional.of(
              "Have the material of this vessel tested before you pack from it: old barrels may hold lead,"
                  + " brass or terne. Ask your inspector.");
      default -> Optional.empty();
    };
  }
}
