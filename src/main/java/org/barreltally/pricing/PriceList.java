package org.barreltally.pricing;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.barreltally.measure.ColorClass;

/**
 * A price list, which never changes. A new version is a list of its own that names the one it
 * replaces; both belong to one family, and past sales keep the prices they were made at.
 *
 * @param validTo the last day; null while it is open
 * @param currency of every price in it, ISO 4217
 * @param taxIncluded whether the prices have the tax in them
 * @param family the id of its first version
 * @param version from 1
 * @param replaces the version before it; null for the first
 */
public record PriceList(
    UUID id,
    String name,
    Audience audience,
    LocalDate validFrom,
    LocalDate validTo,
    String currency,
    boolean taxIncluded,
    UUID family,
    int version,
    UUID replaces,
    List<PriceLine> lines,
    List<Deal> deals,
    Instant recordedAt) {

  public PriceList {
    lines = List.copyOf(lines);
    deals = List.copyOf(deals);
  }

  /**
   * What one jar costs. A line with the grade comes before one without. Where the grade is not
   * known (null), the line without a grade counts, else the lines of all grades if they agree.
   */
  public Optional<Money> price(String container, ColorClass grade) {
    return line(container, grade).map(PriceLine::price);
  }

  /** For tax; food where nothing else was said. */
  public ProductClass productClass(String container, ColorClass grade) {
    return line(container, grade).map(PriceLine::productClass).orElse(ProductClass.FOOD);
  }

  /** What the jars of a basket cost singly, line by line. */
  public Charged charge(List<BasketLine> lines) {
    return new Basket(this, lines).singly();
  }

  /** The lines that price a jar of a deal singly. */
  Stream<PriceLine> pricing(Deal deal) {
    return deal.grade() == null
        ? lines.stream().filter(line -> line.container().equals(deal.container()))
        : line(deal.container(), deal.grade()).stream();
  }

  private Optional<PriceLine> line(String container, ColorClass grade) {
    Optional<PriceLine> own = exactly(container, grade);
    if (own.isPresent()) {
      return own;
    }
    return grade == null ? agreed(container) : exactly(container, null);
  }

  private Optional<PriceLine> exactly(String container, ColorClass grade) {
    return lines.stream()
        .filter(line -> line.container().equals(container) && line.grade() == grade)
        .findFirst();
  }

  private Optional<PriceLine> agreed(String container) {
    List<PriceLine> graded =
        lines.stream().filter(line -> line.container().equals(container)).toList();
    boolean agree = graded.stream().map(PriceLine::price).distinct().count() == 1;
    return agree ? Optional.of(graded.get(0)) : Optional.empty();
  }
}
