package org.barreltally.documents;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Place;
import org.barreltally.ledger.Places;
import org.barreltally.measure.ColorClass;
import org.barreltally.refusal.InvalidField;
import org.barreltally.settings.FarmSettings;
import org.barreltally.stock.Stock;
import org.barreltally.stock.StockRow;

/** What stands on count sheets: the lots of a place by size and grade, and no figure. */
@ApplicationScoped
public class CountSheets {

  private static final int LINES_MAX = 2000;

  private final Stock stock;
  private final Places places;
  private final LabelSheets sheets;
  private final FarmSettings settings;
  private final Days days;

  CountSheets(Stock stock, Places places, LabelSheets sheets, FarmSettings settings, Days days) {
    this.stock = stock;
    this.places = places;
    this.sheets = sheets;
    this.settings = settings;
    this.days = days;
  }

  /**
   * The sheet of a place, for two counters.
   *
   * @throws org.barreltally.ledger.UnknownPlace if it is no own place
   */
  @Transactional
  public FormText of(String place) {
    Place counted = places.own(place, "place");
    List<StockRow> rows =
        stock.list(new Stock.Filter(counted.code(), null, null, null), null, LINES_MAX + 1);
    if (rows.size() > LINES_MAX) {
      throw new InvalidField("place", "More than 2,000 lots stand there; count part of it first.");
    }
    Maker maker = Maker.at(days.now(), settings);
    String sheet = maker.labelSheet() == null ? LabelSheet.USUAL : maker.labelSheet();
    LocalDate day = days.today();
    List<CountSheet.Line> lines =
        rows.stream()
            .filter(row -> row.kind() == StockRow.Kind.CONTAINER)
            .sorted(
                Comparator.comparing(StockRow::container)
                    .thenComparing(StockRow::grade, Comparator.nullsLast(Comparator.naturalOrder()))
                    .thenComparing(StockRow::lot, Comparator.nullsLast(Comparator.naturalOrder())))
            .map(row -> new CountSheet.Line(row.container(), words(row.grade()), lot(row)))
            .toList();
    return new CountSheet(counted.name(), maker, day, lines)
        .on(sheets.named(sheet, "sheet").paper());
  }

  private static String words(ColorClass grade) {
    return grade == null ? "" : grade.words();
  }

  private static String lot(StockRow row) {
    return row.lot() == null ? "(no lot)" : row.lot();
  }
}
