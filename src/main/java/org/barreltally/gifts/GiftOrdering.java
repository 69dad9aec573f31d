package org.barreltally.gifts;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.barreltally.gifts.internal.OrderRows;
import org.barreltally.gifts.internal.PaymentRows;
import org.barreltally.gifts.internal.PeopleRows;
import org.barreltally.ledger.Days;
import org.barreltally.pricing.Money;
import org.barreltally.refusal.InvalidField;

/** Takes gift orders, adds recipients, corrects who they are, takes money, and forgets people. */
@ApplicationScoped
public class GiftOrdering {

  private final GiftOrders orders;
  private final GiftBoxes boxes;
  private final Carriers carriers;
  private final OrderRows rows;
  private final PeopleRows people;
  private final PaymentRows payments;
  private final Days days;

  GiftOrdering(
      GiftOrders orders,
      GiftBoxes boxes,
      Carriers carriers,
      OrderRows rows,
      PeopleRows people,
      PaymentRows payments,
      Days days) {
    this.orders = orders;
    this.boxes = boxes;
    this.carriers = carriers;
    this.rows = rows;
    this.people = people;
    this.payments = payments;
    this.days = days;
  }

  /**
   * Takes an order; nothing is reserved by it.
   *
   * @throws InvalidField naming every field that needs mending
   */
  @Transactional
  public GiftOrder take(OrderGifts said) {
    Faults faults = new Faults();
    OrderRules rules = new OrderRules(faults);
    Buyer buyer = rules.buyer(said.buyer());
    RecipientRules each = rules(faults, null);
    List<CheckedRecipient> recipients = rules.recipients(said.recipients(), each);
    rules.money(said.deposit(), said.depositPercent(), each.currency());
    faults.refuse();
    UUID id = rows.add(buyer, each.currency(), said.depositPercent());
    rows.add(id, 1, recipients);
    if (said.deposit() != null && said.deposit().signum() > 0) {
      payments.add(id, Payment.Kind.DEPOSIT, said.deposit(), days.today());
    }
    return orders.at(id);
  }

  /**
   * What an order would be, storing nothing.
   *
   * @throws InvalidField naming every field that needs mending
   */
  @Transactional
  public List<CheckedRecipient> check(OrderGifts said) {
    Faults faults = new Faults();
    List<CheckedRecipient> recipients =
        new OrderRules(faults).recipients(said.recipients(), rules(faults, null));
    faults.refuse();
    return recipients;
  }

  /**
   * Adds recipients to an order. They are reserved when the order is reserved again.
   *
   * @throws InvalidField naming every field that needs mending
   */
  @Transactional
  public GiftOrder add(UUID id, Set<String> versions, List<Recipient> said) {
    GiftOrder order = orders.opened(id, versions);
    Faults faults = new Faults();
    List<CheckedRecipient> recipients =
        new OrderRules(faults).recipients(said, rules(faults, order.head().currency()));
    faults.require(
        order.lines().size() + recipients.size() <= RecipientRules.RECIPIENTS_MAX,
        "recipients",
        "The order would have more than "
            + RecipientRules.RECIPIENTS_MAX
            + " recipients. Make another one.");
    faults.refuse();
    rows.add(id, order.lines().size() + 1, recipients);
    return orders.at(id);
  }

  /**
   * Corrects name, address or card text of a recipient; what is null stays.
   *
   * @throws InvalidField naming every field that needs mending
   */
  @Transactional
  public GiftOrder correct(UUID id, Set<String> versions, int n, Person said) {
    GiftOrder order = orders.opened(id, versions);
    GiftLine line = order.line(n);
    Person was = order.person(n);
    GiftBox box = order.box(line);
    Recipient whole =
        new Recipient(
            said.name() == null ? was.name() : said.name(),
            said.address() == null ? was.address() : said.address(),
            box.id().toString(),
            line.count(),
            said.card() == null ? was.card() : said.card(),
            line.delivery(),
            null,
            null,
            line.sendBy(),
            null);
    Faults faults = new Faults();
    CheckedRecipient checked = rules(faults, order.head().currency()).read(whole, "recipient");
    faults.refuse();
    people.correct(id, n, new Person(checked.name(), checked.address(), checked.card()));
    return orders.at(id);
  }

  /**
   * Money came from the buyer, or went back to him where the amount is below zero.
   *
   * @throws InvalidField naming the field
   */
  @Transactional
  public GiftOrder pay(UUID id, Set<String> versions, Money amount, LocalDate on) {
    GiftOrder order = orders.opened(id, versions);
    if (amount == null
        || amount.signum() == 0
        || !amount.currency().equals(order.head().currency())) {
      throw new InvalidField(
          "amount",
          "Give what was paid in " + order.head().currency() + "; below zero if it was paid back.");
    }
    payments.add(
        id, Payment.Kind.PAYMENT, amount, on == null ? days.today() : days.happened(on, "on"));
    return orders.at(id);
  }

  /**
   * Removes names, addresses and card texts of an order; goods, money and lots stay.
   *
   * @throws NotResolved if parcels are still on their way
   */
  @Transactional
  public void forget(UUID id) {
    GiftOrder order = orders.opened(id, null);
    if (!order.resolved()) {
      throw new NotResolved();
    }
    people.forget(order.head());
  }

  private RecipientRules rules(Faults faults, String currency) {
    return new RecipientRules(faults, boxes, carriers.holding(null), days, currency);
  }
}
