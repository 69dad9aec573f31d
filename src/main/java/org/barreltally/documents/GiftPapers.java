package org.barreltally.documents;

import static org.barreltally.documents.Sheet.columns;
import static org.barreltally.documents.Sheet.entry;
import static org.barreltally.documents.Sheet.heads;
import static org.barreltally.documents.Sheet.table;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.barreltally.containers.Containers;
import org.barreltally.documents.FormText.Row;
import org.barreltally.documents.PagesText.Block;
import org.barreltally.gifts.GiftLine;
import org.barreltally.gifts.GiftOrder;
import org.barreltally.gifts.GiftOrders;
import org.barreltally.gifts.Person;
import org.barreltally.gifts.PickPlan;
import org.barreltally.gifts.PostalLines;
import org.barreltally.gifts.RecipientState;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Place;
import org.barreltally.ledger.Places;
import org.barreltally.settings.FarmSettings;

/** What stands on the papers of a gift order. */
@ApplicationScoped
public class GiftPapers {

  /** All jurisdictions known so far lie there, so a farm is taken to, unless told otherwise. */
  public static final String HOME = "US";

  private static final String GLASS =
      "Look at every jar: cap tight, no leak, label straight. What is held is not on this list.";

  private final GiftOrders orders;
  private final PickPlan plan;
  private final Places places;
  private final Containers containers;
  private final LabelSheets sheets;
  private final FarmSettings settings;
  private final Days days;

  GiftPapers(
      GiftOrders orders,
      PickPlan plan,
      Places places,
      Containers containers,
      LabelSheets sheets,
      FarmSettings settings,
      Days days) {
    this.orders = orders;
    this.plan = plan;
    this.places = places;
    this.containers = containers;
    this.sheets = sheets;
    this.settings = settings;
    this.days = days;
  }

  /** What to fetch by place, and what goes into whose box; without those sent or cancelled. */
  @Transactional
  public PagesText pickList(UUID id, Set<Integer> numbers) {
    GiftOrder order = orders.at(id);
    List<GiftLine> lines =
        chosen(order, numbers).stream()
            .filter(line -> line.state().compareTo(RecipientState.SENT) < 0)
            .toList();
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Block.of(
            GiftPickList.head(
                "Pick list",
                "Gift order of %s · %d recipients · %s"
                    .formatted(buyer(order), lines.size(), days.today()),
                order.reserved() ? GLASS : "Not everything is reserved yet. " + GLASS)));
    blocks.addAll(new GiftPickList(order, lines, words(), this::placeName).blocks(plan.of(order)));
    return new PagesText(paper(), "Pick list, " + buyer(order), 1, blocks);
  }

  /** The slips for the boxes, two on a page. */
  @Transactional
  public PagesText slips(UUID id, Set<Integer> numbers, String home) {
    GiftOrder order = orders.at(id);
    GiftSlips slips = new GiftSlips(order, maker(), words(), home);
    return new PagesText(
        paper(), "Packing slips", 2, chosen(order, numbers).stream().map(slips::of).toList());
  }

  @Transactional
  public PagesText bill(UUID id, String home) {
    GiftOrder order = orders.at(id);
    return new PagesText(
        paper(),
        "Bill, " + buyer(order),
        1,
        new GiftBillPaper(order, maker(), words(), home).bill(days.today()));
  }

  @Transactional
  public PagesText receipt(UUID id, String home) {
    GiftOrder order = orders.at(id);
    return new PagesText(
        paper(),
        "Receipt, " + buyer(order),
        1,
        new GiftBillPaper(order, maker(), words(), home).receipt(days.today()));
  }

  /** Which lots each recipient got. */
  @Transactional
  public PagesText lots(UUID id, Set<Integer> numbers) {
    GiftOrder order = orders.at(id);
    List<Row> rows = new ArrayList<>(List.of(heads("No.", "Recipient", "", "Jars by lot")));
    for (GiftLine line : chosen(order, numbers)) {
      rows.add(
          entry(
              String.valueOf(line.n()),
              GiftWords.name(order.person(line.n())),
              line.state().code(),
              GiftWords.lots(order, line)));
    }
    return new PagesText(
        paper(),
        "Lots per recipient, " + buyer(order),
        1,
        List.of(
            Block.of(
                GiftPickList.head(
                    "Lots per recipient",
                    "Gift order of %s · %s".formatted(buyer(order), days.today()))),
            new Block(1, List.of(table(columns(7, 29, 14, 50), rows)))));
  }

  /** One label for each parcel that goes by post, in the order of the country it goes to. */
  @Transactional
  public List<AddressText> addresses(UUID id, Set<Integer> numbers, String home) {
    GiftOrder order = orders.at(id);
    return chosen(order, numbers).stream()
        .filter(line -> GiftSlips.posted(order, line))
        .map(
            line -> {
              Person person = order.person(line.n());
              return new AddressText(
                  "recipients[" + (line.n() - 1) + "].address",
                  PostalLines.of(GiftWords.name(person), person.address(), home));
            })
        .toList();
  }

  /** The cards of those who get one. */
  @Transactional
  public List<CardText> cards(UUID id, Set<Integer> numbers) {
    GiftOrder order = orders.at(id);
    return chosen(order, numbers).stream()
        .filter(line -> order.person(line.n()).card() != null)
        .map(
            line ->
                new CardText(
                    line.n(),
                    "recipients[" + (line.n() - 1) + "].card",
                    order.person(line.n()).card()))
        .toList();
  }

  /** The sheet a request names, the owner's, or the usual one. */
  @Transactional
  public LabelSheet sheet(String code) {
    String owners = maker().labelSheet() == null ? LabelSheet.USUAL : maker().labelSheet();
    return sheets.named(code == null ? owners : code, "sheet");
  }

  /** The paper of the owner's label sheet. */
  @Transactional
  public Paper paper() {
    return sheet(null).paper();
  }

  private static List<GiftLine> chosen(GiftOrder order, Set<Integer> numbers) {
    if (numbers != null) {
      numbers.forEach(order::line);
    }
    return order.lines().stream()
        .filter(line -> numbers == null || numbers.contains(line.n()))
        .filter(line -> line.state() != RecipientState.CANCELLED)
        .toList();
  }

  private Maker maker() {
    return Maker.at(days.now(), settings);
  }

  private GiftWords words() {
    return new GiftWords(code -> containers.at(code).name());
  }

  private String placeName(String code) {
    return places.find(code).map(Place::name).orElse(code) + " (" + code + ")";
  }

  private static String buyer(GiftOrder order) {
    return order.buyer().name() == null ? GiftWords.REMOVED : order.buyer().name();
  }
}
