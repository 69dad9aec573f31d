package org.barreltally.shares;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;
import org.barreltally.pricing.Money;
import org.barreltally.sugarbush.Basis;
import org.barreltally.sugarbush.Credit;
import org.barreltally.sugarbush.Lease;
import org.barreltally.sugarbush.LeaseTerms;
import org.barreltally.sugarbush.TapCount;

/**
 * What a lease comes to. Rent is taps × rate. By volume it buys gallons at the agreed price, jars
 * count by their contents, and what is carried is gallons, valued at that price. By list value and
 * by volume plus container the sums are in money, each line rounded once, half up, and gallons are
 * told beside it at the agreed price.
 */
final class Share {

  private static final int VOLUME_DECIMALS = 4;
  private static final BigDecimal ML_PER_GAL = Quantity.of(1, Unit.GAL).in(Unit.ML);

  private final Lease lease;
  private final LeaseTerms terms;
  private final List<Credit> credits;
  private final List<HandedOver> handed;

  Share(Lease lease, List<Credit> credits, List<HandedOver> handed) {
    this.lease = lease;
    this.terms = lease.terms();
    this.credits = credits;
    this.handed = handed;
  }

  ShareStatement statement() {
    List<ShareStatement.Line> lines = lines();
    return new ShareStatement(
        lease,
        taps(),
        owed(),
        inGallons(owed()),
        credits.stream()
            .map(c -> new ShareStatement.CarriedIn(c.season(), worth(c), gallonsOf(c)))
            .toList(),
        lines,
        sum(lines),
        gallons(deliveredML()),
        left(),
        leftML().map(Share::gallons).orElse(null),
        market(lines));
  }

  private int taps() {
    return lease.governing().map(TapCount::count).orElse(0);
  }

  private Money owed() {
    return terms.ratePerTap().times(BigDecimal.valueOf(taps()));
  }

  private BigDecimal deliveredML() {
    return handed.stream()
        .flatMap(h -> h.lines().stream())
        .map(HandedOver.Line::mL)
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /** What is still owed, in the money of the lease. */
  Money left() {
    if (byVolume()) {
      return atPrice(leftML().orElseThrow());
    }
    Money carriedIn = credits.stream().map(this::worth).reduce(none(), Money::plus);
    return owed().plus(carriedIn).minus(sum(lines()));
  }

  /** The same in millilitres; empty where no gallon has a price. */
  private Optional<BigDecimal> leftML() {
    if (terms.price() == null) {
      return Optional.empty();
    }
    if (!byVolume()) {
      return Optional.of(mL(left()));
    }
    BigDecimal carriedIn = credits.stream().map(this::mL).reduce(BigDecimal.ZERO, BigDecimal::add);
    return Optional.of(mL(owed()).add(carriedIn).subtract(deliveredML()));
  }

  /** What goes on when the lease is closed: gallons by volume, else money alone. */
  Optional<BigDecimal> creditML() {
    return byVolume() ? leftML().map(ml -> ml.setScale(3, RoundingMode.HALF_UP)) : Optional.empty();
  }

  private boolean byVolume() {
    return terms.basis() == Basis.VOLUME;
  }

  private List<ShareStatement.Line> lines() {
    List<ShareStatement.Line> lines = new ArrayList<>();
    for (HandedOver each : handed) {
      for (HandedOver.Line line : each.lines()) {
        lines.add(
            new ShareStatement.Line(
                each.id(),
                each.movement(),
                each.on(),
                line.container(),
                line.grade(),
                line.lot(),
                line.count(),
                gallons(line.mL()),
                value(line),
                line.listPrice(),
                line.listPrice() == null ? null : times(line.listPrice(), line)));
      }
    }
    return lines;
  }

  private Money value(HandedOver.Line line) {
    return switch (terms.basis()) {
      case VOLUME -> atPrice(line.mL());
      case LIST_VALUE -> line.listPrice() == null ? none() : times(line.listPrice(), line);
      case VOLUME_PLUS_CONTAINER ->
          Money.rounded(
              terms
                  .price()
                  .amount()
                  .multiply(line.mL())
                  .divide(ML_PER_GAL, MathContext.DECIMAL64)
                  .add(
                      terms
                          .charge(line.container())
                          .amount()
                          .multiply(BigDecimal.valueOf(line.count()))),
              none().currency());
    };
  }

  private static Money times(Money each, HandedOver.Line line) {
    return each.times(BigDecimal.valueOf(line.count()));
  }

  /** Gallons that went on from a lease by volume to one by volume stay gallons. */
  private BigDecimal mL(Credit credit) {
    return byVolume() && credit.mL() != null ? credit.mL() : mL(credit.money());
  }

  private Money worth(Credit credit) {
    return byVolume() && credit.mL() != null ? atPrice(credit.mL()) : credit.money();
  }

  private Quantity gallonsOf(Credit credit) {
    return terms.price() == null ? null : gallons(mL(credit));
  }

  private BigDecimal mL(Money money) {
    return money
        .amount()
        .multiply(ML_PER_GAL)
        .divide(terms.price().amount(), MathContext.DECIMAL64);
  }

  private Money atPrice(BigDecimal mL) {
    return Money.rounded(
        terms.price().amount().multiply(mL).divide(ML_PER_GAL, MathContext.DECIMAL64),
        none().currency());
  }

  private Quantity inGallons(Money money) {
    return terms.price() == null ? null : gallons(mL(money));
  }

  private static Quantity gallons(BigDecimal mL) {
    BigDecimal gallons =
        mL.divide(ML_PER_GAL, VOLUME_DECIMALS, RoundingMode.HALF_UP).stripTrailingZeros();
    return Quantity.of(gallons.setScale(Math.max(0, gallons.scale())), Unit.GAL);
  }

  private Money sum(List<ShareStatement.Line> lines) {
    return lines.stream().map(ShareStatement.Line::value).reduce(none(), Money::plus);
  }

  /** What the jars would have cost others; null where a price is not known. */
  private Money market(List<ShareStatement.Line> lines) {
    boolean known = lines.stream().allMatch(line -> line.listValue() != null);
    return known
        ? lines.stream().map(ShareStatement.Line::listValue).reduce(none(), Money::plus)
        : null;
  }

  private Money none() {
    return Money.none(terms.ratePerTap().currency());
  }
}
