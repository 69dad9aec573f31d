package org.barreltally.gifts.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.sql.PreparedStatement;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.barreltally.gifts.GiftJars;
import org.barreltally.gifts.Jar;
import org.barreltally.gifts.Promise;
import org.barreltally.gifts.Stage;
import org.barreltally.measure.ColorClass;
import org.hibernate.Session;

/** Which jars are promised to whom, and which are in whose boxes. */
@ApplicationScoped
public class GoodsRows {

  private static final String PROMISE =
      """
      INSERT INTO gift_promised (step, order_id, n, reservation, container, grade, for_container,
        for_grade, pieces) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)
      """;

  private static final String JARS =
      """
      INSERT INTO gift_jars (step, order_id, n, item, stage, for_container, for_grade, pieces)
      VALUES (?, ?, ?, ?, ?, ?, ?, ?)
      """;

  private static final String SELECT_PROMISES =
      """
      SELECT order_id, n, reservation, container, grade, for_container, for_grade,
        sum(pieces) AS pieces
      FROM gift_promised WHERE %s IN (:ids)
      GROUP BY order_id, n, reservation, container, grade, for_container, for_grade
      HAVING sum(pieces) <> 0
      ORDER BY n, for_container, for_grade, container, grade
      """;

  private static final String SELECT_JARS =
      """
      SELECT j.order_id, j.n, j.item, i.lot, i.container, i.grade, j.for_container, j.for_grade,
        j.stage, sum(j.pieces) AS pieces
      FROM gift_jars j JOIN items i ON i.id = j.item WHERE j.%s IN (:ids)
      GROUP BY j.order_id, j.n, j.item, i.lot, i.container, i.grade, j.for_container, j.for_grade,
        j.stage
      HAVING sum(j.pieces) <> 0
      ORDER BY j.n, j.for_container, j.for_grade, i.container, i.grade, i.lot
      """;

  private final EntityManager entities;

  GoodsRows(EntityManager entities) {
    this.entities = entities;
  }

  /** Keeps what a step promised, gave up or took. */
  public void promise(UUID order, UUID step, List<Promise> promises) {
    entities
        .unwrap(Session.class)
        .doWork(
            connection -> {
              try (PreparedStatement row = connection.prepareStatement(PROMISE)) {
                for (Promise promise : promises) {
                  row.setObject(1, step);
                  row.setObject(2, order);
                  row.setInt(3, promise.n());
                  row.setObject(4, promise.reservation());
                  row.setString(5, promise.jar().container());
                  row.setString(6, promise.jar().grade().code());
                  row.setString(7, promise.wanted().container());
                  row.setString(8, promise.wanted().grade().code());
                  row.setLong(9, promise.pieces());
                  row.addBatch();
                }
                row.executeBatch();
              }
            });
  }

  /** Keeps where a step brought jars to and from where. */
  public void move(UUID order, UUID step, List<GiftJars> jars) {
    entities
        .unwrap(Session.class)
        .doWork(
            connection -> {
              try (PreparedStatement row = connection.prepareStatement(JARS)) {
                for (GiftJars moved : jars) {
                  row.setObject(1, step);
                  row.setObject(2, order);
                  row.setInt(3, moved.n());
                  row.setObject(4, moved.item());
                  row.setString(5, moved.stage().code());
                  row.setString(6, moved.wanted().container());
                  row.setString(7, moved.wanted().grade().code());
                  row.setLong(8, moved.pieces());
                  row.addBatch();
                }
                row.executeBatch();
              }
            });
  }

  /** What is promised to the recipients of some orders, by order; nothing of one that has none. */
  public Map<UUID, List<Promise>> promises(Collection<UUID> orders) {
    return Row.byOrder(read(SELECT_PROMISES.formatted("order_id"), orders), GoodsRows::promise);
  }

  /** What one step promised, gave up or took. */
  public List<Promise> promisesOf(UUID step) {
    return read(SELECT_PROMISES.formatted("step"), List.of(step)).stream()
        .map(GoodsRows::promise)
        .toList();
  }

  /** What is in the boxes of some orders' recipients, by order; nothing of one that has none. */
  public Map<UUID, List<GiftJars>> jars(Collection<UUID> orders) {
    return Row.byOrder(read(SELECT_JARS.formatted("order_id"), orders), GoodsRows::jars);
  }

  /** What one step moved. */
  public List<GiftJars> jarsOf(UUID step) {
    return read(SELECT_JARS.formatted("step"), List.of(step)).stream()
        .map(GoodsRows::jars)
        .toList();
  }

  private static Promise promise(Row row) {
    return new Promise(
        row.whole("n"),
        row.id("reservation"),
        jar(row, "container", "grade"),
        jar(row, "for_container", "for_grade"),
        row.pieces("pieces"));
  }

  private static GiftJars jars(Row row) {
    return new GiftJars(
        row.whole("n"),
        row.id("item"),
        row.text("lot"),
        jar(row, "container", "grade"),
        jar(row, "for_container", "for_grade"),
        Stage.of(row.text("stage")),
        row.pieces("pieces"));
  }

  private List<Row> read(String sql, Collection<UUID> ids) {
    List<?> rows =
        entities.createNativeQuery(sql, Tuple.class).setParameter("ids", ids).getResultList();
    return rows.stream().map(row -> new Row((Tuple) row)).toList();
  }

  private static Jar jar(Row row, String container, String grade) {
    return new Jar(row.text(container), ColorClass.of(row.text(grade)));
  }
}
