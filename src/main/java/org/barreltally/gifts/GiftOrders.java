package org.barreltally.gifts;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Set;
import java.util.UUID;
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
    return read(rows.find(id).orElseThrow(() -> new UnknownGiftOrder(id)));
  }

  /** Orders in the order they were recorded, after one of them (or null), at most so many. */
  @Transactional
  public List<GiftOrder> list(UUID after, int limit) {
    return rows.list(after, limit).stream().map(this::read).toList();
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
    return read(head);
  }

  private GiftOrder read(OrderHead head) {
    List<GiftLine> lines = rows.lines(head);
    return new GiftOrder(
        head,
        people.buyer(head),
        lines,
        people.of(head.id()),
        boxes.byId(lines.stream().map(GiftLine::box).collect(Collectors.toSet())),
        goods.promises(head.id()),
        goods.jars(head.id()),
        steps.of(head),
        payments.of(head));
  }
}
