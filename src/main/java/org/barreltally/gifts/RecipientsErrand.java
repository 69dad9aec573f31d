package org.barreltally.gifts;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.barreltally.errands.ErrandKind;
import org.barreltally.errands.Outcome;
import org.barreltally.errands.Progress;
import org.barreltally.refusal.InvalidField;

/** Takes a file of recipients for somebody who does not wait for it. */
@ApplicationScoped
public class RecipientsErrand implements ErrandKind<RecipientsErrand.Asked> {

  /**
   * What is taken.
   *
   * @param buyer of a new order
   * @param order the order that they are added to; null for a new one
   * @param file the text of the CSV file
   */
  public record Asked(String buyer, UUID order, String file) {}

  private final GiftOrdering ordering;
  private final RecipientFile files;

  RecipientsErrand(GiftOrdering ordering, RecipientFile files) {
    this.ordering = ordering;
    this.files = files;
  }

  @Override
  public String code() {
    return "gift-recipients";
  }

  @Override
  public Class<Asked> record() {
    return Asked.class;
  }

  @Override
  public Set<String> roles() {
    return Set.of("owner", "packing");
  }

  @Override
  @Transactional
  public Outcome run(Asked asked, Progress progress) {
    if (asked.file() == null || asked.file().isBlank()) {
      throw new InvalidField("file", "Choose the CSV file.");
    }
    List<Recipient> recipients =
        files.read(asked.file().getBytes(StandardCharsets.UTF_8), progress);
    UUID order =
        asked.order() == null
            ? ordering
                .take(
                    new OrderGifts(
                        new Buyer(asked.buyer(), null, null, null, null), recipients, null, null))
                .head()
                .id()
            : ordering.add(asked.order(), null, recipients).head().id();
    return Outcome.at("/gift-orders/" + order);
  }
}
