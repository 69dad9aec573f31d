package org.barreltally.documents;

import static org.barreltally.documents.Sheet.columns;
import static org.barreltally.documents.Sheet.entry;
import static org.barreltally.documents.Sheet.heads;
import static org.barreltally.documents.Sheet.large;
import static org.barreltally.documents.Sheet.plain;
import static org.barreltally.documents.Sheet.small;
import static org.barreltally.documents.Sheet.strong;
import static org.barreltally.documents.Sheet.table;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.barreltally.documents.FormText.Column;
import org.barreltally.documents.FormText.Part;
import org.barreltally.documents.FormText.Row;
import org.barreltally.documents.PagesText.Block;
import org.barreltally.gifts.Allotted;
import org.barreltally.gifts.Delivery;
import org.barreltally.gifts.GiftJars;
import org.barreltally.gifts.GiftLine;
import org.barreltally.gifts.GiftOrder;
import org.barreltally.gifts.GiftOutcome;
import org.barreltally.gifts.Person;

/** The slips that go into the boxes: what is inside, from whom, and no prices. */
final class GiftSlips {

  private static final List<Column> JARS = columns(10, 56, 34);

  private final GiftOrder order;
  private final Maker maker;
  private final GiftWords words;
  private final String home;

  /**
   * @param home the sender's country
   */
  GiftSlips(GiftOrder order, Maker maker, GiftWords words, String home) {
    this.order = order;
    this.maker = maker;
    this.words = words;
    this.home = home;
  }

  Block of(GiftLine line) {
    Person person = order.person(line.n());
    List<Part> parts = new ArrayList<>();
    parts.add(Part.of(large(maker.name()), small(String.join(" · ", maker.address()))));
    List<Row> to = new ArrayList<>();
    to.add(strong("For " + GiftWords.name(person)));
    GiftWords.address(person, home).forEach(text -> to.add(plain(text)));
    if (order.buyer().name() != null) {
      to.add(plain("A gift from " + order.buyer().name()));
    }
    to.add(small(way(line)));
    parts.add(new Part(columns(100), to));
    parts.add(table(JARS, jars(line)));
    parts.add(
        Part.of(
            small(
                "Glass can break on its way: open with care over a table, and keep what leaks or is"
                    + " cracked from being eaten. Keep it cold once it is opened.")));
    return new Block(0, parts);
  }

  private String way(GiftLine line) {
    String boxes = "No. " + line.n() + " · " + GiftWords.boxes(order, line);
    return switch (line.delivery()) {
      case POST -> boxes + (line.carrier() == null ? "" : " · " + line.carrier());
      case COLLECT -> boxes + " · to be collected";
      case BY_HAND -> boxes + " · carried by hand";
    };
  }

  private List<Row> jars(GiftLine line) {
    List<Row> rows = new ArrayList<>(List.of(heads("Jars", "In the box", "Lot")));
    for (Allotted jars : GiftOutcome.contents(order, line)) {
      String what = words.of(jars.jar());
      rows.add(
          entry(
              String.valueOf(jars.pieces()),
              jars.substitute()
                  ? what + ", in place of " + words.of(jars.wanted()) + ", which ran out"
                  : what,
              lots(line, jars)));
    }
    return rows;
  }

  private String lots(GiftLine line, Allotted jars) {
    return order.jars(line.n()).stream()
        .filter(j -> j.jar().equals(jars.jar()) && j.wanted().equals(jars.wanted()))
        .map(GiftJars::lot)
        .distinct()
        .collect(Collectors.joining(", "));
  }

  /** Whether a recipient gets an address label. */
  static boolean posted(GiftOrder order, GiftLine line) {
    return line.delivery() == Delivery.POST && order.person(line.n()).address() != null;
  }
}
