package org.barreltally.table;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.containers.Containers;
import org.barreltally.gifts.GiftBoxes;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.PlaceCode;
import org.barreltally.measure.ColorClass;
import org.barreltally.pricing.Money;
import org.barreltally.pricing.PriceLine;
import org.barreltally.pricing.PriceList;
import org.barreltally.pricing.ProductClass;
import org.barreltally.pricing.TaxRate;
import org.barreltally.pricing.Taxes;
import org.barreltally.sales.Channel;
import org.barreltally.sales.SalePrices;
import org.barreltally.sales.Stall;
import org.barreltally.settings.FarmSettings;
import org.barreltally.shows.Show;
import org.barreltally.shows.ShowRecords;
import org.barreltally.shows.ShowState;
import org.barreltally.shows.Shows;
import org.barreltally.shows.TableBook;
import org.barreltally.shows.TableLine;
import org.barreltally.stock.Stock;
import org.barreltally.stock.StockRow;

/** Puts together what a table needs to know. */
@ApplicationScoped
public class TableSheets {

  /** How long after its end a show is still offered, for what was not sent or counted. */
  private static final int DAYS_AFTER = 7;

  private static final int SHOWS_MOST = 200;
  private static final int SHELF_MOST = 5_000;
  private static final int BOXES_MOST = 50;

  private static final Comparator<ColorClass> BY_GRADE =
      Comparator.nullsLast(Comparator.naturalOrder());

  private final Shows shows;
  private final ShowRecords records;
  private final TableBook tables;
  private final SalePrices prices;
  private final Taxes taxes;
  private final Containers containers;
  private final Stock stock;
  private final GiftBoxes boxes;
  private final FarmSettings settings;
  private final Days days;

  TableSheets(
      Shows shows,
      ShowRecords records,
      TableBook tables,
      SalePrices prices,
      Taxes taxes,
      Containers containers,
      Stock stock,
      GiftBoxes boxes,
      FarmSettings settings,
      Days days) {
    this.shows = shows;
    this.records = records;
    this.tables = tables;
    this.prices = prices;
    this.taxes = taxes;
    this.containers = containers;
    this.stock = stock;
    this.boxes = boxes;
    this.settings = settings;
    this.days = days;
  }

  /** Shows that have, had lately or will have a table, by their first day. */
  @Transactional
  public List<Show> offered() {
    return shows.endingFrom(days.today().minusDays(DAYS_AFTER), SHOWS_MOST).stream()
        .filter(show -> show.state().mayHaveStood() && show.state() != ShowState.CALLED_OFF)
        .toList();
  }

  /**
   * What the table of a show needs to know now.
   *
   * @throws org.barreltally.shows.UnknownShow if there is no such show
   */
  @Transactional
  public TableSheet of(UUID id) {
    Show show = shows.at(id);
    String currency = settings.now().said().currency();
    LocalDate day = sellingDay(show);
    Stall stall = new Stall(show.place(), Channel.TABLE, show.booking().priceList(), show.town());
    PriceList list = prices.list(stall, day, currency).orElse(null);
    Money cash = records.cashFloat(id).orElse(show.booking().cashFloat());
    return new TableSheet(
        id,
        show.name(),
        show.town(),
        show.starts(),
        show.ends(),
        show.state(),
        days.now(),
        day,
        currency,
        Money.none(currency).amount().scale(),
        list == null
            ? null
            : new TableSheet.Prices(list.id(), list.name(), list.version(), list.taxIncluded()),
        rows(show, list, day),
        list == null ? List.of() : list.deals(),
        cash,
        others(show),
        room(),
        boxes());
  }

  private LocalDate sellingDay(Show show) {
    LocalDate today = days.today();
    return today.isBefore(show.starts())
        ? show.starts()
        : today.isAfter(show.ends()) ? show.ends() : today;
  }

  private record Kind(String container, ColorClass grade) {}

  /** What came to the table, and sizes of the price list of which nothing came. */
  private List<TableSheet.Row> rows(Show show, PriceList list, LocalDate day) {
    Map<Kind, List<TableSheet.LotThere>> there = new LinkedHashMap<>();
    for (TableLine line : tables.of(show)) {
      if (line.cameThere() && line.lot() != null) {
        there
            .computeIfAbsent(new Kind(line.container(), line.grade()), kind -> new ArrayList<>())
            .add(new TableSheet.LotThere(line.lot(), line.onTable()));
      }
    }
    if (list != null) {
      List<String> came = there.keySet().stream().map(Kind::container).toList();
      for (PriceLine line : list.lines()) {
        if (!came.contains(line.container())) {
          there.putIfAbsent(new Kind(line.container(), line.grade()), List.of());
        }
      }
    }
    return there.entrySet().stream()
        .map(entry -> row(entry.getKey(), entry.getValue(), show, list, day))
        .sorted(
            Comparator.comparing((TableSheet.Row row) -> containers.at(row.container()).netML())
                .thenComparing(TableSheet.Row::container)
                .thenComparing(TableSheet.Row::grade, BY_GRADE))
        .toList();
  }

  private TableSheet.Row row(
      Kind kind, List<TableSheet.LotThere> lots, Show show, PriceList list, LocalDate day) {
    ProductClass product =
        list == null ? ProductClass.FOOD : list.productClass(kind.container(), kind.grade());
    BigDecimal percent = taxes.rate(product, show.town(), day).map(TaxRate::percent).orElse(null);
    Optional<Money> price =
        list == null ? Optional.empty() : list.price(kind.container(), kind.grade());
    return new TableSheet.Row(
        kind.container(),
        containers.at(kind.container()).name(),
        kind.grade(),
        price.orElse(null),
        percent,
        lots);
  }

  private List<TableSheet.Other> others(Show show) {
    return offered().stream()
        .filter(other -> !other.id().equals(show.id()) && other.overlaps(show))
        .map(other -> new TableSheet.Other(other.id(), other.name()))
        .toList();
  }

  private List<TableSheet.Shelf> room() {
    return stock
        .list(new Stock.Filter(PlaceCode.COOL_ROOM, null, null, null), null, SHELF_MOST)
        .stream()
        .filter(row -> row.kind() == StockRow.Kind.CONTAINER)
        .filter(row -> row.lot() != null && row.onHand() > 0 && !row.held())
        .map(
            row ->
                new TableSheet.Shelf(
                    row.container(),
                    containers.at(row.container()).name(),
                    row.grade(),
                    row.lot(),
                    row.onHand()))
        .toList();
  }

  private List<TableSheet.Box> boxes() {
    return boxes.list(null, BOXES_MOST).stream()
        .map(box -> new TableSheet.Box(box.name(), box.price()))
        .distinct()
        .toList();
  }
}
