package org.barreltally.stock.pages;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.barreltally.barrels.Barrel;
import org.barreltally.barrels.Barrels;
import org.barreltally.measure.ColorClass;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;
import org.barreltally.stock.Stock;
import org.barreltally.stock.StockRow;
import org.barreltally.web.StartPageFigures;

/** The syrup and the jars of the page of today. */
@ApplicationScoped
class StartPageStock implements StartPageFigures {

  private static final int MOST_ROWS = 10_000;

  private final Barrels barrels;
  private final Stock stock;

  StartPageStock(Barrels barrels, Stock stock) {
    this.barrels = barrels;
    this.stock = stock;
  }

  @Override
  public Syrup syrup() {
    List<Barrel> filled = barrels.withSyrup();
    List<SyrupOfGrade> grades =
        Stream.concat(Arrays.stream(ColorClass.values()), Stream.of((ColorClass) null))
            .map(grade -> ofGrade(grade, filled))
            .filter(of -> of.vessels() > 0)
            .toList();
    double inAir = filled.stream().mapToDouble(b -> b.syrup().weightInAir(b.grams().value())).sum();
    return new Syrup(
        filled.size(), Quantity.rounded(inAir, Unit.G, 0).to(Unit.LB, 1), volume(filled), grades);
  }

  private static SyrupOfGrade ofGrade(ColorClass grade, List<Barrel> filled) {
    List<Barrel> those = filled.stream().filter(b -> b.lot().grade() == grade).toList();
    return new SyrupOfGrade(grade == null ? null : grade.code(), those.size(), volume(those));
  }

  private static Quantity volume(List<Barrel> barrels) {
    double mL = barrels.stream().mapToDouble(b -> b.syrup().mLAt20(b.grams().value())).sum();
    return Quantity.rounded(mL, Unit.ML, 0).to(Unit.GAL, 2);
  }

  @Override
  public Shelf shelf() {
    List<StockRow> jars =
        stock.list(new Stock.Filter(null, null, null, null), null, MOST_ROWS).stream()
            .filter(row -> row.container() != null)
            .toList();
    List<ColorClass> grades =
        jars.stream().map(StockRow::grade).filter(Objects::nonNull).distinct().sorted().toList();
    Map<String, List<StockRow>> bySize =
        jars.stream()
            .collect(Collectors.groupingBy(StockRow::container, TreeMap::new, Collectors.toList()));
    return new Shelf(
        grades.stream().map(ColorClass::code).toList(),
        bySize.entrySet().stream()
            .map(
                size ->
                    new SizeRow(
                        size.getKey(),
                        grades.stream().map(grade -> pieces(size.getValue(), grade)).toList(),
                        size.getValue().stream().mapToLong(StockRow::onHand).sum()))
            .toList());
  }

  private static Long pieces(List<StockRow> rows, ColorClass grade) {
    return rows.stream().filter(row -> row.grade() == grade).mapToLong(StockRow::onHand).sum();
  }
}
