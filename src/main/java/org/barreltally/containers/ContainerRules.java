package org.barreltally.containers;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.barreltally.measure.Dimension;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;
import org.barreltally.refusal.InvalidField;
import org.barreltally.refusal.Refusal.FieldError;

/** What a container must be before it is added; every field at fault is named at once. */
final class ContainerRules {

  /** Longest name, in characters. */
  static final int NAME_MAX = 100;

  private static final Pattern CODE = Pattern.compile("[A-Z0-9][A-Z0-9-]{0,11}");
  private static final Quantity LEAST = Quantity.of(1, Unit.ML);
  private static final Quantity MOST = Quantity.of(1000, Unit.L);
  private static final Quantity HEAVIEST = Quantity.of(1000, Unit.KG);
  private static final int DECIMALS_MAX = 9;

  private final List<FieldError> errors = new ArrayList<>();

  private ContainerRules() {}

  /**
   * @throws InvalidField naming every field that is missing, malformed or out of its range
   * @throws BrimfulUnderContents if less fits in than is said to be in it
   */
  static void check(Container said) {
    ContainerRules rules = new ContainerRules();
    rules.code(said.code());
    rules.name(said.name());
    rules.volume(said.netContents(), "netContents", true);
    rules.volume(said.brimful(), "brimful", false);
    rules.weight(said.emptyWeight());
    rules.require(said.material() != null, "material", "Give one of glass, plastic, tin, other.");
    if (!rules.errors.isEmpty()) {
      throw new InvalidField(rules.errors);
    }
    if (said.brimful() != null && less(said.brimful(), said.netContents(), Unit.ML)) {
      throw new BrimfulUnderContents(said.brimful(), said.netContents());
    }
  }

  private void code(String code) {
    require(
        code != null && CODE.matcher(code).matches(),
        "code",
        "Give a code of capital letters, digits and dashes, at most 12, for example PT.");
  }

  private void name(String name) {
    require(
        name != null && !name.isBlank() && name.length() <= NAME_MAX,
        "name",
        "Give a name of at most " + NAME_MAX + " characters, for example Pint jug.");
  }

  private void volume(Quantity volume, String field, boolean needed) {
    if (volume == null) {
      require(!needed, field, "Say what it contains at 68 °F, for example 16 floz.");
    } else if (volume.unit().dimension() != Dimension.VOLUME) {
      require(false, field + ".unit", "Give a volume: one of gal, qt, pt, floz, L, mL.");
    } else {
      require(
          !less(volume, LEAST, Unit.ML) && !less(MOST, volume, Unit.ML),
          field,
          "Give a volume from 1 mL to 1000 L. What holds more is a barrel.");
      require(
          volume.value().stripTrailingZeros().scale() <= DECIMALS_MAX,
          field + ".value",
          "Give at most " + DECIMALS_MAX + " decimals.");
    }
  }

  private void weight(Quantity weight) {
    if (weight == null) {
      return;
    }
    if (weight.unit().dimension() != Dimension.MASS) {
      require(false, "emptyWeight.unit", "Give a weight: one of lb, oz, kg, g.");
    } else {
      require(
          weight.signum() > 0 && !less(HEAVIEST, weight, Unit.G),
          "emptyWeight",
          "Give what it weighs empty with its cap: more than nothing, at most 1000 kg.");
    }
  }

  private void require(boolean met, String field, String mend) {
    if (!met) {
      errors.add(new FieldError(field, mend));
    }
  }

  private static boolean less(Quantity a, Quantity b, Unit unit) {
    return a.in(unit).compareTo(b.in(unit)) < 0;
  }
}
