package org.barreltally.sugarbush.boiling.rest;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.UUID;
import org.barreltally.measure.Quantity;
import org.barreltally.sugarbush.boiling.GatherSap;
import org.barreltally.sugarbush.boiling.Reversed;
import org.barreltally.sugarbush.boiling.SapGathered;

/**
 * Sap gathered: as it was said, and what it comes to.
 *
 * @param reversed left out while it counts
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record SapView(
    UUID id,
    LocalDate on,
    int season,
    String bush,
    String tank,
    Quantity volume,
    Quantity temperature,
    BigDecimal brix,
    Amounts.View amount,
    String note,
    Reversed reversed) {

  static SapView of(SapGathered sap) {
    GatherSap said = sap.said();
    return new SapView(
        sap.id(),
        sap.on(),
        sap.season(),
        sap.bush(),
        sap.amount().tank(),
        said.volume(),
        said.temperature(),
        said.brix(),
        Amounts.View.of(sap.amount()),
        said.note(),
        sap.reversed());
  }
}
