package org.barreltally.bulk;

import java.util.EnumMap;
import java.util.Map;
import org.barreltally.measure.ColorClass;
import org.barreltally.pricing.CurrencyMismatch;
import org.barreltally.pricing.Money;
import org.barreltally.refusal.InvalidField;

/** Prices per lb by grade, all in one currency. */
final class PricesByGrade {

  private final Map<ColorClass, Money> prices = new EnumMap<>(ColorClass.class);

  private PricesByGrade() {}

  /**
   * @throws InvalidField naming a price that is missing, below zero, or said twice differently
   * @throws CurrencyMismatch naming a price in another currency than the others
   */
  static PricesByGrade of(SellBulk said) {
    PricesByGrade read = new PricesByGrade();
    if (said.prices() != null) {
      said.prices().forEach((grade, price) -> read.add(grade, price, "prices." + grade));
    }
    if (said.pricePerLb() != null) {
      read.add(said.agreed().grade().code(), said.pricePerLb(), "pricePerLb");
    }
    if (read.prices.isEmpty()) {
      throw new InvalidField(
          "pricePerLb", "Give the price per lb, or prices by grade where the grades differ.");
    }
    return read;
  }

  private void add(String code, Money price, String field) {
    ColorClass grade;
    try {
      grade = ColorClass.of(code);
    } catch (InvalidField unknown) {
      throw new InvalidField(field, unknown.detail());
    }
    if (price == null || price.signum() < 0) {
      throw new InvalidField(field, "Give a price per lb, not less than nothing.");
    }
    prices
        .values()
        .forEach(
            other -> {
              if (!other.currency().equals(price.currency())) {
                throw new CurrencyMismatch(price.currency(), other.currency(), field);
              }
            });
    Money earlier = prices.putIfAbsent(grade, price);
    if (earlier != null && !earlier.equals(price)) {
      throw new InvalidField(
          field,
          "prices says %s for %s and pricePerLb %s. Say it once."
              .formatted(earlier, grade.code(), price));
    }
  }

  /**
   * The price of one side's grade.
   *
   * @throws PriceMissing if none was given
   */
  Money of(ColorClass grade, String side) {
    Money price = prices.get(grade);
    if (price == null) {
      throw new PriceMissing(grade, side);
    }
    return price;
  }
}
