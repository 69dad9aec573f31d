package org.barreltally.documents;

import static org.barreltally.documents.Sheet.columns;
import static org.barreltally.documents.Sheet.entry;
import static org.barreltally.documents.Sheet.heads;
import static org.barreltally.documents.Sheet.plain;
import static org.barreltally.documents.Sheet.small;
import static org.barreltally.documents.Sheet.strong;
import static org.barreltally.documents.Sheet.sum;
import static org.barreltally.documents.Sheet.table;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.barreltally.documents.FormText.Column;
import org.barreltally.documents.FormText.Part;
import org.barreltally.documents.FormText.Row;
import org.barreltally.documents.PagesText.Block;
import org.barreltally.gifts.Allotted;
import org.barreltally.gifts.Buyer;
import org.barreltally.gifts.GiftBill;
import org.barreltally.gifts.GiftLine;
import org.barreltally.gifts.GiftOrder;
import org.barreltally.gifts.GiftOutcome;
import org.barreltally.gifts.Payment;
import org.barreltally.gifts.PostalLines;

/** The bill of a gift order, and the receipt for what was paid. */
final class GiftBillPaper {

  private static final List<Column> MONEY = columns(52, -12, -18, -18);
  private static final List<Column> PAID = columns(52, 30, -18);
  private static final List<Column> RECIPIENTS = columns(7, 30, 24, 39);

  private final GiftOrder order;
  private final GiftBill bill;
  private final Maker maker;
  private final GiftWords words;
  private final String home;

  GiftBillPaper(GiftOrder order, Maker maker, GiftWords words, String home) {
    this.order = order;
    this.bill = GiftBill.of(order);
    this.maker = maker;
    this.words = words;
    this.home = home;
  }

  List<Block> bill(LocalDate today) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(head("Bill", today));
    List<Row> rows = new ArrayList<>(List.of(heads("", "Number", "Price", "Amount")));
    bill.lines()
        .forEach(
            line ->
                rows.add(
                    entry(
                        line.what(),
                        String.valueOf(line.count()),
                        line.price().toString(),
                        line.amount().toString())));
    rows.add(sum("Total", "", "", bill.total().toString()));
    order
        .payments()
        .forEach(payment -> rows.add(entry(words(payment), "", "", "−" + payment.amount())));
    rows.add(sum(balanceWords(), "", "", absolute()));
    blocks.add(new Block(1, List.of(table(MONEY, rows))));
    if (bill.depositAsked() != null && bill.deposit().signum() == 0) {
      blocks.add(Block.of(Part.of(plain("Deposit asked: " + bill.depositAsked()))));
    }
    blocks.add(recipients());
    blocks.add(
        Block.of(
            Part.of(small("No tax is reckoned here; your tax preparer decides what is due."))));
    return blocks;
  }

  List<Block> receipt(LocalDate today) {
    List<Row> rows = new ArrayList<>(List.of(heads("", "Day", "Amount")));
    order
        .payments()
        .forEach(
            payment ->
                rows.add(
                    entry(words(payment), payment.on().toString(), payment.amount().toString())));
    rows.add(sum("Received in all", "", bill.paid().toString()));
    rows.add(entry("Total of the order", "", bill.total().toString()));
    rows.add(sum(balanceWords(), "", absolute()));
    return List.of(
        head("Receipt", today),
        new Block(1, List.of(table(PAID, rows))),
        Block.of(Part.of(plain("Received with thanks."), plain(""), small("Signed"))));
  }

  private String balanceWords() {
    return bill.balance().signum() < 0 ? "To be given back" : "Balance to be paid";
  }

  private String absolute() {
    return bill.balance().signum() < 0
        ? org.barreltally.pricing.Money.none(bill.balance().currency())
            .minus(bill.balance())
            .toString()
        : bill.balance().toString();
  }

  private static String words(Payment payment) {
    if (payment.amount().signum() < 0) {
      return "Paid back";
    }
    return payment.kind() == Payment.Kind.DEPOSIT ? "Deposit" : "Payment";
  }

  private Block head(String title, LocalDate today) {
    Buyer buyer = order.buyer();
    List<Row> to = new ArrayList<>();
    to.add(strong(buyer.name() == null ? GiftWords.REMOVED : buyer.name()));
    if (buyer.address() != null) {
      List<String> lines = PostalLines.of(buyer.name(), buyer.address(), home);
      lines.subList(1, lines.size()).forEach(line -> to.add(plain(line)));
    }
    return Block.of(
        Part.of(strong(maker.name()), small(String.join(" · ", maker.address()))),
        new Part(columns(100), to),
        GiftPickList.head(
            title, "Gift order of " + order.lines().size() + " recipients · " + today));
  }

  private Block recipients() {
    List<Row> rows = new ArrayList<>(List.of(heads("No.", "Recipient", "Boxes", "")));
    for (GiftLine line : order.lines()) {
      List<String> swaps =
          GiftOutcome.contents(order, line).stream()
              .filter(Allotted::substitute)
              .map(words::content)
              .toList();
      rows.add(
          entry(
              String.valueOf(line.n()),
              GiftWords.name(order.person(line.n())),
              GiftWords.boxes(order, line),
              line.state().code() + (swaps.isEmpty() ? "" : " · " + String.join("; ", swaps))));
    }
    return new Block(1, List.of(table(RECIPIENTS, rows)));
  }
}
