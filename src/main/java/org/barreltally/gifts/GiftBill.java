package org.barreltally.gifts;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.barreltally.pricing.Money;

/**
 * What the buyer owes. Goods count for every recipient who is not cancelled; postage counts once
 * for each mailing the buyer bears, and as it was told for parcels not sent yet.
 *
 * @param lines goods by box and price, then postage by amount
 * @param depositAsked the percentage of goods and first postage; null where none was agreed
 * @param deposit paid with the order
 * @param paid all that was paid, deposit included
 * @param balance still to pay; below zero: to give back
 * @param ownCost postage the maker bears
 * @param replacements times that broken jars were replaced at the maker's cost
 * @param mailings parcels sent so far, whoever bore the postage
 */
public record GiftBill(
    List<Line> lines,
    Money goods,
    Money postage,
    Money total,
    Money depositAsked,
    Money deposit,
    Money paid,
    Money balance,
    Money ownCost,
    long replacements,
    int mailings) {

  /** So many of something at one price. */
  public record Line(String what, long count, Money price, Money amount) {}

  private record Priced(String what, Money price) {}

  /** The bill of an order as it stands. */
  public static GiftBill of(GiftOrder order) {
    String currency = order.head().currency();
    List<Done> mailed = mailings(order);
    Map<Priced, Long> goods = new LinkedHashMap<>();
    Map<Priced, Long> postage = new LinkedHashMap<>();
    for (GiftLine line : order.lines()) {
      if (line.state() != RecipientState.CANCELLED) {
        goods.merge(
            new Priced(order.box(line).name(), line.price()), (long) line.count(), Long::sum);
      }
      postage(line, mailed).forEach(priced -> postage.merge(priced, 1L, Long::sum));
    }
    List<Line> goodsLines = lines(goods);
    List<Line> postageLines = lines(postage);
    Money goodsTotal = sum(goodsLines, currency);
    Money postageTotal = sum(postageLines, currency);
    Money total = goodsTotal.plus(postageTotal);
    Money paid = paid(order, Set.of(Payment.Kind.values()));
    List<Line> lines = new ArrayList<>(goodsLines);
    lines.addAll(postageLines);
    return new GiftBill(
        lines,
        goodsTotal,
        postageTotal,
        total,
        asked(order, currency),
        paid(order, Set.of(Payment.Kind.DEPOSIT)),
        paid,
        total.minus(paid),
        mailed.stream()
            .filter(done -> done.paidBy() == Payer.MAKER && done.postage() != null)
            .map(Done::postage)
            .reduce(Money.none(currency), Money::plus),
        replaced(order),
        mailed.size());
  }

  private static List<Priced> postage(GiftLine line, List<Done> mailed) {
    List<Done> its =
        mailed.stream().filter(done -> done.n() == line.n() && done.step() == Step.SEND).toList();
    if (its.isEmpty()) {
      return line.postage() == null
              || line.postage().signum() == 0
              || line.state() == RecipientState.CANCELLED
          ? List.of()
          : List.of(new Priced("Postage", line.postage()));
    }
    List<Priced> priced = new ArrayList<>();
    for (int i = 0; i < its.size(); i++) {
      Done done = its.get(i);
      if (done.postage() != null && done.postage().signum() > 0 && done.paidBy() == Payer.BUYER) {
        priced.add(new Priced(i == 0 ? "Postage" : "Postage, sent again", done.postage()));
      }
    }
    return priced;
  }

  /** Parcels that went out and were not taken back, by the order of the steps. */
  private static List<Done> mailings(GiftOrder order) {
    Map<Integer, Delivery> deliveries =
        order.lines().stream().collect(Collectors.toMap(GiftLine::n, GiftLine::delivery));
    return standing(order).stream()
        .filter(
            done ->
                done.step() == Step.SEND && deliveries.get(done.n()) == Delivery.POST
                    || done.postage() != null)
        .toList();
  }

  /** Steps that were not undone. */
  static List<Done> standing(GiftOrder order) {
    Set<UUID> undone =
        order.done().stream()
            .filter(done -> done.undoes() != null)
            .map(Done::undoes)
            .collect(Collectors.toSet());
    return order.done().stream()
        .filter(done -> done.step() != Step.UNDO && !undone.contains(done.id()))
        .toList();
  }

  private static long replaced(GiftOrder order) {
    return standing(order).stream().filter(done -> done.step() == Step.REPLACE).count();
  }

  private static Money asked(GiftOrder order, String currency) {
    if (order.head().depositPercent() == null) {
      return null;
    }
    Money ordered = Money.none(currency);
    for (GiftLine line : order.lines()) {
      ordered = ordered.plus(line.price().times(BigDecimal.valueOf(line.count())));
      ordered = line.postage() == null ? ordered : ordered.plus(line.postage());
    }
    return ordered.times(order.head().depositPercent().movePointLeft(2));
  }

  private static Money paid(GiftOrder order, Set<Payment.Kind> kinds) {
    return order.payments().stream()
        .filter(payment -> kinds.contains(payment.kind()))
        .map(Payment::amount)
        .reduce(Money.none(order.head().currency()), Money::plus);
  }

  private static List<Line> lines(Map<Priced, Long> counted) {
    return counted.entrySet().stream()
        .map(
            e ->
                new Line(
                    e.getKey().what(),
                    e.getValue(),
                    e.getKey().price(),
                    e.getKey().price().times(BigDecimal.valueOf(e.getValue()))))
        .toList();
  }

  private static Money sum(List<Line> lines, String currency) {
    return lines.stream().map(Line::amount).reduce(Money.none(currency), Money::plus);
  }
}
