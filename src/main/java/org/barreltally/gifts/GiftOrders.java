package org.barreltally.gifts;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.barreltally.gifts.internal.GoodsRows;
import org.barreltally.gifts.internal.OrderRows;
import org.barreltally.gifts.internal.PaymentRows;
import org.barreltally.gifts.internal.PeopleRows;
import org.barreltally.gifts.internal.StepRows;

/** The gift orders, to be read. */
@ApplicationScoped
public class GiftOrders {

  private final OrderRows rows;
  private final PeopleRows people;
  private final StepRows steps;
  private final GoodsRows goods;
  private final PaymentRows payments;
  private final GiftBoxes boxes;

  GiftOrders(
      OrderRows rows,
      PeopleRows people,
      StepRows steps,
      GoodsRows goods,
      PaymentRows payments,
      GiftBoxes boxes) {
    this.rows = rows;
    this.people = people;
    this.steps = steps;
    this.goods = goods;
    this.payments = payments;
    this.boxes = boxes;
  }

  /**
   * @throws UnknownGiftOrder if there is none of that id
   */
  @Transactional
  public GiftOrder at(UUID id) {
    return read(List.of(rows.find(id).orElseThrow(() -> new UnknownGiftOrder(id)))).get(0);
  }

  /** Orders in the order they were recorded, after one of them (or null), at most so many. */
  @Transactional
  public List<GiftOrder> list(UUID after, int limit) {
    return read(rows.list(after, limit));
  }

  /**
   * The order, kept from being changed by others until the transaction ends. The caller changes it.
   *
   * @param versions as its reader read it; null when the reader does not mind
   * @throws UnknownGiftOrder if there is none of that id
   * @throws OrderChangedSince if it was changed since
   */
  GiftOrder opened(UUID id, Set<String> versions) {
    OrderHead head = rows.locked(id).orElseThrow(() -> new UnknownGiftOrder(id));
    if (versions != null && !versions.contains(Long.toString(head.version()))) {
      throw new OrderChangedSince();
    }
    rows.changed(id);
    return read(List.of(head)).get(0);
  }

  /** In as many questions to the database for many orders as for one. */
  private List<GiftOrder> read(List<OrderHead> heads) {
    if (heads.isEmpty()) {
      return List.of();
    }
    Map<UUID, OrderHead> byId =
        heads.stream().collect(Collectors.toMap(OrderHead::id, Function.identity()));
    Map<UUID, List<GiftLine>> lines = rows.lines(byId);
    Map<UUID, GiftBox> packed =
        boxes.byId(
            lines.values().stream()
                .flatMap(List::stream)
                .map(GiftLine::box)
                .collect(Collectors.toSet()));
    Map<UUID, Buyer> buyers =
        people.buyers(heads.stream().map(OrderHead::buyer).collect(Collectors.toSet()));
    Map<UUID, Map<Integer, Person>> recipients = people.of(byId.keySet());
    Map<UUID, List<Promise>> promises = goods.promises(byId.keySet());
    Map<UUID, List<GiftJars>> jars = goods.jars(byId.keySet());
    Map<UUID, List<Done>> done = steps.of(byId);
    Map<UUID, List<Payment>> paid = payments.of(byId);
    return heads.stream()
        .map(
            head ->
                new GiftOrder(
                    head,
                    buyers.get(head.buyer()),
                    of(head, lines),
                    recipients.getOrDefault(head.id(), Map.of()),
                    packed,
                    of(head, promises),
                    of(head, jars),
                    of(head, done),
                    of(head, paid)))
        .toList();
  }

  private static <T> List<T> of(OrderHead order, Map<UUID, List<T>> all) {
    return all.getOrDefault(order.id(), List.of());
  }
}
