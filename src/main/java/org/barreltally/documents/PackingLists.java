package org.barreltally.documents;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.stream.Stream;
import org.barreltally.containers.Containers;
import org.barreltally.ledger.Days;
import org.barreltally.pricing.Money;
import org.barreltally.settings.FarmSettings;
import org.barreltally.shows.DayOrTime;
import org.barreltally.shows.Promises;
import org.barreltally.shows.Show;
import org.barreltally.shows.ShowRecords;
import org.barreltally.shows.Shows;
import org.barreltally.shows.TableBook;
import org.barreltally.shows.TableLine;

/** What stands on the packing lists of shows. */
@ApplicationScoped
public class PackingLists {

  private static final DateTimeFormatter HOUR =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

  private final Shows shows;
  private final ShowRecords records;
  private final TableBook tables;
  private final Promises promises;
  private final Containers containers;
  private final PackingWeights weights;
  private final LabelSheets sheets;
  private final FarmSettings settings;
  private final Days days;

  PackingLists(
      Shows shows,
      ShowRecords records,
      TableBook tables,
      Promises promises,
      Containers containers,
      PackingWeights weights,
      LabelSheets sheets,
      FarmSettings settings,
      Days days) {
    this.shows = shows;
    this.records = records;
    this.tables = tables;
    this.promises = promises;
    this.containers = containers;
    this.weights = weights;
    this.sheets = sheets;
    this.settings = settings;
    this.days = days;
  }

  /**
   * The list as the book stands now: what was packed out by lot, and what is reserved and still to
   * be packed, with the lot left open.
   *
   * @throws org.barreltally.shows.UnknownShow if there is no such show
   */
  @Transactional
  public FormText of(UUID id) {
    Show show = shows.at(id);
    Maker maker = Maker.at(days.now(), settings);
    String sheet = maker.labelSheet() == null ? LabelSheet.USUAL : maker.labelSheet();
    List<PackingList.Line> lines =
        Stream.concat(
                tables.of(show).stream().filter(line -> line.packedOut() > 0).map(this::packed),
                promises.of(id).stream()
                    .flatMap(promise -> promise.open().stream())
                    .map(this::promised))
            .toList();
    Money cash = records.cashFloat(id).orElse(show.booking().cashFloat());
    List<String> unknown =
        weights.withoutEmptyWeight(lines.stream().map(PackingList.Line::container).toList());
    return new PackingList(show, maker, setUp(show.booking().setUp()), lines, cash, unknown)
        .on(sheets.named(sheet, "sheet").paper());
  }

  private String setUp(DayOrTime when) {
    if (when == null || when.day() != null) {
      return when == null ? null : when.day().toString();
    }
    ZoneId zone = settings.now().zone();
    return HOUR.format(when.at().atZone(zone)) + " (" + zone.getId() + ")";
  }

  private PackingList.Line packed(TableLine line) {
    return new PackingList.Line(
        line.container(),
        containers.at(line.container()).name(),
        line.grade(),
        line.lot(),
        line.packedOut(),
        line.packedOut() * weights.full(line.container(), line.lot()));
  }

  private PackingList.Line promised(Promises.Line line) {
    return new PackingList.Line(
        line.container(),
        containers.at(line.container()).name(),
        line.grade(),
        null,
        line.count(),
        line.count() * weights.full(line.container(), null));
  }
}
