package org.barreltally.documents.season;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.persistence.Tuple;
import java.time.ZoneOffset;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** Reads what a chapter tells, row by row, so that no list of it is ever held in memory. */
@ApplicationScoped
class BookRows {

  private static final int AT_ONCE = 200;

  private final EntityManager entities;

  BookRows(EntityManager entities) {
    this.entities = entities;
  }

  /**
   * Lets all chapters see the book as of one moment, whatever is told meanwhile. To be called
   * before anything is asked in the transaction.
   */
  void oneView() {
    entities
        .createNativeQuery("SET TRANSACTION ISOLATION LEVEL REPEATABLE READ, READ ONLY")
        .executeUpdate();
  }

  /**
   * Asks within the transaction of the book.
   *
   * @param sql in which {@code :year} is the year, {@code :asof} the last instant that counts,
   *     {@code :from} and {@code :until} the year on the farm
   */
  void each(String sql, BookYear year, Consumer<Told> row) {
    Query query =
        entities.createNativeQuery(sql, Tuple.class).setHint("org.hibernate.fetchSize", AT_ONCE);
    bind(query, sql, "year", year.year());
    bind(query, sql, "asof", year.asOf().atOffset(ZoneOffset.UTC));
    bind(query, sql, "from", year.from().atOffset(ZoneOffset.UTC));
    bind(query, sql, "until", year.until().atOffset(ZoneOffset.UTC));
    try (Stream<?> found = query.getResultStream()) {
      found.map(Tuple.class::cast).map(Told::new).forEach(row);
    }
  }

  private static void bind(Query query, String sql, String name, Object value) {
    if (sql.matches("(?s).*[^:]:" + name + "\\b.*")) {
      query.setParameter(name, value);
    }
  }
}
