package org.barreltally.sugarbush;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.Nulls;
import java.util.List;
import java.util.UUID;
import org.barreltally.pricing.Money;

/**
 * What was agreed for a season.
 *
 * @param governs which count of taps is paid for
 * @param ratePerTap rent of one tap for the season
 * @param price of a gallon at 68 °F; null only by list value, where volumes are then not told
 * @param priceList whose prices jars count for by list value; null for the retail list of the day
 * @param containerCharges by volume plus container; a container without one is free
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record LeaseTerms(
    Basis basis,
    TapKind governs,
    Money ratePerTap,
    Money price,
    UUID priceList,
    @JsonSetter(contentNulls = Nulls.FAIL) List<ContainerCharge> containerCharges) {

  public LeaseTerms {
    containerCharges = containerCharges == null ? List.of() : List.copyOf(containerCharges);
  }

  /** What the container of a jar counts for beside its contents. */
  public Money charge(String container) {
    return containerCharges.stream()
        .filter(charge -> charge.container().equals(container))
        .map(ContainerCharge::charge)
        .findFirst()
        .orElse(Money.none(ratePerTap.currency()));
  }
}
