package org.barreltally.documents;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.barreltally.containers.Containers;
import org.barreltally.ledger.Days;
import org.barreltally.measure.ColorClass;
import org.barreltally.pricing.Audience;
import org.barreltally.pricing.Deal;
import org.barreltally.pricing.Money;
import org.barreltally.pricing.PriceLine;
import org.barreltally.pricing.PriceList;
import org.barreltally.pricing.PriceLists;
import org.barreltally.pricing.Standing;
import org.barreltally.settings.FarmSettings;
import org.barreltally.settings.UnitHabit;

/** What stands on a price list that is handed out, as it is printed now. */
@ApplicationScoped
public class PriceSheets {

  /** A longer word is parted, so that no name is wider than its column. */
  private static final int WORD_MAX = 30;

  static final String OTHER_GRADES = "Every other grade";

  private final PriceLists lists;
  private final Containers containers;
  private final FarmSettings settings;
  private final Days days;

  PriceSheets(PriceLists lists, Containers containers, FarmSettings settings, Days days) {
    this.lists = lists;
    this.containers = containers;
    this.settings = settings;
    this.days = days;
  }

  /** The paper a request names, or that of the owner's habit: letter or A4. */
  public Paper paper(Paper asked) {
    boolean us = Maker.at(days.now(), settings).habit() == UnitHabit.US;
    return asked != null ? asked : us ? Paper.LETTER : Paper.A4;
  }

  /**
   * @throws org.barreltally.pricing.UnknownPriceList as not found
   */
  @Transactional
  public PriceSheetText of(UUID id) {
    PriceList list = lists.at(id);
    Maker maker = Maker.at(days.now(), settings);
    PriceWords words = words(list);
    List<PriceSheetText.Section> sections = new ArrayList<>();
    for (ColorClass grade : ColorClass.values()) {
      addSection(grade.words(), list, line -> line.grade() == grade, words, maker, sections);
    }
    addSection(OTHER_GRADES, list, line -> isForOthers(list, line), words, maker, sections);
    addSection(
        "Every grade",
        list,
        line -> line.grade() == null && !isForOthers(list, line),
        words,
        maker,
        sections);
    if (!list.deals().isEmpty()) {
      sections.add(new PriceSheetText.Section("Together for less", deals(list, words)));
    }
    return new PriceSheetText(
        maker.name(),
        maker.address(),
        title(list.audience()),
        list.name(),
        validity(list, maker.habit()),
        notices(list, maker.habit()),
        sections,
        footnotes(list),
        "Version " + list.version());
  }

  PriceWords words(PriceList list) {
    List<Money> prices =
        Stream.concat(
                list.lines().stream().map(PriceLine::price), list.deals().stream().map(Deal::price))
            .toList();
    return new PriceWords(prices, list.currency(), settings.now().said().currency());
  }

  /**
   * Whether a line without a grade prices those grades of a size that have no line of their own.
   */
  static boolean isForOthers(PriceList list, PriceLine line) {
    return line.grade() == null
        && list.lines().stream()
            .anyMatch(own -> own.container().equals(line.container()) && own.grade() != null);
  }

  /** A name whose longest words are parted. */
  static String parted(String name) {
    return name.replaceAll("(\\S{" + WORD_MAX + "})(?=\\S)", "$1 ");
  }

  private void addSection(
      String heading,
      PriceList list,
      Predicate<PriceLine> wanted,
      PriceWords words,
      Maker maker,
      List<PriceSheetText.Section> sections) {
    List<PriceSheetText.Row> rows =
        list.lines().stream()
            .filter(wanted)
            .sorted(Comparator.comparing(line -> containers.at(line.container()).netML()))
            .map(line -> row(line, words, maker.habit()))
            .toList();
    if (!rows.isEmpty()) {
      sections.add(new PriceSheetText.Section(heading, rows));
    }
  }

  private PriceSheetText.Row row(PriceLine line, PriceWords words, UnitHabit habit) {
    var container = containers.at(line.container());
    return new PriceSheetText.Row(
        parted(container.name()),
        said(NetContents.ways(container.netContents(), habit)),
        words.of(line.price()));
  }

  private List<PriceSheetText.Row> deals(PriceList list, PriceWords words) {
    return list.deals().stream()
        .map(
            deal ->
                new PriceSheetText.Row(
                    deal.count() + " × " + parted(containers.at(deal.container()).name()),
                    deal.grade() == null ? "any grades, mixed as you like" : deal.grade().words(),
                    words.of(deal.price())))
        .toList();
  }

  /** The shorter way; what people call the size stands in the name. */
  static String said(List<String> ways) {
    return ways.get(ways.size() - 1);
  }

  private static String title(Audience audience) {
    return switch (audience) {
      case WHOLESALE -> "Wholesale price list";
      case BULK -> "Bulk price list";
      default -> "Price list";
    };
  }

  static String validity(PriceList list, UnitHabit habit) {
    String from = "Valid from " + DayWords.of(list.validFrom(), habit);
    return list.validTo() == null ? from : from + " to " + DayWords.of(list.validTo(), habit);
  }

  private List<String> notices(PriceList list, UnitHabit habit) {
    Standing standing = lists.standing(list.id());
    List<String> notices = new ArrayList<>();
    if (standing.withdrawn() != null) {
      notices.add("Withdrawn on " + DayWords.of(standing.withdrawn().from(), habit));
    }
    if (standing.replacedBy() != null) {
      notices.add(
          "Replaced from " + DayWords.of(standing.replacedFrom(), habit) + " by a newer list");
    }
    return notices;
  }

  private static List<String> footnotes(PriceList list) {
    String tax = list.taxIncluded() ? "tax included" : "tax, where it is due, is added";
    return List.of(
        "Prices in %s for one container, %s.".formatted(list.currency(), tax),
        "Contents are nominal, at 68 °F (20 °C).");
  }
}
