package org.barreltally.pricing;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.pricing.internal.TaxRateRows;

/**
 * Tax by product class, place and date, at rates the owner entered; what is due where, the tax
 * office and a tax preparer decide. Nothing is overwritten: of rates that hold on a day the one
 * from the latest day counts, of two from the same day the one entered later.
 */
@ApplicationScoped
public class Taxes {

  private final TaxRateRows rows;
  private final Days days;
  private final Ids ids;

  Taxes(TaxRateRows rows, Days days, Ids ids) {
    this.rows = rows;
    this.days = days;
    this.ids = ids;
  }

  /**
   * Enters a rate.
   *
   * @throws org.barreltally.refusal.InvalidField naming every field that needs mending
   */
  @Transactional
  public TaxRate enter(
      ProductClass productClass, String place, BigDecimal percent, LocalDate from, String source) {
    TaxRateRules.check(productClass, place, percent, from, source, days);
    TaxRate entered =
        new TaxRate(ids.next(), productClass, place.strip(), percent, from, source, days.now());
    rows.add(entered, TaxPlace.of(place).key());
    return entered;
  }

  /**
   * The rate that holds at a place on a day: of the place itself, else of the region it lies in.
   *
   * @param place null or blank has no rate
   */
  @Transactional
  public Optional<TaxRate> rate(ProductClass productClass, String place, LocalDate on) {
    if (place == null || place.isBlank()) {
      return Optional.empty();
    }
    return TaxPlace.of(place).andAround().stream()
        .flatMap(key -> rows.holding(productClass, key, on).stream())
        .findFirst();
  }

  /**
   * The tax on a line that is sold at a place on a day; 0, and said so, where no rate was entered.
   *
   * @param amount of the line
   * @param included whether the amount has the tax in it
   */
  @Transactional
  public Taxed on(
      Money amount, boolean included, ProductClass productClass, String place, LocalDate on) {
    return rate(productClass, place, on)
        .map(rate -> included ? Taxed.within(amount, rate) : Taxed.onTop(amount, rate))
        .orElseGet(() -> Taxed.unknown(amount));
  }

  /** Rates in the order they were entered, after an id (or null), at most so many. */
  @Transactional
  public List<TaxRate> list(UUID after, int limit) {
    return rows.list(after, limit);
  }

  /**
   * The rate an address names.
   *
   * @throws UnknownTaxRate if there is none of that id
   */
  @Transactional
  public TaxRate at(UUID id) {
    return rows.find(id).orElseThrow(() -> new UnknownTaxRate(id));
  }
}
