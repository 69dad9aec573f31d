package org.barreltally.pricing.internal;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.pricing.PriceList;

/** The lists read last, at most so many; they never change, so what is kept is never stale. */
@ApplicationScoped
class KnownLists {

  private static final int MOST = 100;

  private final Map<UUID, PriceList> byId =
      new LinkedHashMap<>(MOST, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<UUID, PriceList> eldest) {
          return size() > MOST;
        }
      };

  Optional<PriceList> find(UUID id) {
    synchronized (byId) {
      return Optional.ofNullable(byId.get(id));
    }
  }

  void keep(PriceList list) {
    synchronized (byId) {
      byId.put(list.id(), list);
    }
  }
}
