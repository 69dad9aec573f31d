package org.barreltally.documents;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.barreltally.barrels.Material;
import org.barreltally.bulk.BulkSale;
import org.barreltally.bulk.Figures;
import org.barreltally.bulk.SoldBulk;
import org.barreltally.documents.FormText.Cell;
import org.barreltally.documents.FormText.Column;
import org.barreltally.documents.FormText.Part;
import org.barreltally.documents.FormText.Row;
import org.barreltally.documents.FormText.Type;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;

/**
 * The ticket of one barrel sold whole, for both sides to keep. What only the seller's book is
 * cautioned of stays with the record of the sale; a caution about the vessel goes with the syrup.
 */
final class BulkTicket {

  private static final String DECIDE =
      "This sheet helps your records. Your state agency, weights-and-measures office, inspector and"
          + " tax preparer decide.";

  /** Enough that pounds times price comes to the cent again. */
  private static final int DECIMALS_OF_POUNDS = 4;

  private final SoldBulk sold;
  private final BulkSale sale;
  private final Maker seller;
  private final LocalDate recordedOn;

  BulkTicket(SoldBulk sold, Maker seller, LocalDate recordedOn) {
    this.sold = sold;
    this.sale = sold.sale();
    this.seller = seller;
    this.recordedOn = recordedOn;
  }

  FormText on(Paper paper) {
    List<Part> parts = new ArrayList<>();
    parts.add(head());
    parts.add(sides());
    parts.add(syrup());
    parts.add(figures());
    parts.add(variance());
    parts.add(cautions());
    parts.add(signatures());
    return new FormText(paper, "Bulk ticket " + sale.tag() + " " + sale.on(), parts);
  }

  private Part head() {
    List<Row> rows = new ArrayList<>();
    rows.add(row(Type.LARGE, false, cell("title", "Bulk ticket")));
    rows.add(row(Type.SMALL, false, cell("id", "Sale " + sale.id())));
    if (sold.takenBack()) {
      rows.add(
          row(
              Type.STRONG,
              false,
              cell("takenBack", "TAKEN BACK: this sale was reversed, and nothing is due on it.")));
    }
    return Part.of(rows.toArray(Row[]::new));
  }

  private Part sides() {
    List<Row> rows = new ArrayList<>();
    rows.add(row(Type.STRONG, true, cell("seller", "Seller"), cell("buyer", "Buyer")));
    rows.add(row(Type.PLAIN, false, cell("maker", seller.name()), buyer(sold.buyerName(), "name")));
    List<String> address = seller.address();
    for (int i = 0; i < address.size(); i++) {
      Cell details = i == 0 ? buyer(sold.buyerDetails(), "details") : cell("buyer", "");
      rows.add(row(Type.PLAIN, false, cell("address", address.get(i)), details));
    }
    return new Part(List.of(new Column(0.5, false), new Column(0.5, false)), rows);
  }

  /** In one paragraph: buyers' details were typed, and may have a line for each word. */
  private static Cell buyer(String text, String field) {
    String said = text == null ? "" : text;
    return cell(
        "buyer." + field,
        said.lines()
            .map(String::strip)
            .filter(l -> !l.isEmpty())
            .collect(Collectors.joining(", ")));
  }

  private Part syrup() {
    BulkSale.Syrup syrup = sale.syrup();
    String crop = syrup.seasons().stream().map(String::valueOf).collect(Collectors.joining(", "));
    String density = syrup.brix().toPlainString() + " °Bx";
    String color =
        syrup.transmittance() == null
            ? "not measured"
            : String.format(Locale.ROOT, "%.1f %%Tc", syrup.transmittance());
    String taste = syrup.taste() == null ? "not tasted" : syrup.taste().code();
    List<Row> rows =
        List.of(
            facts(true, "Barrel", barrel(), "Density at 68 °F", density),
            facts(false, "Lot", sale.lot(), "Light let through", color),
            facts(false, "Crop of", crop, "Taste", taste),
            facts(false, "Sold on", sale.on().toString(), "Recorded on", recordedOn.toString()));
    return new Part(
        List.of(
            new Column(0.14, false),
            new Column(0.36, false),
            new Column(0.22, false),
            new Column(0.28, false)),
        rows);
  }

  private static Row facts(
      boolean ruled, String name, String value, String otherName, String otherValue) {
    return row(
        Type.PLAIN,
        ruled,
        cell("sale", name),
        cell("sale", value),
        cell("sale", otherName),
        cell("sale", otherValue));
  }

  private String barrel() {
    Material material = sale.syrup().material();
    return material == null ? sale.tag() : sale.tag() + " (" + material.code() + ")";
  }

  private Part figures() {
    return new Part(
        List.of(
            new Column(0.15, false),
            new Column(0.27, true),
            new Column(0.26, false),
            new Column(0.16, true),
            new Column(0.16, true)),
        List.of(
            row(
                Type.STRONG,
                true,
                cell("sale", "By"),
                cell("sale", "Net weight"),
                cell("sale", "Grade"),
                cell("sale", "Price per lb"),
                cell("sale", "Comes to")),
            figures(Type.PLAIN, "Seller", sale.ours()),
            figures(Type.PLAIN, "Buyer", sale.theirs()),
            figures(Type.STRONG, "Agreed, due", sale.agreed())));
  }

  private static Row figures(Type type, String name, Figures side) {
    return row(
        type,
        type == Type.STRONG,
        cell("sale", name),
        cell("sale", inBoth(side.weight())),
        cell("sale", side.grade().words()),
        cell("sale", side.pricePerLb().toString()),
        cell("sale", side.amount().toString()));
  }

  /** As it was said, with the other unit system. */
  private static String inBoth(Quantity weight) {
    boolean customary = weight.unit() == Unit.LB || weight.unit() == Unit.OZ;
    Quantity other = customary ? weight.to(Unit.KG, 1) : weight.to(Unit.LB, DECIMALS_OF_POUNDS);
    return weight + " (" + other + ")";
  }

  private Part variance() {
    return new Part(
        List.of(new Column(0.84, false), new Column(0.16, true)),
        List.of(
            row(
                Type.STRONG,
                true,
                cell("sale", "Agreed less the seller's figures"),
                cell("sale", sale.variance().total().toString())),
            row(
                Type.PLAIN,
                false,
                cell("sale", "by weight, at the price of the seller's grade"),
                cell("sale", sale.variance().byWeight().toString())),
            row(
                Type.PLAIN,
                false,
                cell("sale", "by grade, at the agreed weight"),
                cell("sale", sale.variance().byGrade().toString()))));
  }

  private Part cautions() {
    List<Row> rows = new ArrayList<>();
    if (sale.syrup().material() != null) {
      sale.syrup()
          .material()
          .caution()
          .ifPresent(caution -> rows.add(row(Type.STRONG, false, cell("sale", caution))));
    }
    rows.add(row(Type.SMALL, false, cell("sale", DECIDE)));
    return Part.of(rows.toArray(Row[]::new));
  }

  private static Part signatures() {
    Row blank = row(Type.LARGE, false, cell("sale", ""), cell("sale", ""));
    return new Part(
        List.of(new Column(0.5, false), new Column(0.5, false)),
        List.of(
            blank,
            row(
                Type.SMALL,
                true,
                cell("sale", "For the seller, date"),
                cell("sale", "For the buyer, date"))));
  }

  private static Row row(Type type, boolean ruled, Cell... cells) {
    return new Row(type, ruled, List.of(cells));
  }

  private static Cell cell(String field, String text) {
    return new Cell(field, text);
  }
}
