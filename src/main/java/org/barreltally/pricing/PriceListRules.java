package org.barreltally.pricing;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.containers.Container;
import org.barreltally.containers.Containers;
import org.barreltally.ledger.Days;
import org.barreltally.measure.ColorClass;
import org.barreltally.pricing.internal.PriceListRows;
import org.barreltally.refusal.InvalidField;

/** What a price list must be before it is entered. */
@ApplicationScoped
class PriceListRules {

  private static final int REASON_MAX = 500;

  private final Containers containers;
  private final PriceListRows rows;
  private final Days days;

  PriceListRules(Containers containers, PriceListRows rows, Days days) {
    this.containers = containers;
    this.rows = rows;
    this.days = days;
  }

  /**
   * @throws InvalidField naming every field that is missing, malformed or out of its range
   * @throws ValidityReversed if it ends before it begins
   * @throws org.barreltally.containers.UnknownContainer if a size is not known
   * @throws CurrencyMismatch if a price is of another currency than the first line's
   * @throws PricedTwice if two lines or two deals are for the same jars
   * @throws ProcessingGradeOffered if it prices Processing Grade where it is not sold
   * @throws DealWithoutPrice if the jars of a deal have no price singly
   */
  void check(EnterPriceList said) {
    PriceListForm.check(said, days);
    if (said.validTo() != null && said.validTo().isBefore(said.validFrom())) {
      throw new ValidityReversed(said.validFrom(), said.validTo());
    }
    String currency = said.lines().get(0).price().currency();
    Map<String, String> seen = new HashMap<>();
    for (int i = 0; i < said.lines().size(); i++) {
      EnterPriceList.Line line = said.lines().get(i);
      String field = "lines[" + i + "]";
      Container container = known(line.container(), line.price(), currency, field);
      requireOnce(seen, container.code(), line.grade(), field);
      if (line.grade() == ColorClass.PROCESSING
          && (said.audience().isRetail() || !container.takesProcessingGrade())) {
        throw new ProcessingGradeOffered(container, said.audience(), field + ".grade");
      }
    }
    List<EnterPriceList.SaidDeal> deals = deals(said);
    for (int i = 0; i < deals.size(); i++) {
      EnterPriceList.SaidDeal deal = deals.get(i);
      String field = "deals[" + i + "]";
      Container container = known(deal.container(), deal.price(), currency, field);
      requireOnce(seen, deal.count() + " × " + container.code(), deal.grade(), field);
      if (said.lines().stream().noneMatch(line -> prices(line, deal))) {
        throw new DealWithoutPrice(deal(deal), field);
      }
    }
  }

  /**
   * The list that a new version may replace.
   *
   * @throws AnotherAudience if it is for another audience
   * @throws BeforeReplaced if the new version begins earlier
   * @throws AlreadyReplaced if it has a newer version
   */
  PriceList replaceable(EnterPriceList said, PriceList replaced) {
    if (said.audience() != replaced.audience()) {
      throw new AnotherAudience(replaced, said.audience());
    }
    if (said.validFrom().isBefore(replaced.validFrom())) {
      throw new BeforeReplaced(replaced, said.validFrom());
    }
    UUID by = rows.standing(replaced.id()).replacedBy();
    if (by != null) {
      throw new AlreadyReplaced(replaced, by);
    }
    return replaced;
  }

  /** The list as it is kept, checked before. */
  static PriceList entered(UUID id, EnterPriceList said, PriceList replaced, Instant at) {
    return new PriceList(
        id,
        said.name().strip(),
        said.audience(),
        said.validFrom(),
        said.validTo(),
        said.lines().get(0).price().currency(),
        Boolean.TRUE.equals(said.taxIncluded()),
        replaced == null ? id : replaced.family(),
        replaced == null ? 1 : replaced.version() + 1,
        said.replaces(),
        said.lines().stream()
            .map(
                line ->
                    new PriceLine(
                        line.container(),
                        line.grade(),
                        line.price(),
                        Optional.ofNullable(line.productClass()).orElse(ProductClass.FOOD)))
            .toList(),
        deals(said).stream().map(PriceListRules::deal).toList(),
        at);
  }

  static void checkReason(String reason) {
    if (reason == null || reason.isBlank() || reason.length() > REASON_MAX) {
      throw new InvalidField("reason", "Say why, in 1 to " + REASON_MAX + " characters.");
    }
  }

  private static List<EnterPriceList.SaidDeal> deals(EnterPriceList said) {
    return said.deals() == null ? List.of() : said.deals();
  }

  private static Deal deal(EnterPriceList.SaidDeal said) {
    return new Deal(said.container(), said.grade(), said.count(), said.price());
  }

  private static boolean prices(EnterPriceList.Line line, EnterPriceList.SaidDeal deal) {
    return line.container().equals(deal.container())
        && (deal.grade() == null || line.grade() == null || line.grade() == deal.grade());
  }

  private Container known(String code, Money price, String currency, String field) {
    Container container = containers.named(code, field + ".container");
    if (!price.currency().equals(currency)) {
      throw new CurrencyMismatch(currency, price.currency(), field + ".price.currency");
    }
    return container;
  }

  private static void requireOnce(
      Map<String, String> seen, String jars, ColorClass grade, String field) {
    String first = seen.putIfAbsent(jars + " " + grade, field);
    if (first != null) {
      throw new PricedTwice(jars, grade, first, field);
    }
  }
}
