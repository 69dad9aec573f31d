package org.barreltally.cost;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.barreltally.pricing.Money;

/**
 * What was earned in a year of the book.
 *
 * @param totals of all rows
 * @param note how it was reckoned, and who decides
 */
public record Margins(
    int year, By by, CostMethod method, List<Row> items, Totals totals, String note) {

  /** How it is told apart. */
  public enum By {
    CONTAINER,
    SHOW,
    ORDER;

    /** {@code container, show, order}. */
    public String code() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * @param what {@code container, gift-boxes, bulk, show, gift, sale, shop}
   * @param name a code or id of that kind; never a person's name
   * @param count of jars gone to buyers; null for syrup in bulk
   * @param takings without tax
   * @param goods what the goods that went to buyers cost
   * @param charges fees and other costs
   * @param margin takings less goods and charges
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Row(
      String what,
      String name,
      LocalDate on,
      Long count,
      Money takings,
      Money goods,
      List<Charge> charges,
      Money margin) {

    static Row of(
        String what,
        String name,
        LocalDate on,
        Long count,
        Money takings,
        Money goods,
        List<Charge> charges) {
      Money margin = takings.minus(goods);
      for (Charge charge : charges) {
        margin = margin.minus(charge.amount());
      }
      return new Row(what, name, on, count, takings, goods, List.copyOf(charges), margin);
    }
  }

  /**
   * @param what for example {@code fee, travel, helper, postage, goods-lost}
   */
  public record Charge(String what, Money amount) {}

  /** Sums over the rows. */
  public record Totals(Money takings, Money goods, Money charges, Money margin) {

    static Totals of(List<Row> rows, String currency) {
      Money none = Money.none(currency);
      return new Totals(
          rows.stream().map(Row::takings).reduce(none, Money::plus),
          rows.stream().map(Row::goods).reduce(none, Money::plus),
          rows.stream()
              .flatMap(row -> row.charges().stream())
              .map(Charge::amount)
              .reduce(none, Money::plus),
          rows.stream().map(Row::margin).reduce(none, Money::plus));
    }
  }
}
