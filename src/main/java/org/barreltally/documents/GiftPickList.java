package org.barreltally.documents;

import static org.barreltally.documents.Sheet.columns;
import static org.barreltally.documents.Sheet.entry;
import static org.barreltally.documents.Sheet.heads;
import static org.barreltally.documents.Sheet.plain;
import static org.barreltally.documents.Sheet.small;
import static org.barreltally.documents.Sheet.strong;
import static org.barreltally.documents.Sheet.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.UnaryOperator;
import org.barreltally.documents.FormText.Column;
import org.barreltally.documents.FormText.Row;
import org.barreltally.documents.PagesText.Block;
import org.barreltally.gifts.GiftJars;
import org.barreltally.gifts.GiftLine;
import org.barreltally.gifts.GiftOrder;
import org.barreltally.gifts.PickPlan.Take;
import org.barreltally.gifts.RecipientState;
import org.barreltally.gifts.Stage;
import org.barreltally.gifts.Wrapping;

/** The pick list of a gift order: what to fetch by place, then what goes into whose box. */
final class GiftPickList {

  private static final List<Column> BY_PLACE = columns(52, 30, -18);
  private static final List<Column> BY_RECIPIENT = columns(7, 25, 22, 46);

  private final GiftOrder order;
  private final List<GiftLine> lines;
  private final GiftWords words;
  private final UnaryOperator<String> placeName;

  /**
   * @param lines of those to be picked
   * @param placeName the name of a place by its code
   */
  GiftPickList(
      GiftOrder order, List<GiftLine> lines, GiftWords words, UnaryOperator<String> placeName) {
    this.order = order;
    this.lines = lines;
    this.words = words;
    this.placeName = placeName;
  }

  List<Block> blocks(List<Take> takes) {
    List<Block> blocks = new ArrayList<>();
    Map<String, List<Take>> byPlace = new LinkedHashMap<>();
    takes.forEach(
        take ->
            byPlace
                .computeIfAbsent(Objects.toString(take.place(), ""), p -> new ArrayList<>())
                .add(take));
    byPlace.forEach(
        (place, its) ->
            blocks.add(
                place(
                    place.isEmpty()
                        ? "Not to be found: count the shelves, or look at what is held"
                        : placeName.apply(place),
                    its)));
    List<Take> shelf = picked();
    if (!shelf.isEmpty()) {
      blocks.add(place("Picked already, on the gift shelf", shelf));
    }
    blocks.add(wrappings());
    blocks.add(recipients());
    return blocks;
  }

  private Block place(String name, List<Take> takes) {
    List<Row> rows = new ArrayList<>(List.of(heads("Size and grade", "Lot", "Jars")));
    for (Take take : takes) {
      rows.add(
          entry(
              words.of(take.jar()),
              take.lot() == null ? "—" : take.lot(),
              String.valueOf(take.pieces())));
    }
    return new Block(2, List.of(FormText.Part.of(strong(name)), table(BY_PLACE, rows)));
  }

  private List<Take> picked() {
    Map<Take, Long> counted = new LinkedHashMap<>();
    for (GiftLine line : lines) {
      for (GiftJars jars : order.jars(line.n(), Stage.SHELF)) {
        counted.merge(
            new Take(Stage.SHELF.place(), jars.jar(), jars.lot(), 0), jars.pieces(), Long::sum);
      }
    }
    List<Take> takes = new ArrayList<>();
    counted.forEach(
        (take, pieces) -> takes.add(new Take(take.place(), take.jar(), take.lot(), pieces)));
    return takes;
  }

  private Block wrappings() {
    Map<String, Long> counted = new LinkedHashMap<>();
    for (GiftLine line : lines) {
      for (Wrapping wrapping : order.box(line).wrappings()) {
        counted.merge(wrapping.name(), (long) line.count(), Long::sum);
      }
      if (order.person(line.n()).card() != null) {
        counted.merge("Greeting card", 1L, Long::sum);
      }
    }
    List<Row> rows = new ArrayList<>(List.of(heads("Cartons, ribbons, cards", "", "Pieces")));
    counted.forEach((name, pieces) -> rows.add(entry(name, "", String.valueOf(pieces))));
    return new Block(1, List.of(table(BY_PLACE, rows)));
  }

  private Block recipients() {
    List<Row> rows = new ArrayList<>(List.of(heads("No.", "Recipient", "Boxes", "Jars")));
    for (GiftLine line : lines) {
      List<GiftJars> jars = order.jars(line.n());
      rows.add(
          entry(
              String.valueOf(line.n()),
              GiftWords.name(order.person(line.n())),
              GiftWords.boxes(order, line)
                  + (line.state() == RecipientState.CONFIRMED ? "" : " · " + line.state().code()),
              jars.isEmpty()
                  ? String.join("; ", words.contents(order, line))
                  : GiftWords.lots(order, line)));
    }
    return new Block(
        2, List.of(FormText.Part.of(strong("By recipient")), table(BY_RECIPIENT, rows)));
  }

  /** The words over the list. */
  static FormText.Part head(String title, String... lines) {
    Row[] rows = new Row[lines.length + 1];
    rows[0] = Sheet.large(title);
    for (int i = 0; i < lines.length; i++) {
      rows[i + 1] = i == 0 ? plain(lines[i]) : small(lines[i]);
    }
    return FormText.Part.of(rows);
  }
}
