package org.barreltally.shows;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.List;
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
          && said.path("amount").isNumber()
          && said.size() == (said.path("currency").isTextual() ? 2 : 1)) {
        return new Cash(
            bounded(said.get("amount").decimalValue()), said.path("currency").textValue());
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

  /** A drawer as it may be told: by notes and coins, by a total, or simply as money. */
  public record Told(
      String name,
      List<Denomination> denominations,
      Cash total,
      BigDecimal amount,
      String currency) {}

  /** What was told, money alone being the total. */
  @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
  public static Drawer of(Told told) {
    Cash total = told.amount() == null ? told.total() : new Cash(told.amount(), told.currency());
    return new Drawer(told.name(), told.denominations(), total);
  }

  public Drawer {
    denominations = denominations == null ? List.of() : denominations;
  }
}
