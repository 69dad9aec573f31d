package org.barreltally.documents;

import java.util.ArrayList;
import java.util.List;
import org.barreltally.documents.FormText.Column;
import org.barreltally.documents.FormText.Part;
import org.barreltally.documents.FormText.Row;
import org.barreltally.documents.FormText.Type;
import org.barreltally.measure.ColorClass;
import org.barreltally.pricing.Money;
import org.barreltally.shops.Paid;
import org.barreltally.shops.ShelfCount;
import org.barreltally.shops.Statement;

/** The statement of a shop on consignment: its shelf, its counts, what is due and was paid. */
final class ShopStatement {

  private final Statement said;
  private final Maker maker;

  ShopStatement(Statement said, Maker maker) {
    this.said = said;
    this.maker = maker;
  }

  FormText on(Paper paper) {
    List<Part> parts = new ArrayList<>();
    parts.add(
        Part.of(
            Row.of(Type.LARGE, false, "title", "Consignment statement"),
            Row.of(
                Type.PLAIN,
                false,
                "shop",
                "%s · %s to %s · %s".formatted(said.name(), said.from(), said.to(), maker.name())),
            Row.of(Type.PLAIN, false, "terms", ShopWords.terms(said.terms()))));
    parts.add(shelf());
    said.items().stream()
        .filter(item -> item.otherwise() != 0)
        .map(this::otherwise)
        .forEach(parts::add);
    for (ShelfCount count : said.counts()) {
      parts.add(count(count));
      if (!count.terms().equals(said.terms())) {
        parts.add(
            Part.of(
                Row.of(
                    Type.SMALL,
                    false,
                    "terms",
                    "By the terms of that day: " + ShopWords.terms(count.terms()))));
      }
    }
    parts.add(account());
    parts.add(
        Part.of(
            Row.of(
                Type.SMALL,
                true,
                "decide",
                "What stands on the shelf is still the maker's. Due for a line: price × (sold + what the shop bears) × (1 − its part), rounded once, half up. This sheet helps your records; your tax preparer decides.")));
    return new FormText(
        paper, "Consignment statement %s %s".formatted(said.name(), said.to()), parts);
  }

  private Part shelf() {
    List<Row> rows = new ArrayList<>();
    rows.add(
        Row.of(
            Type.STRONG,
            true,
            "items",
            "The shelf",
            "Lot",
            "Stood",
            "Came",
            "Home",
            "Sold",
            "Broken",
            "Missing",
            "Stands"));
    for (Statement.Item item : said.items()) {
      rows.add(
          Row.of(
              Type.PLAIN,
              false,
              "items",
              item.container() + ", " + ColorClass.of(item.grade()).words(),
              item.lot(),
              String.valueOf(item.opening()),
              String.valueOf(item.delivered()),
              String.valueOf(item.fetched()),
              String.valueOf(item.sold()),
              String.valueOf(item.broken()),
              String.valueOf(item.missing()),
              String.valueOf(item.closing())));
    }
    List<Column> columns =
        new ArrayList<>(List.of(new Column(0.25, false), new Column(0.15, false)));
    for (int n = 0; n < 7; n++) {
      columns.add(new Column(n == 4 || n == 5 ? 0.1 : 0.08, true));
    }
    return new Part(columns, rows);
  }

  private Part otherwise(Statement.Item item) {
    return Part.of(
        Row.of(
            Type.SMALL,
            false,
            "otherwise",
            "%d × %s of lot %s %s by other entries of the maker's book; nothing is due for that."
                .formatted(
                    Math.abs(item.otherwise()),
                    item.container(),
                    item.lot(),
                    item.otherwise() < 0 ? "fewer" : "more")));
  }

  private Part count(ShelfCount count) {
    List<Row> rows = new ArrayList<>();
    rows.add(
        Row.of(
            Type.STRONG,
            true,
            "counts",
            "Counted " + count.on(),
            "Lot",
            "Sold",
            "Broken",
            "Missing",
            "Price",
            "Due"));
    for (ShelfCount.Line line : count.lines()) {
      if (line.price() != null) {
        rows.add(
            Row.of(
                Type.PLAIN,
                false,
                "counts",
                line.container() + ", " + ColorClass.of(line.grade()).words(),
                line.lot(),
                String.valueOf(line.sold()),
                String.valueOf(line.broken()),
                String.valueOf(line.missing()),
                line.price().toString(),
                line.due().toString()));
      }
    }
    rows.add(
        Row.of(
            Type.PLAIN,
            true,
            "counts",
            "Due by this count",
            "",
            "",
            "",
            "",
            "",
            count.due().toString()));
    return new Part(
        List.of(
            new Column(0.26, false),
            new Column(0.16, false),
            new Column(0.08, true),
            new Column(0.1, true),
            new Column(0.1, true),
            new Column(0.14, true),
            new Column(0.16, true)),
        rows);
  }

  private Part account() {
    List<Row> rows = new ArrayList<>();
    rows.add(Row.of(Type.STRONG, true, "account", "The account", ""));
    rows.add(line(Type.PLAIN, "Owed before " + said.from(), said.dueBefore()));
    rows.add(line(Type.PLAIN, "Due by the counts above", said.due()));
    for (Paid paid : said.payments()) {
      rows.add(
          line(
              Type.PLAIN,
              "Paid on " + paid.on() + (paid.note() == null ? "" : " · " + paid.note()),
              Money.none(paid.amount().currency()).minus(paid.amount())));
    }
    rows.add(line(Type.STRONG, "To be paid on " + said.to(), said.balance()));
    return new Part(List.of(new Column(0.8, false), new Column(0.2, true)), rows);
  }

  private static Row line(Type type, String what, Money money) {
    return Row.of(type, type == Type.STRONG, "account", what, money.toString());
  }
}
