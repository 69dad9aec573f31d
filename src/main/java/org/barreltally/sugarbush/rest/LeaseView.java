package org.barreltally.sugarbush.rest;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.barreltally.pricing.Money;
import org.barreltally.sugarbush.Basis;
import org.barreltally.sugarbush.ContainerCharge;
import org.barreltally.sugarbush.Lease;
import org.barreltally.sugarbush.TapCount;
import org.barreltally.sugarbush.TapKind;

/**
 * A lease as it is answered.
 *
 * @param landowner by name
 * @param tapsCounted the count that is paid for; left out before there is one
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record LeaseView(
    UUID id,
    String landowner,
    UUID landownerId,
    String bush,
    int season,
    Basis basis,
    TapKind governs,
    Money ratePerTap,
    Money price,
    UUID priceList,
    List<ContainerCharge> containerCharges,
    List<TapCount> taps,
    Integer tapsCounted,
    LocalDate closedOn) {

  static LeaseView of(Lease lease) {
    return new LeaseView(
        lease.id(),
        lease.landowner().name(),
        lease.landowner().id(),
        lease.bush(),
        lease.season(),
        lease.terms().basis(),
        lease.terms().governs(),
        lease.terms().ratePerTap(),
        lease.terms().price(),
        lease.terms().priceList(),
        lease.terms().containerCharges(),
        lease.taps(),
        lease.governing().map(TapCount::count).orElse(null),
        lease.closedOn());
  }
}
