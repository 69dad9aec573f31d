package org.barreltally.documents;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.barreltally.containers.Containers;
import org.barreltally.ledger.Days;
import org.barreltally.measure.ColorClass;
import org.barreltally.measure.Unit;
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
      addSection(list, grade, heading(list, grade), words, maker.habit(), sections);
    }
    addSection(list, null, heading(list, null), words, maker.habit(), sections);
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

  /** The words over the lines of a grade (null for those without one). */
  static String heading(PriceList list, ColorClass grade) {
    if (grade != null) {
      return grade.words();
    }
    boolean graded = list.lines().stream().anyMatch(line -> line.grade() != null);
    return graded ? "Every other grade" : "Every grade";
  }

  /** A name whose longest words are parted. */
  static String parted(String name) {
    return name.replaceAll("(\\S{" + WORD_MAX + "})(?=\\S)", "$1 ");
  }

  private void addSection(
      PriceList list,
      ColorClass grade,
      String heading,
      PriceWords words,
      UnitHabit habit,
      List<PriceSheetText.Section> sections) {
    List<PriceSheetText.Row> rows =
        list.lines().stream()
            .filter(line -> line.grade() == grade)
            .sorted(Comparator.comparing(line -> contents(line.container())))
            .map(line -> row(line, words, habit))
            .toList();
    if (!rows.isEmpty()) {
      sections.add(new PriceSheetText.Section(heading, rows));
    }
  }

  private Double contents(String container) {
    return containers.at(container).netContents().doubleIn(Unit.ML);
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
