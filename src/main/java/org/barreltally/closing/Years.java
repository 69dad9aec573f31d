package org.barreltally.closing;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Instance;
import jakarta.transaction.Transactional;
import java.util.Comparator;
import java.util.List;
import org.barreltally.closing.internal.YearRows;
import org.barreltally.ledger.Days;
import org.barreltally.pricing.TakingsOfYear;

/** The years of the book. They are closed in their order, once, and never opened again. */
@ApplicationScoped
public class Years {

  private final YearRows rows;
  private final Days days;
  private final Instance<TakingsOfYear> sellers;

  Years(YearRows rows, Days days, Instance<TakingsOfYear> sellers) {
    this.rows = rows;
    this.days = days;
    this.sellers = sellers;
  }

  /** The years that have movements or were closed, the earliest first. */
  @Transactional
  public List<Year> list() {
    return rows.list();
  }

  /**
   * @throws UnknownYear if the book has nothing of it
   */
  @Transactional
  public Year at(int year) {
    return rows.list().stream()
        .filter(each -> each.year() == year)
        .findFirst()
        .orElseThrow(() -> new UnknownYear(year));
  }

  /**
   * Closes a year: it takes no more postings. Postings in flight are waited for and are in it.
   *
   * @throws YearNotOver if it is not over on the farm
   * @throws YearClosed if it is closed
   * @throws EarlierYearOpen if an earlier one has movements and is open
   */
  @Transactional
  public Year close(int year) {
    int thisYear = days.today().getYear();
    if (year >= thisYear) {
      throw new YearNotOver(year, thisYear);
    }
    rows.alone();
    int last = rows.lastClosed().orElse(Integer.MIN_VALUE);
    if (year <= last) {
      throw new YearClosed(year, last);
    }
    rows.close(year, days.now());
    rows.list().stream()
        .filter(each -> each.year() > last && each.year() < year && each.movements() > 0)
        .findFirst()
        .ifPresent(
            earlier -> {
              throw new EarlierYearOpen(year, earlier.year());
            });
    return at(year);
  }

  /**
   * What the book says of a year.
   *
   * @throws UnknownYear if the book has nothing of it
   */
  @Transactional
  public YearBook book(int year) {
    Year known = at(year);
    return new YearBook(
        known,
        rows.standing(year),
        rows.flows(year),
        sellers.stream()
            .flatMap(seller -> seller.of(year).stream())
            .sorted(Comparator.comparing(TakingsOfYear.Taken::channel))
            .map(taken -> new YearBook.Taking(taken.channel(), taken.amount()))
            .toList());
  }
}
