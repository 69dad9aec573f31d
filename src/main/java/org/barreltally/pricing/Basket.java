package org.barreltally.pricing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.barreltally.refusal.InvalidField;

/**
 * The lines of one purchase with their prices. Amounts are counted in the currency's least coin.
 */
final class Basket {

  private final PriceList list;
  private final List<BasketLine> lines;
  private final List<Money> each = new ArrayList<>();
  private final Money[] amounts;

  /**
   * @throws NotOnPriceList if the list has no price for a line and none was agreed
   * @throws CurrencyMismatch if an agreed price is of another currency
   * @throws InvalidField if a count is negative or no container is named
   */
  Basket(PriceList list, List<BasketLine> lines) {
    this.list = list;
    this.lines = List.copyOf(lines);
    this.amounts = new Money[lines.size()];
    for (int i = 0; i < lines.size(); i++) {
      BasketLine line = lines.get(i);
      if (line.count() < 0) {
        throw new InvalidField("lines[" + i + "].count", "Give 0 or more.");
      }
      each.add(each(line, i));
      amounts[i] = each.get(i).times(BigDecimal.valueOf(line.count()));
    }
  }

  private Money each(BasketLine line, int i) {
    if (line.each() == null) {
      return list.price(line.container(), line.grade())
          .orElseThrow(
              () ->
                  new NotOnPriceList(
                      list, line.container(), line.grade(), "lines[" + i + "].container"));
    }
    if (!line.each().currency().equals(list.currency())) {
      throw new CurrencyMismatch(
          list.currency(), line.each().currency(), "lines[" + i + "].price.currency");
    }
    return line.each();
  }

  Charged singly() {
    return charged(total(), List.of());
  }

  Charged withDeals() {
    Money singly = total();
    List<Charged.Used> used = new ArrayList<>();
    jarsByContainer()
        .forEach(
            (container, indexes) -> {
              List<Deal> deals =
                  list.deals().stream().filter(d -> d.container().equals(container)).toList();
              if (!deals.isEmpty()) {
                used.addAll(deal(deals, indexes));
              }
            });
    return charged(singly, used);
  }

  /** The lines that deals may take, by size. */
  private Map<String, List<Integer>> jarsByContainer() {
    Map<String, List<Integer>> found = new LinkedHashMap<>();
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).each() == null && lines.get(i).count() > 0) {
        found.computeIfAbsent(lines.get(i).container(), c -> new ArrayList<>()).add(i);
      }
    }
    return found;
  }

  private List<Charged.Used> deal(List<Deal> deals, List<Integer> indexes) {
    long jars = indexes.stream().mapToLong(i -> lines.get(i).count()).sum();
    if (jars > Deals.MOST_JARS) {
      throw new InvalidField(
          "lines",
          "Deals are found for at most " + Deals.MOST_JARS + " jars of a size; sell it in parts.");
    }
    List<JarGroup> groups = JarGroup.of(lines, each, indexes, deals);
    CheapestMix mix = CheapestMix.of(groups, deals);
    long[] coins = FairShares.of(groups, mix, indexes.size());
    IntStream.range(0, indexes.size()).forEach(i -> amounts[indexes.get(i)] = money(coins[i]));
    return mix.used();
  }

  private Money money(long coins) {
    return new Money(
        BigDecimal.valueOf(coins, Money.none(list.currency()).amount().scale()), list.currency());
  }

  private Money total() {
    Money sum = Money.none(list.currency());
    for (Money amount : amounts) {
      sum = sum.plus(amount);
    }
    return sum;
  }

  private Charged charged(Money singly, List<Charged.Used> used) {
    List<Charged.Line> charged =
        IntStream.range(0, amounts.length)
            .mapToObj(i -> new Charged.Line(each.get(i), amounts[i]))
            .toList();
    Money total = total();
    return new Charged(charged, total, singly.minus(total), used);
  }
}
