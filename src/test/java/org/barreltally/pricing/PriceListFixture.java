package org.barreltally.pricing;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.barreltally.measure.ColorClass;

/** Price lists of an invented farm: half-pint $9, pint $15, quart $25. */
final class PriceListFixture {

  private static final UUID ID = UUID.fromString("019a1f3a-6a3e-7b52-8f4e-3d1f6a1b2c3d");

  private PriceListFixture() {}

  static PriceList farm(Deal... deals) {
    return list(
        List.of(
            line("HP", null, "9.00"),
            line("HP", ColorClass.GOLDEN, "10.00"),
            line("PT", null, "15.00"),
            line("QT", null, "25.00")),
        List.of(deals));
  }

  static PriceList list(List<PriceLine> lines, List<Deal> deals) {
    return new PriceList(
        ID,
        "Fair prices",
        Audience.SHOW,
        LocalDate.of(2026, 7, 1),
        null,
        lines.get(0).price().currency(),
        false,
        ID,
        1,
        null,
        lines,
        deals,
        Instant.parse("2026-06-28T18:04:11Z"));
  }

  static PriceLine line(String container, ColorClass grade, String dollars) {
    return new PriceLine(container, grade, usd(dollars), ProductClass.FOOD);
  }

  static Deal deal(String container, ColorClass grade, int count, String dollars) {
    return new Deal(container, grade, count, usd(dollars));
  }

  static Money usd(String dollars) {
    return new Money(new BigDecimal(dollars), "USD");
  }

  static List<String> amounts(Charged charged) {
    return charged.lines().stream().map(line -> line.amount().amount().toPlainString()).toList();
  }
}
