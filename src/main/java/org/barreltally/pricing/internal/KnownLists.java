package org.barreltally.pricing.internal;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.books.Books;
import org.barreltally.books.OfEachBook;
import org.barreltally.pricing.PriceList;

/** The lists read last, at most so many; they never change, so what is kept is never stale. */
@ApplicationScoped
class KnownLists {

  private static final int MOST = 100;

  private final OfEachBook<Cache<UUID, PriceList>> byId;

  KnownLists(Books books) {
    byId = books.keeping(() -> Caffeine.newBuilder().maximumSize(MOST).build());
  }

  Optional<PriceList> find(UUID id) {
    return Optional.ofNullable(byId.here().getIfPresent(id));
  }

  void keep(PriceList list) {
    byId.here().put(list.id(), list);
  }
}
