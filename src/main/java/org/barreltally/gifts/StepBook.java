package org.barreltally.gifts;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.UUID;
import org.barreltally.gifts.internal.GoodsRows;
import org.barreltally.gifts.internal.StepRows;
import org.barreltally.ledger.Ids;

/** Keeps what was done with recipients, together with what it did to their jars and promises. */
@ApplicationScoped
class StepBook {

  /**
   * A step and what it did.
   *
   * @param promises made (above zero) and ended (below zero)
   * @param jars brought to a stage (above zero) and taken from one (below zero)
   */
  record Entry(Done done, List<Promise> promises, List<GiftJars> jars) {}

  private final StepRows steps;
  private final GoodsRows goods;
  private final Ids ids;

  StepBook(StepRows steps, GoodsRows goods, Ids ids) {
    this.steps = steps;
    this.goods = goods;
    this.ids = ids;
  }

  /** A new identity for a step. */
  UUID id() {
    return ids.next();
  }

  void keep(UUID order, List<Entry> entries) {
    steps.add(order, entries.stream().map(Entry::done).toList());
    for (Entry entry : entries) {
      if (!entry.promises().isEmpty()) {
        goods.promise(order, entry.done().id(), entry.promises());
      }
      if (!entry.jars().isEmpty()) {
        goods.move(order, entry.done().id(), entry.jars());
      }
    }
  }

  /** The recipients of some numbers, or all in a state where no numbers are given. */
  List<GiftLine> chosen(GiftOrder order, List<Integer> numbers, RecipientState state) {
    return numbers == null
        ? order.lines().stream().filter(line -> line.state() == state).toList()
        : numbers.stream().distinct().sorted().map(order::line).toList();
  }
}
