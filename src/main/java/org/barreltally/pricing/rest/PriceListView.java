package org.barreltally.pricing.rest;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.barreltally.pricing.Audience;
import org.barreltally.pricing.Deal;
import org.barreltally.pricing.PriceLine;
import org.barreltally.pricing.PriceList;
import org.barreltally.pricing.Standing;
import org.barreltally.pricing.Warnings;

/**
 * A price list as it is read.
 *
 * @param warnings what to look at, one sentence each
 * @param replacedBy its next version; left out while it is the newest
 * @param withdrawn left out unless it was
 */
public record PriceListView(
    UUID id,
    String name,
    Audience audience,
    LocalDate validFrom,
    LocalDate validTo,
    String currency,
    boolean taxIncluded,
    int version,
    UUID replaces,
    UUID replacedBy,
    Standing.Withdrawn withdrawn,
    List<PriceLine> lines,
    List<Deal> deals,
    List<String> warnings,
    Instant recordedAt) {

  static PriceListView of(PriceList list, Standing standing, String farmCurrency) {
    return new PriceListView(
        list.id(),
        list.name(),
        list.audience(),
        list.validFrom(),
        list.validTo(),
        list.currency(),
        list.taxIncluded(),
        list.version(),
        list.replaces(),
        standing.replacedBy(),
        standing.withdrawn(),
        list.lines(),
        list.deals(),
        Warnings.of(list, farmCurrency),
        list.recordedAt());
  }
}
