package org.barreltally.pricing.rest;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.barreltally.measure.ColorClass;
import org.barreltally.pricing.Charged;
import org.barreltally.pricing.Deal;
import org.barreltally.pricing.Money;
import org.barreltally.pricing.Quote;

/** What a basket would cost, as it is answered. */
public record QuoteView(
    List<Line> lines,
    List<Used> deals,
    Money saved,
    Money net,
    Money tax,
    Money total,
    boolean taxIncluded,
    String place,
    LocalDate on) {

  /**
   * @param amount with its share of the deals
   * @param taxPercent left out where no rate was entered
   */
  public record Line(
      String container,
      ColorClass grade,
      int count,
      Money each,
      Money amount,
      BigDecimal taxPercent,
      Money tax) {}

  /** A deal and how often it was used. */
  public record Used(String container, ColorClass grade, int count, Money price, int times) {}

  static QuoteView of(Quote quote) {
    return new QuoteView(
        quote.lines().stream().map(QuoteView::line).toList(),
        quote.deals().stream().map(QuoteView::used).toList(),
        quote.saved(),
        quote.net(),
        quote.tax(),
        quote.total(),
        quote.taxIncluded(),
        quote.place(),
        quote.on());
  }

  private static Line line(Quote.Line line) {
    return new Line(
        line.jars().container(),
        line.jars().grade(),
        line.jars().count(),
        line.each(),
        line.amount(),
        line.taxed().percent(),
        line.taxed().tax());
  }

  private static Used used(Charged.Used used) {
    Deal deal = used.deal();
    return new Used(deal.container(), deal.grade(), deal.count(), deal.price(), used.times());
  }
}
