package org.barreltally.documents;

import java.util.ArrayList;
import java.util.List;
import org.barreltally.documents.FormText.Cell;
import org.barreltally.documents.FormText.Column;
import org.barreltally.documents.FormText.Part;
import org.barreltally.documents.FormText.Row;
import org.barreltally.documents.FormText.Type;
import org.barreltally.pricing.Money;
import org.barreltally.sales.SaidSale;
import org.barreltally.sales.Sale;
import org.barreltally.sales.away.SoldAway;

/** The invoice of a sale with something owing, or else its receipt; one page, for the buyer. */
final class Invoice {

  private final SoldAway sold;
  private final Sale sale;
  private final Maker seller;

  Invoice(SoldAway sold, Maker seller) {
    this.sold = sold;
    this.sale = sold.sale();
    this.seller = seller;
  }

  FormText on(Paper paper) {
    List<Part> parts = new ArrayList<>();
    parts.add(head());
    parts.add(sides());
    parts.add(lines());
    parts.add(sums());
    return new FormText(paper, title() + " " + sold.number().text(), parts);
  }

  /** An invoice while something is to be paid, a receipt once it is. */
  private String title() {
    boolean owing =
        sale.paid() == null || sale.paid().owing() != null && sale.paid().owing().signum() > 0;
    return owing ? "Invoice" : "Receipt";
  }

  private Part head() {
    List<Row> rows = new ArrayList<>();
    rows.add(row(Type.LARGE, false, cell("title", title() + " " + sold.number().text())));
    rows.add(row(Type.PLAIN, false, cell("issued", "Issued " + sold.number().issuedOn())));
    if (sale.undone()) {
      rows.add(
          row(
              Type.STRONG,
              false,
              cell("undone", "TAKEN BACK: this sale was reversed, and nothing is due on it.")));
    }
    return Part.of(rows.toArray(Row[]::new));
  }

  private Part sides() {
    List<Row> rows = new ArrayList<>();
    rows.add(row(Type.STRONG, true, cell("seller", "From"), cell("buyer", "To")));
    List<String> from = new ArrayList<>(List.of(seller.name()));
    from.addAll(seller.address());
    List<String> to = new ArrayList<>();
    if (sold.buyer() != null) {
      to.add(sold.buyer().name());
      to.addAll(sold.buyer().address());
    }
    for (int n = 0; n < Math.max(from.size(), to.size()); n++) {
      rows.add(
          row(
              Type.PLAIN,
              false,
              cell("maker", n < from.size() ? from.get(n) : ""),
              cell("buyer", n < to.size() ? to.get(n) : "")));
    }
    return new Part(List.of(new Column(0.5, false), new Column(0.5, false)), rows);
  }

  private Part lines() {
    List<Row> rows = new ArrayList<>();
    rows.add(
        row(
            Type.STRONG,
            true,
            cell("lines", "Jars"),
            cell("lines", "Size and grade"),
            cell("lines", "Lot"),
            cell("lines", "Each"),
            cell("lines", "Amount")));
    for (Sale.Line line : sale.lines()) {
      rows.add(
          row(
              Type.PLAIN,
              false,
              cell("lines", String.valueOf(line.count())),
              cell(
                  "lines",
                  line.container() + (line.grade() == null ? "" : ", " + line.grade().words())),
              cell("lines", line.lot() == null ? "" : line.lot()),
              cell("lines", words(line.price())),
              cell("lines", words(line.amount()))));
    }
    return new Part(
        List.of(
            new Column(0.08, true),
            new Column(0.4, false),
            new Column(0.2, false),
            new Column(0.16, true),
            new Column(0.16, true)),
        rows);
  }

  private Part sums() {
    List<Row> rows = new ArrayList<>();
    if (sale.dealSaving().signum() > 0) {
      rows.add(sum(Type.PLAIN, "Saved by deals, taken off above", sale.dealSaving()));
    }
    if (sale.tax().signum() > 0) {
      rows.add(sum(Type.PLAIN, "Tax in the total", sale.tax()));
    }
    rows.add(sum(Type.STRONG, "Total", sale.total()));
    SaidSale.Paid paid = sale.paid();
    if (paid != null) {
      paid(rows, "Paid in cash", paid.cash());
      paid(rows, "Change given", sale.changeDue());
      paid(rows, "Paid by card", paid.card());
      paid(rows, "To be paid", paid.owing());
    }
    rows.add(
        row(
            Type.SMALL,
            false,
            cell(
                "decide",
                "This sheet helps your records. Your state agency and tax preparer decide what an invoice must say."),
            cell("decide", "")));
    return new Part(List.of(new Column(0.84, false), new Column(0.16, true)), rows);
  }

  private static void paid(List<Row> rows, String name, Money amount) {
    if (amount != null && amount.signum() > 0) {
      rows.add(sum(Type.PLAIN, name, amount));
    }
  }

  private static Row sum(Type type, String name, Money amount) {
    return row(type, type == Type.STRONG, cell("sums", name), cell("sums", words(amount)));
  }

  private static String words(Money amount) {
    return amount == null ? "not known" : amount.toString();
  }

  private static Row row(Type type, boolean ruled, Cell... cells) {
    return new Row(type, ruled, List.of(cells));
  }

  private static Cell cell(String field, String text) {
    return new Cell(field, text);
  }
}
