package org.barreltally.documents;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Comparator;
import java.util.Optional;
import org.barreltally.lots.AwardsOfLots;
import org.barreltally.lots.LotAward;
import org.barreltally.measure.ColorClass;
import org.barreltally.stock.Stock;
import org.barreltally.stock.StockRow;

/** Shows the newest ribbon of the lots that stand ready in a size and grade. */
@ApplicationScoped
class AwardedRibbons implements RibbonLines {

  /** More lots of one size and grade than this do not stand on a small maker's shelves. */
  private static final int LOTS_MAX = 500;

  private final Stock stock;
  private final AwardsOfLots awards;

  AwardedRibbons(Stock stock, AwardsOfLots awards) {
    this.stock = stock;
    this.awards = awards;
  }

  /** A card for every grade shows none: a ribbon is won by one lot of one grade. */
  @Override
  public Optional<String> on(String container, ColorClass grade) {
    if (grade == null) {
      return Optional.empty();
    }
    return stock.list(new Stock.Filter(null, container, grade, null), null, LOTS_MAX).stream()
        .filter(row -> !row.held())
        .map(StockRow::lot)
        .distinct()
        .flatMap(lot -> awards.of(lot).stream())
        .filter(award -> award.words() != null)
        .filter(award -> award.container() == null || award.container().equals(container))
        .max(Comparator.comparing(LotAward::on))
        .map(LotAward::words);
  }
}
