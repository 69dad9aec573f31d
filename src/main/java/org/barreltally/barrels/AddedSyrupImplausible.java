package org.barreltally.barrels;

import java.util.Locale;
import org.barreltally.refusal.Refusal;

/** What was added to a barrel does not come to syrup, by weight and density of the whole. */
public final class AddedSyrupImplausible extends Refusal {

  /** By mass balance the added syrup would have a Brix that syrup does not have. */
  public AddedSyrupImplausible(double brix) {
    super(
        Kind.RULE,
        "added-syrup-implausible",
        "The addition does not come to syrup",
        String.format(
            Locale.ROOT,
            "By weight and density of the whole, the added syrup would be of %.1f °Bx. Read the density of the mixed barrel again, or check the weights.",
            brix),
        "density.reading");
  }

  /** The barrel weighs no more than before. */
  public static AddedSyrupImplausible nothingAdded() {
    return new AddedSyrupImplausible();
  }

  private AddedSyrupImplausible() {
    super(
        Kind.RULE,
        "nothing-added",
        "Nothing was added",
        "The barrel weighs no more than the book says it held. If it was only weighed again, record a weighing.",
        "weighing.gross");
  }
}
