package org.barreltally.shows;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.List;
import org.barreltally.pricing.Money;
import org.barreltally.refusal.InvalidField;

/**
 * A cash drawer was counted.
 *
 * @param name which drawer, where there are several; null for the only one
 * @param denominations how many of each note and coin; empty if only a total was written down
 * @param total as somebody wrote it down; null if nobody did
 */
public record Drawer(String name, List<Denomination> denominations, Cash total) {

  /**
   * So many of one note or coin.
   *
   * @param value of one
   * @param count pieces, not below zero
   */
  public record Denomination(Cash value, Long count) {}

  /**
   * An amount of cash, as a plain number in the farm's currency or as money.
   *
   * @param currency null for the farm's
   */
  public record Cash(BigDecimal amount, String currency) {

    private static final BigDecimal MOST = BigDecimal.valueOf(10_000_000);

    /**
     * @throws InvalidField if it is neither a number nor money, or out of range
     */
    @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
    public static Cash of(JsonNode said) {
      if (said.isNumber()) {
        return new Cash(bounded(said.decimalValue()), null);
      }
      if (said.isObject()
          && said.size() == 2
          && said.path("amount").isNumber()
          && said.path("currency").isTextual()) {
        Money money =
            new Money(bounded(said.get("amount").decimalValue()), said.get("currency").textValue());
        return new Cash(money.amount(), money.currency());
      }
      throw new InvalidField(
          "", "Give a number, or money such as {\"amount\": 20.00, \"currency\": \"USD\"}.");
    }

    private static BigDecimal bounded(BigDecimal amount) {
      if (amount.abs().compareTo(MOST) > 0 || amount.scale() > 10) {
        throw new InvalidField("", "Give an amount of at most 10,000,000.");
      }
      return amount;
    }
  }

  public Drawer {
    denominations = denominations == null ? List.of() : List.copyOf(denominations);
  }
}
