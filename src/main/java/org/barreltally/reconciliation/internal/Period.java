package org.barreltally.reconciliation.internal;

import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.persistence.Tuple;
import java.time.Instant;
import java.time.LocalDate;

/**
 * A year of the book.
 *
 * @param from when it begins on the farm
 * @param until when the next begins
 */
public record Period(int season, Instant from, Instant until) {

  /** A query that knows the year, by the names its text uses. */
  Query of(EntityManager entities, String sql) {
    Query query =
        entities
            .createNativeQuery(sql, Tuple.class)
            .setParameter("first", LocalDate.of(season, 1, 1))
            .setParameter("last", LocalDate.of(season, 12, 31))
            .setParameter("from", from)
            .setParameter("until", until);
    return sql.contains(":season") ? query.setParameter("season", season) : query;
  }
}
