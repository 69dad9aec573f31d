package org.barreltally.netcontents;

import java.util.ArrayList;
import java.util.List;
import org.barreltally.measure.Dimension;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;
import org.barreltally.refusal.InvalidField;
import org.barreltally.refusal.Refusal.FieldError;

/** What an allowed variation must be; every field at fault is named at once. */
final class VariationRules {

  private static final int SOURCE_MAX = 200;

  /** Where bulk begins no jar is checked; also the bound of container contents. */
  private static final Quantity MOST = Quantity.of(1000, Unit.L);

  private final List<FieldError> errors = new ArrayList<>();

  private VariationRules() {}

  static void check(
      String container, Quantity over, Quantity upTo, Quantity allowed, String source) {
    VariationRules rules = new VariationRules();
    rules.where(container, over, upTo);
    rules.allowed(allowed);
    rules.require(
        source != null && !source.isBlank() && source.length() <= SOURCE_MAX,
        "source",
        "Say where it was read, in at most " + SOURCE_MAX + " characters.");
    if (!rules.errors.isEmpty()) {
      throw new InvalidField(rules.errors);
    }
  }

  private void where(String container, Quantity over, Quantity upTo) {
    if (container != null) {
      require(over == null, "over", "Give a container or a range, not both.");
      require(upTo == null, "upTo", "Give a container or a range, not both.");
      return;
    }
    if (over == null && upTo == null) {
      require(false, "container", "Give a container, or a range of contents: over and upTo.");
    } else if (volume(over, "over") & volume(upTo, "upTo")) {
      require(
          over.in(Unit.ML).compareTo(upTo.in(Unit.ML)) < 0
              && upTo.in(Unit.ML).compareTo(MOST.in(Unit.ML)) <= 0,
          "upTo",
          "Give more than over, at most 1000 L.");
    }
  }

  private boolean volume(Quantity volume, String field) {
    boolean given = volume != null;
    require(given, field, "Give a volume, for example 16 floz.");
    boolean fits = given && volume.unit().dimension() == Dimension.VOLUME;
    require(!given || fits, field + ".unit", "Give a volume: one of gal, qt, pt, floz, L, mL.");
    boolean notNegative = !fits || volume.signum() >= 0;
    require(notNegative, field, "A volume is not less than nothing.");
    return fits && notNegative;
  }

  private void allowed(Quantity allowed) {
    if (allowed == null) {
      require(false, "allowed", "Give how much one jar may be short, for example 0.5 floz.");
      return;
    }
    Dimension dimension = allowed.unit().dimension();
    require(
        dimension == Dimension.VOLUME || dimension == Dimension.MASS,
        "allowed.unit",
        "Give a weight or a volume.");
    require(allowed.signum() > 0, "allowed", "Give more than nothing.");
  }

  private void require(boolean met, String field, String mend) {
    if (!met) {
      errors.add(new FieldError(field, mend));
    }
  }
}
