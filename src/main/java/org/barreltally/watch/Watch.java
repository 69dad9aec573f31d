package org.barreltally.watch;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Instance;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import org.barreltally.ledger.Days;

/** What to look at in the storerooms, as the book stands. */
@ApplicationScoped
public class Watch {

  private final Instance<Look> looks;
  private final Days days;

  Watch(Instance<Look> looks, Days days) {
    this.looks = looks;
    this.days = days;
  }

  /** The list by kind, the most pressing first; after a key (or null), at most so many. */
  @Transactional
  public List<WatchItem> list(String after, int limit) {
    LocalDate today = days.today();
    return looks.stream()
        .flatMap(look -> look.items(today).stream())
        .filter(item -> after == null || item.key().compareTo(after) > 0)
        .sorted(Comparator.comparing(WatchItem::key))
        .limit(limit)
        .toList();
  }
}
