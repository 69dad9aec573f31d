package org.barreltally.pricing;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.barreltally.ledger.Days;

/** Says what a basket would cost, with deals and tax. */
@ApplicationScoped
public class Quotes {

  private final Taxes taxes;
  private final Days days;

  Quotes(Taxes taxes, Days days) {
    this.taxes = taxes;
    this.days = days;
  }

  /**
   * @param deals whether the deals of the list apply
   * @param place where it is sold; null for no tax
   * @param on the day; null for today
   * @throws NotOnPriceList if the list has no price for a line and none was agreed
   */
  @Transactional
  public Quote of(
      PriceList list, List<BasketLine> basket, boolean deals, String place, LocalDate on) {
    LocalDate day = on == null ? days.today() : days.known(on, "on");
    Charged charged = deals ? Deals.of(list).apply(basket) : list.charge(basket);
    Money net = Money.none(list.currency());
    Money tax = net;
    Money total = net;
    List<Quote.Line> lines = new ArrayList<>();
    for (int i = 0; i < basket.size(); i++) {
      BasketLine jars = basket.get(i);
      Charged.Line line = charged.lines().get(i);
      ProductClass productClass = list.productClass(jars.container(), jars.grade());
      Taxed taxed = taxes.on(line.amount(), list.taxIncluded(), productClass, place, day);
      lines.add(new Quote.Line(jars, line.each(), line.amount(), taxed));
      net = net.plus(taxed.net());
      tax = tax.plus(taxed.tax());
      total = total.plus(taxed.gross());
    }
    return new Quote(
        lines, charged.deals(), charged.saved(), net, tax, total, list.taxIncluded(), place, day);
  }
}
