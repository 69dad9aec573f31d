package org.barreltally.cost.flow;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

/**
 * Goods that came to be, with what each line put into their cost.
 *
 * @param inputs what went into it; none for syrup from the evaporator or a supplier
 * @param outputs what came of it. Filter, overfill, breakage and shrink of the making have no cost
 *     of their own: the good ones bear it
 */
public record Making(
    UUID movement, String kind, int year, LocalDate day, List<Input> inputs, List<Output> outputs) {

  public Making {
    inputs = List.copyOf(inputs);
    outputs = List.copyOf(outputs);
  }

  /** Goods used up. */
  public record Input(Goods goods, long amount, BigDecimal value) {}

  /**
   * @param carried cost of the inputs that fell to it, by mass
   * @param added by costs
   */
  public record Output(
      Goods goods, long amount, BigDecimal carried, List<Contribution> added, BigDecimal value) {}
}
