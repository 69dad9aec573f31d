package org.barreltally.documents;

import java.util.ArrayList;
import java.util.List;
import org.barreltally.documents.FormText.Column;
import org.barreltally.documents.FormText.Part;
import org.barreltally.documents.FormText.Row;
import org.barreltally.documents.FormText.Type;
import org.barreltally.measure.ColorClass;
import org.barreltally.shops.Delivery;
import org.barreltally.shops.Shop;

/** What goes along with jars to a shop, or home from it, for both to sign. */
final class ConsignmentNote {

  private final Shop shop;
  private final Delivery delivery;
  private final Maker maker;

  ConsignmentNote(Shop shop, Delivery delivery, Maker maker) {
    this.shop = shop;
    this.delivery = delivery;
    this.maker = maker;
  }

  FormText on(Paper paper) {
    boolean out = delivery.direction() == Delivery.Direction.DELIVERED;
    List<Row> rows = new ArrayList<>();
    rows.add(Row.of(Type.STRONG, true, "lines", "", "Jars", "Size, grade", "Lot"));
    long jars = 0;
    for (Delivery.Line line : delivery.lines()) {
      rows.add(
          Row.of(
              Type.PLAIN,
              false,
              "lines",
              FormText.TICK_BOX,
              String.valueOf(line.count()),
              line.container() + ", " + ColorClass.of(line.grade()).words(),
              line.lot()));
      jars += line.count();
    }
    rows.add(Row.of(Type.STRONG, true, "lines", "", String.valueOf(jars), "jars in all", ""));
    List<Part> parts = new ArrayList<>();
    parts.add(
        Part.of(
            Row.of(Type.LARGE, false, "title", out ? "Consignment note" : "Fetched home"),
            Row.of(
                Type.PLAIN,
                false,
                "shop",
                "%s · %s · %s".formatted(shop.name(), delivery.on(), maker.name()))));
    if (shop.details() != null) {
      parts.add(Part.of(Row.of(Type.PLAIN, false, "details", shop.details())));
    }
    parts.add(
        new Part(
            List.of(
                new Column(0.06, false),
                new Column(0.1, true),
                new Column(0.5, false),
                new Column(0.34, false)),
            rows));
    if (delivery.note() != null) {
      parts.add(Part.of(Row.of(Type.PLAIN, false, "note", delivery.note())));
    }
    parts.add(
        Part.of(
            Row.of(
                Type.SMALL,
                true,
                "terms",
                "Jars on consignment stay the maker's until they are sold. " + terms()),
            Row.of(
                Type.SMALL,
                false,
                "care",
                "Glass: keep it upright, out of sun and heat. Take a jar with a loose cap, mould or ferment off the shelf and tell the maker."),
            Row.of(Type.PLAIN, false, "sign", " "),
            Row.of(
                Type.PLAIN,
                false,
                "sign",
                "Brought by ______________________     Taken by ______________________")));
    return new FormText(
        paper, "Consignment note %s %s".formatted(shop.name(), delivery.on()), parts);
  }

  private String terms() {
    return ShopWords.terms(shop.terms());
  }
}
