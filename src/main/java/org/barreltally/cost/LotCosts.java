package org.barreltally.cost;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.barreltally.cost.flow.Contribution;
import org.barreltally.cost.flow.Goods;
import org.barreltally.cost.flow.Making;
import org.barreltally.ledger.Days;
import org.barreltally.lots.Lots;
import org.barreltally.pricing.Money;

/** What lots cost, each by what was spent on it. */
@ApplicationScoped
public class LotCosts {

  private static final BigDecimal G_PER_KG = BigDecimal.valueOf(1000);

  private final Reckoning reckoning;
  private final Lots lots;
  private final Days days;

  LotCosts(Reckoning reckoning, Lots lots, Days days) {
    this.reckoning = reckoning;
    this.lots = lots;
    this.days = days;
  }

  /**
   * @throws org.barreltally.lots.UnknownLot if there is no such lot
   */
  public LotCost of(String lot) {
    lots.at(lot);
    Reckoning.Of of = reckoning.year(days.today().getYear(), CostMethod.SPECIFIC_LOT, null);
    return new LotCost(
        lot,
        of.walk().end().makings().stream()
            .filter(making -> making.outputs().stream().anyMatch(out -> is(out.goods(), lot)))
            .map(making -> coming(of, making, lot))
            .toList(),
        LotCost.ABSORBED + " " + YearCost.NOTE);
  }

  private static boolean is(Goods goods, String lot) {
    return lot.equals(goods.lot());
  }

  private static LotCost.Coming coming(Reckoning.Of of, Making making, String lot) {
    boolean outside = making.inputs().isEmpty();
    BigDecimal in = BigDecimal.ZERO;
    BigDecimal carried = BigDecimal.ZERO;
    for (Making.Input input : making.inputs()) {
      in = in.add(input.goods().grams(input.amount()));
      carried = carried.add(input.value());
    }
    BigDecimal good = BigDecimal.ZERO;
    for (Making.Output output : making.outputs()) {
      good = good.add(output.goods().grams(output.amount()));
    }
    return new LotCost.Coming(
        making.day(),
        making.kind(),
        making.inputs().stream().map(input -> used(of, input)).toList(),
        of.money(carried),
        outside ? null : Amount.mass(in),
        Amount.mass(good),
        making.outputs().stream()
            .filter(output -> is(output.goods(), lot))
            .map(output -> came(of, output))
            .toList());
  }

  private static LotCost.Used used(Reckoning.Of of, Making.Input input) {
    Goods goods = input.goods();
    return new LotCost.Used(
        goods.lot(),
        goods.container(),
        Amount.of(goods.container(), input.amount(), of.money(input.value())),
        goods.container() == null ? perKg(of, input.value(), input.amount()) : null);
  }

  private static LotCost.Came came(Reckoning.Of of, Making.Output output) {
    Goods goods = output.goods();
    boolean bulk = goods.container() == null;
    return new LotCost.Came(
        goods.container(),
        Amount.of(goods.container(), output.amount(), of.money(output.value())),
        of.money(output.carried()),
        output.added().stream().map(added -> added(of, added)).toList(),
        of.money(output.value()),
        bulk ? perKg(of, output.value(), output.amount()) : null,
        bulk
            ? null
            : of.money(
                output
                    .value()
                    .divide(BigDecimal.valueOf(output.amount()), MathContext.DECIMAL128)));
  }

  private static LotCost.Added added(Reckoning.Of of, Contribution added) {
    String spent = of.money(added.spent()).amount().toPlainString();
    String cost = of.money(added.value()).amount().toPlainString();
    String working =
        switch (added.of()) {
          case SEASON, LOT ->
              "%s × %s kg ÷ %s kg = %s"
                  .formatted(spent, kilograms(added.here()), kilograms(added.over()), cost);
          case RUN ->
              "%s × %s jars ÷ %s good jars = %s"
                  .formatted(spent, plain(added.here()), plain(added.over()), cost);
          case CONTAINER, SUPPLY ->
              "%s for %s × %s, broken ones included = %s"
                  .formatted(spent, plain(added.over()), plain(added.here()), cost);
        };
    return new LotCost.Added(added.of().code(), added.name(), working, of.money(added.value()));
  }

  private static String kilograms(BigDecimal grams) {
    return grams.divide(G_PER_KG, 3, RoundingMode.HALF_UP).toPlainString();
  }

  private static String plain(BigDecimal number) {
    BigDecimal short4 = number.setScale(4, RoundingMode.HALF_UP).stripTrailingZeros();
    return short4.toPlainString();
  }

  private static Money perKg(Reckoning.Of of, BigDecimal value, long grams) {
    return of.money(
        value.multiply(G_PER_KG).divide(BigDecimal.valueOf(grams), MathContext.DECIMAL128));
  }
}
