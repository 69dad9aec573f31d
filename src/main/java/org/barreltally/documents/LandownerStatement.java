package org.barreltally.documents;

import java.util.ArrayList;
import java.util.List;
import org.barreltally.documents.FormText.Column;
import org.barreltally.documents.FormText.Part;
import org.barreltally.documents.FormText.Row;
import org.barreltally.documents.FormText.Type;
import org.barreltally.measure.ColorClass;
import org.barreltally.measure.Quantity;
import org.barreltally.pricing.Money;
import org.barreltally.shares.ShareStatement;
import org.barreltally.sugarbush.Basis;
import org.barreltally.sugarbush.ContainerCharge;
import org.barreltally.sugarbush.Lease;
import org.barreltally.sugarbush.LeaseTerms;
import org.barreltally.sugarbush.TapCount;
import org.barreltally.sugarbush.TapKind;

/** A landowner's statement, each step of its sum on paper, with the values of both sides. */
final class LandownerStatement {

  private static final String DECIDE =
      "Rent paid in syrup is barter. Its fair market value may be income to both sides (see IRS Publication 225); your"
          + " tax preparer decides what to report. This sheet helps your records.";

  private final ShareStatement said;
  private final Lease lease;
  private final LeaseTerms terms;
  private final Maker maker;

  LandownerStatement(ShareStatement said, Maker maker) {
    this.said = said;
    this.lease = said.lease();
    this.terms = lease.terms();
    this.maker = maker;
  }

  FormText on(Paper paper) {
    List<Part> parts = new ArrayList<>(List.of(head(), sides(), taps(), rent()));
    parts.add(handedOver());
    parts.add(left());
    parts.add(bothSides());
    parts.add(
        Part.of(
            Row.of(Type.SMALL, true, "decide", DECIDE),
            Row.of(Type.PLAIN, false, "sign", " "),
            Row.of(
                Type.PLAIN,
                false,
                "sign",
                "Seen by both: ______________________      ______________________   on ____________")));
    return new FormText(
        paper, "Statement %s %d".formatted(lease.landowner().name(), lease.season()), parts);
  }

  private Part head() {
    String state = lease.closedOn() == null ? "not closed yet" : "closed on " + lease.closedOn();
    return Part.of(
        Row.of(Type.LARGE, false, "title", "Syrup for trees: season " + lease.season()),
        Row.of(Type.PLAIN, false, "bush", lease.bush() + " · " + state));
  }

  private Part sides() {
    List<String> to = new ArrayList<>(List.of(lease.landowner().name()));
    if (lease.landowner().address() != null) {
      lease.landowner().address().lines().forEach(to::add);
    }
    List<String> from = new ArrayList<>(List.of(maker.name()));
    from.addAll(maker.address());
    List<Row> rows = new ArrayList<>();
    rows.add(Row.of(Type.STRONG, true, "landowner", "Landowner", "Maker"));
    for (int n = 0; n < Math.max(to.size(), from.size()); n++) {
      rows.add(
          Row.of(
              Type.PLAIN,
              false,
              "landowner",
              n < to.size() ? to.get(n) : "",
              n < from.size() ? from.get(n) : ""));
    }
    return new Part(List.of(new Column(0.5, false), new Column(0.5, false)), rows);
  }

  private Part taps() {
    List<Row> rows = new ArrayList<>();
    rows.add(Row.of(Type.STRONG, true, "taps", "Taps from", "Count", "How it was come by"));
    TapCount counted = lease.governing().orElse(null);
    for (TapCount count : lease.taps()) {
      String how =
          (count.kind() == TapKind.SET ? "counted in the trees" : "agreed")
              + (count == counted ? " · this one is paid for" : "")
              + (count.note() == null ? "" : " · " + count.note());
      rows.add(
          Row.of(
              count == counted ? Type.STRONG : Type.PLAIN,
              false,
              "taps",
              count.from().toString(),
              count.count().toString(),
              how));
    }
    if (lease.taps().isEmpty()) {
      rows.add(Row.of(Type.PLAIN, false, "taps", "none counted yet", "0", ""));
    }
    return new Part(
        List.of(new Column(0.2, false), new Column(0.12, true), new Column(0.68, false)), rows);
  }

  private Part rent() {
    List<Row> rows = new ArrayList<>();
    rows.add(Row.of(Type.STRONG, true, "rent", "The sum", "Money", "Gallons at 68 °F"));
    rows.add(
        sum(
            Type.PLAIN,
            "Rent: %d taps × %s".formatted(said.taps(), terms.ratePerTap()),
            said.owed(),
            said.owedVolume()));
    for (ShareStatement.CarriedIn in : said.carriedIn()) {
      rows.add(sum(Type.PLAIN, "Carried over from " + in.season(), in.value(), in.volume()));
    }
    rows.add(Row.of(Type.SMALL, false, "basis", basis(), "", ""));
    return new Part(sums(), rows);
  }

  private String basis() {
    String at = terms.price() == null ? "" : " at " + terms.price() + " a gallon";
    return switch (terms.basis()) {
      case VOLUME -> "Jars count by what is in them%s: 16 half-pints are a gallon.".formatted(at);
      case LIST_VALUE ->
          "Jars count by their list price of the day."
              + (terms.price() == null ? "" : " Gallons are told%s.".formatted(at));
      case VOLUME_PLUS_CONTAINER ->
          "Jars count by what is in them%s, and for their containers: %s.".formatted(at, charges());
    };
  }

  private String charges() {
    return terms.containerCharges().isEmpty()
        ? "none charged"
        : String.join(
            ", ", terms.containerCharges().stream().map(LandownerStatement::charge).toList());
  }

  private static String charge(ContainerCharge charge) {
    return charge.container() + " " + charge.charge();
  }

  private Part handedOver() {
    List<Row> rows = new ArrayList<>();
    rows.add(
        Row.of(
            Type.STRONG,
            true,
            "delivered",
            "Handed over",
            "Jars",
            "Size, grade",
            "Lot",
            "Gallons",
            "Counts for"));
    for (ShareStatement.Line line : said.delivered()) {
      rows.add(
          Row.of(
              Type.PLAIN,
              false,
              "delivered",
              line.on().toString(),
              String.valueOf(line.count()),
              line.container() + ", " + ColorClass.of(line.grade()).words(),
              line.lot(),
              words(line.volume()),
              line.value().toString()));
    }
    if (said.delivered().isEmpty()) {
      rows.add(Row.of(Type.PLAIN, false, "delivered", "nothing yet", "", "", "", "", ""));
    }
    return new Part(
        List.of(
            new Column(0.15, false),
            new Column(0.08, true),
            new Column(0.29, false),
            new Column(0.18, false),
            new Column(0.12, true),
            new Column(0.18, true)),
        rows);
  }

  private Part left() {
    boolean over = said.carried().signum() < 0;
    List<Row> rows = new ArrayList<>();
    rows.add(sum(Type.PLAIN, "Handed over in all", said.deliveredValue(), said.deliveredVolume()));
    rows.add(
        sum(
            Type.STRONG,
            over ? "Handed over beyond the rent, carried on" : "Still owed, carried on",
            said.carried(),
            said.carriedVolume()));
    if (terms.basis() == Basis.VOLUME) {
      rows.add(
          Row.of(
              Type.SMALL,
              false,
              "basis",
              "The sum is kept in gallons; money is gallons times the price, rounded once.",
              "",
              ""));
    }
    return new Part(sums(), rows);
  }

  private Part bothSides() {
    List<Row> rows = new ArrayList<>();
    rows.add(Row.of(Type.STRONG, true, "values", "Values of both sides", "", ""));
    rows.add(sum(Type.PLAIN, "Use of the trees, by the lease", said.owed(), null));
    rows.add(
        said.deliveredListValue() == null
            ? Row.of(
                Type.PLAIN, false, "values", "Jars at their list price: not all have one", "", "")
            : sum(
                Type.PLAIN,
                "Jars handed over, at what others paid that day (list price)",
                said.deliveredListValue(),
                null));
    return new Part(sums(), rows);
  }

  private static List<Column> sums() {
    return List.of(new Column(0.6, false), new Column(0.2, true), new Column(0.2, true));
  }

  private static Row sum(Type type, String what, Money money, Quantity gallons) {
    return Row.of(type, type == Type.STRONG, "sum", what, money.toString(), words(gallons));
  }

  private static String words(Quantity gallons) {
    return gallons == null ? "" : gallons.value().toPlainString();
  }
}
