package org.barreltally.stock.pages;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.util.List;
import org.barreltally.barrels.Barrel;
import org.barreltally.barrels.Barrels;
import org.barreltally.measure.ColorClass;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;
import org.barreltally.stock.Stock;
import org.barreltally.stock.StockRow;
import org.barreltally.web.StartPageFigures;

/** The barrels and jars of the start page. */
@ApplicationScoped
class StartPageStock implements StartPageFigures {

  private static final int MOST_ROWS = 1000;

  private final Barrels barrels;
  private final Stock stock;

  StartPageStock(Barrels barrels, Stock stock) {
    this.barrels = barrels;
    this.stock = stock;
  }

  @Override
  public List<BarrelRow> barrels() {
    return barrels.withSyrup().stream().map(StartPageStock::row).toList();
  }

  @Override
  public List<JarRow> jars() {
    return stock.list(new Stock.Filter(null, null, null, null), null, MOST_ROWS).stream()
        .filter(row -> row.container() != null)
        .map(StartPageStock::row)
        .toList();
  }

  private static BarrelRow row(Barrel barrel) {
    double grams = barrel.grams().value();
    return new BarrelRow(
        barrel.tag(),
        barrel.lot().code(),
        words(barrel.lot().grade()),
        barrel.heel() ? "heel" : barrel.state().code(),
        barrel.lot().held(),
        Quantity.rounded(barrel.syrup().weightInAir(grams), Unit.G, 3).to(Unit.LB, 2).value(),
        Quantity.rounded(barrel.syrup().mLAt20(grams), Unit.ML, 3).to(Unit.GAL, 3).value(),
        BigDecimal.valueOf(barrel.lot().brix().value()));
  }

  private static JarRow row(StockRow row) {
    return new JarRow(
        row.place(),
        row.container(),
        words(row.grade()),
        row.lot(),
        row.onHand(),
        row.held() ? row.onHand() : 0);
  }

  private static String words(ColorClass grade) {
    return grade == null ? null : grade.words();
  }
}
