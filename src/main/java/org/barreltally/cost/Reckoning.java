package org.barreltally.cost;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.time.LocalDate;
import org.barreltally.cost.flow.YearWalk;
import org.barreltally.cost.internal.CostBook;
import org.barreltally.pricing.Money;
import org.barreltally.settings.FarmSettings;

/** Reads the book and reckons it by the method of a year. */
@ApplicationScoped
class Reckoning {

  /** What was reckoned, and by which method. */
  record Of(CostBook.Read read, int year, CostMethod method, String currency, YearWalk walk) {

    Money money(BigDecimal amount) {
      return Money.rounded(amount, currency);
    }
  }

  private final CostBook book;
  private final FarmSettings settings;

  Reckoning(CostBook book, FarmSettings settings) {
    this.book = book;
    this.settings = settings;
  }

  /**
   * @param method null for the one chosen for the year
   * @param until last day that counts; null for the whole year
   */
  Of year(int year, CostMethod method, LocalDate until) {
    String currency = settings.now().said().currency();
    CostBook.Read read = book.upTo(year, currency);
    CostMethod by = method == null ? CostMethods.of(year, read.methods()) : method;
    return new Of(read, year, by, currency, walk(read, by, year, until, currency));
  }

  /** What stood at the end of the year before by its own method; null where that is the same. */
  BigDecimal closingBefore(Of of) {
    CostMethod before = CostMethods.of(of.year() - 1, of.read().methods());
    if (before == of.method()) {
      return null;
    }
    CostBook.Read read = book.upTo(of.year() - 1, of.currency());
    return walk(read, before, of.year() - 1, null, of.currency()).end().value();
  }

  private static YearWalk walk(
      CostBook.Read read, CostMethod method, int year, LocalDate until, String currency) {
    return YearWalk.of(
        read.happenings(),
        read.costs(),
        read.packing(),
        method,
        year,
        until,
        Money.none(currency).amount().scale());
  }
}
