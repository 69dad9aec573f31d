package org.barreltally.documents;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.barreltally.containers.Container;
import org.barreltally.containers.Containers;
import org.barreltally.ledger.Days;
import org.barreltally.measure.ColorClass;
import org.barreltally.pricing.Deal;
import org.barreltally.pricing.NotOnPriceList;
import org.barreltally.pricing.PriceLine;
import org.barreltally.pricing.PriceList;
import org.barreltally.pricing.PriceLists;
import org.barreltally.refusal.InvalidField;
import org.barreltally.settings.FarmSettings;
import org.barreltally.settings.UnitHabit;

/** What stands on the price cards of a table, as they are printed now. */
@ApplicationScoped
public class PriceCards {

  private static final String US_SHEET = "letter-2x3";
  private static final String METRIC_SHEET = "a4-2x4";
  private static final int RIBBON_MAX = 60;

  private final PriceLists lists;
  private final PriceSheets priceSheets;
  private final Containers containers;
  private final LabelSheets sheets;
  private final RibbonLines ribbons;
  private final FarmSettings settings;
  private final Days days;

  PriceCards(
      PriceLists lists,
      PriceSheets priceSheets,
      Containers containers,
      LabelSheets sheets,
      RibbonLines ribbons,
      FarmSettings settings,
      Days days) {
    this.lists = lists;
    this.priceSheets = priceSheets;
    this.containers = containers;
    this.sheets = sheets;
    this.ribbons = ribbons;
    this.settings = settings;
    this.days = days;
  }

  /**
   * Which cards are wanted; null for all.
   *
   * @param container only of this size
   * @param grade all sizes as they are priced in this grade
   * @param ribbon a line for every card, at most 60 characters; null for what is known of awards
   */
  public record Wanted(String container, ColorClass grade, String ribbon) {}

  /**
   * The sheet a request names, or six large cards on letter, eight on A4.
   *
   * @throws UnknownLabelSheet naming sheet
   */
  public LabelSheet sheet(String code) {
    boolean us = Maker.at(days.now(), settings).habit() == UnitHabit.US;
    return sheets.named(code != null ? code : us ? US_SHEET : METRIC_SHEET, "sheet");
  }

  /**
   * The cards of a list, by grade and then by contents.
   *
   * @throws org.barreltally.pricing.UnknownPriceList as not found
   * @throws NotOnPriceList if nothing that is wanted has a price
   */
  @Transactional
  public List<PriceCardText> of(UUID id, Wanted wanted) {
    PriceList list = lists.at(id);
    if (wanted.container() != null) {
      containers.named(wanted.container(), "container");
    }
    if (wanted.ribbon() != null
        && (wanted.ribbon().isBlank() || wanted.ribbon().length() > RIBBON_MAX)) {
      throw new InvalidField("ribbon", "Give 1 to " + RIBBON_MAX + " characters, or leave it out.");
    }
    Maker maker = Maker.at(days.now(), settings);
    PriceWords words = priceSheets.words(list);
    List<PriceCardText> cards =
        lines(list, wanted.grade())
            .filter(
                line -> wanted.container() == null || line.container().equals(wanted.container()))
            .sorted(
                Comparator.comparing(
                        PriceLine::grade, Comparator.nullsLast(Comparator.naturalOrder()))
                    .thenComparing(line -> containers.at(line.container()).netML()))
            .map(line -> card(list, line, wanted, maker, words))
            .toList();
    if (cards.isEmpty()) {
      throw new NotOnPriceList(
          list,
          wanted.container() == null ? "any container" : wanted.container(),
          wanted.grade(),
          wanted.container() == null ? "grade" : "container");
    }
    return cards;
  }

  /** The lines of the list, or each size once as it is priced in a grade. */
  private static Stream<PriceLine> lines(PriceList list, ColorClass grade) {
    if (grade == null) {
      return list.lines().stream();
    }
    return list.lines().stream()
        .map(PriceLine::container)
        .distinct()
        .flatMap(
            container ->
                list
                    .price(container, grade)
                    .map(
                        price ->
                            new PriceLine(
                                container, grade, price, list.productClass(container, grade)))
                    .stream());
  }

  private PriceCardText card(
      PriceList list, PriceLine line, Wanted wanted, Maker maker, PriceWords words) {
    Container container = containers.at(line.container());
    return new PriceCardText(
        PriceSheets.parted(container.name()),
        PriceSheets.said(NetContents.ways(container.netContents(), maker.habit())),
        grade(list, line),
        words.of(line.price()),
        list.deals().stream()
            .filter(deal -> concerns(list, deal, line))
            .map(deal -> words(deal, line, words.of(deal.price())))
            .toList(),
        wanted.ribbon() != null
            ? wanted.ribbon()
            : ribbons.on(line.container(), line.grade()).orElse(null),
        maker.name()
            + " · "
            + PriceSheets.validity(list, maker.habit())
            + " · version "
            + list.version());
  }

  private static String grade(PriceList list, PriceLine line) {
    if (line.grade() != null) {
      return line.grade().words();
    }
    return PriceSheets.isForOthers(list, line) ? PriceSheets.OTHER_GRADES : "";
  }

  /** Whether a deal takes jars that the line prices: not those of a grade with its own line. */
  private static boolean concerns(PriceList list, Deal deal, PriceLine line) {
    return deal.takes(line.container(), line.grade())
        || line.grade() == null
            && deal.container().equals(line.container())
            && list.lines().stream().noneMatch(own -> deal.takes(own.container(), own.grade()));
  }

  private static String words(Deal deal, PriceLine line, String price) {
    String which = deal.grade() == null || deal.grade() == line.grade() ? "" : gradeName(deal);
    String mixed = deal.grade() == null && line.grade() != null ? ", any grades" : "";
    return deal.count() + which + " for " + price + mixed;
  }

  private static String gradeName(Deal deal) {
    String words = deal.grade().words();
    return " " + words.substring(0, words.indexOf(',') < 0 ? words.length() : words.indexOf(','));
  }
}
