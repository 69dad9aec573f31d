package org.barreltally.canning;

import org.barreltally.measure.Quantity;
import org.barreltally.refusal.Refusal;

/** The jars counted need more syrup than came in, beyond what the instruments may be off. */
public final class NotEnoughSyrup extends Refusal {

  /**
   * @param there weight for jars after filter and heel, in air
   * @param needed weight that the counts need, in air
   * @param largest the size that takes the most
   */
  public NotEnoughSyrup(Quantity there, Quantity needed, String largest) {
    super(
        Kind.RULE,
        "not-enough-syrup",
        "The counts do not fit the syrup",
        "The jars need %s of syrup, but only %s is there after filter and heel. Check the counts (most goes into %s), the draws, or weigh the barrel again."
            .formatted(needed, there, largest),
        "fills");
  }
}
