package org.barreltally.gifts.rest;

import jakarta.enterprise.context.RequestScoped;
import jakarta.ws.rs.core.Response;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Consumer;
import org.barreltally.gifts.GiftOrders;
import org.barreltally.web.Answer;
import org.barreltally.web.IfMatch;
import org.barreltally.web.Once;

/** Does something with one recipient, once, and answers how he stands then. */
@RequestScoped
class RecipientAnswer {

  private final GiftOrders orders;
  private final Once once;

  RecipientAnswer(GiftOrders orders, Once once) {
    this.orders = orders;
    this.once = once;
  }

  Response after(
      UUID id, int n, String key, String ifMatch, Object said, Consumer<Set<String>> act) {
    return once.answer(
        key,
        said == null ? Map.of() : said,
        () -> {
          act.accept(IfMatch.versions(ifMatch));
          return Answer.ok(OrderView.recipient(orders.at(id), n));
        });
  }
}
