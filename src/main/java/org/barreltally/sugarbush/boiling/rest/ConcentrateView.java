package org.barreltally.sugarbush.boiling.rest;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.UUID;
import org.barreltally.measure.Quantity;
import org.barreltally.sugarbush.boiling.Concentrate;
import org.barreltally.sugarbush.boiling.Gauged;
import org.barreltally.sugarbush.boiling.Reversed;

/**
 * Concentrate: what went in, what came out, and the sugar between.
 *
 * @param sugarLost in less out; below zero where the readings say more came out
 * @param shortTank left out unless the tank the sap came from gave more than went in by the log
 * @param reversed left out while it counts
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record ConcentrateView(
    UUID id,
    LocalDate on,
    int season,
    Side sap,
    Side concentrate,
    BigDecimal permeateBrix,
    Lost sugarLost,
    Amounts.Short shortTank,
    String note,
    Reversed reversed) {

  /** As it was said, and what it comes to. */
  public record Side(
      String tank, Quantity volume, Quantity temperature, BigDecimal brix, Amounts.View amount) {}

  /**
   * Sugar that did not come out.
   *
   * @param inPermeate left out if its Brix was not read
   * @param unexplained what is left; all of it without a reading of the permeate
   * @param significant whether that is more than the readings leave in doubt
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Lost(
      Amounts.Mass all,
      BigDecimal percent,
      Amounts.Mass inPermeate,
      Amounts.Mass unexplained,
      boolean significant) {}

  static ConcentrateView of(Concentrate made) {
    double percent = 100 * made.lost().value() / made.taken().sugar().value();
    return new ConcentrateView(
        made.id(),
        made.on(),
        made.season(),
        side(made.said().sap(), Amounts.View.of(made.taken())),
        side(made.said().concentrate(), Amounts.View.of(made.made())),
        made.said().permeateBrix(),
        new Lost(
            Amounts.Mass.of(made.lost()),
            Amounts.number(percent, 2),
            made.permeate() == null ? null : Amounts.Mass.of(made.inPermeate()),
            Amounts.Mass.of(made.unexplained()),
            made.isBeyondDoubt()),
        made.shortTank() == null ? null : Amounts.Short.of(made.shortTank()),
        made.said().note(),
        made.reversed());
  }

  private static Side side(Gauged said, Amounts.View amount) {
    return new Side(said.tank().strip(), said.volume(), said.temperature(), said.brix(), amount);
  }
}
