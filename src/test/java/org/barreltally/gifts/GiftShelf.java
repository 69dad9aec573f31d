package org.barreltally.gifts;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import org.barreltally.Owner;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Item;
import org.barreltally.ledger.Items;
import org.barreltally.ledger.Ledger;
import org.barreltally.ledger.Movement;
import org.barreltally.ledger.MovementKind;
import org.barreltally.lots.Grading;
import org.barreltally.lots.Lot;
import org.barreltally.lots.Lots;
import org.barreltally.measure.Taste;
import org.barreltally.measure.Uncertain;
import org.barreltally.people.CurrentUser;
import org.barreltally.people.Person;
import org.barreltally.people.Role;

/** Sizes, lots and boxes of each test's own, so that no other test's jars are in its pools. */
@ApplicationScoped
public class GiftShelf {

  private static final Map<String, Double> TRANSMITTANCE =
      Map.of("golden", 80.0, "amber", 60.0, "dark", 40.0, "very-dark", 20.0);

  private final Lots lots;
  private final Grading grading;
  private final Items items;
  private final Ledger ledger;
  private final Days days;
  private final EntityManager entities;
  private final CurrentUser user;

  GiftShelf(
      Lots lots,
      Grading grading,
      Items items,
      Ledger ledger,
      Days days,
      EntityManager entities,
      CurrentUser user) {
    this.lots = lots;
    this.grading = grading;
    this.items = items;
    this.ledger = ledger;
    this.days = days;
    this.entities = entities;
    this.user = user;
  }

  /** A glass size nobody else uses. */
  public static String newSize(String value, String unit) {
    String code = "Z" + UUID.randomUUID().toString().substring(28).toUpperCase(Locale.ROOT);
    Owner.posts(
            "/api/containers",
            """
            {'code': '%s', 'name': 'Glass %s', 'netContents': {'value': %s, 'unit': '%s'},
             'material': 'glass'}
            """
                .formatted(code, code, value, unit))
        .statusCode(201);
    return code;
  }

  /** A new lot of that grade packed on that day, so many of its jars in the cool room. */
  public String lot(String size, String grade, long count, String packedOn) {
    return QuarkusTransaction.requiringNew()
        .call(() -> packed(size, grade, count, LocalDate.parse(packedOn)));
  }

  private String packed(String size, String grade, long count, LocalDate on) {
    user.actAs(new Person(UUID.randomUUID(), "tester", "Tester", Role.OWNER));
    String lot = "G" + UUID.randomUUID().toString().substring(0, 13).toUpperCase(Locale.ROOT);
    lots.open(lot, Lot.Kind.PACKED, on, List.of(2024), new Uncertain(66.9, 0.1));
    grading.grade(lot, on, TRANSMITTANCE.get(grade), Taste.CLEAN, null);
    Item jars = Item.jars(UUID.randomUUID(), lot, size, BigDecimal.valueOf(314), grade);
    items.add(List.of(jars));
    ledger.post(
        Movement.of(MovementKind.OPENING, days.during(on))
            .move("opening", "cool-room", jars.id(), count)
            .build());
    return lot;
  }

  /** Pieces of a lot at a place by the book. */
  public long standing(String place, String lot) {
    return number(
        "SELECT coalesce(sum(b.amount), 0) FROM balances b JOIN items i ON i.id = b.item"
            + " WHERE b.place = '%s' AND i.lot = '%s'".formatted(place, lot));
  }

  /** What can be promised of a size and grade. */
  public long available(String size, String grade) {
    return number(
        "SELECT coalesce(sum(on_hand - held - reserved - out), 0) FROM availability"
            + " WHERE container = '%s' AND grade = '%s'".formatted(size, grade));
  }

  /** What is reserved of a size and grade. */
  public long reserved(String size, String grade) {
    return number(
        "SELECT coalesce(sum(reserved), 0) FROM availability"
            + " WHERE container = '%s' AND grade = '%s'".formatted(size, grade));
  }

  public long number(String sql) {
    return ((Number) entities.createNativeQuery(sql).getSingleResult()).longValue();
  }

  /**
   * A box of jars, each as {@code size grade count}, with an optional substitute {@code /grade}.
   */
  public static String box(String name, String price, String... contents) {
    StringBuilder jars = new StringBuilder();
    for (String content : contents) {
      String[] part = content.split("[ /]");
      jars.append(jars.isEmpty() ? "" : ", ")
          .append(
              "{'container': '%s', 'grade': '%s', 'count': %s"
                  .formatted(part[0], part[1], part[2]));
      if (part.length > 3) {
        jars.append(
            ", 'substitutes': [{'container': '%s', 'grade': '%s'}]".formatted(part[0], part[3]));
      }
      jars.append('}');
    }
    return Owner.posts(
            "/api/gift-boxes",
            "{'name': '%s', 'price': {'amount': %s, 'currency': 'USD'}, 'contents': [%s], 'carton': 'Carton'}"
                .formatted(name, price, jars))
        .statusCode(201)
        .extract()
        .path("id");
  }

  /** JSON of a recipient of invented name and address who is posted to. */
  public static String posted(int n, String box, String postage) {
    return """
    {'name': 'Recipient %1$d Quillfeather', 'box': '%2$s', 'count': 1, 'delivery': 'post',
     'address': {'lines': ['%1$d Tarn Lane'], 'town': 'Fernby', 'region': 'VT',
                 'postcode': '05999', 'country': 'US'},
     'card': 'Warm greetings, number %1$d.', 'sendBy': '2026-12-14',
     'postage': {'amount': %3$s, 'currency': 'USD'}}
    """
        .formatted(n, box, postage);
  }

  /** JSON of a recipient who is not posted to. */
  public static String without(int n, String box, String delivery) {
    return "{'name': 'Recipient %d Quillfeather', 'box': '%s', 'count': 1, 'delivery': '%s', 'sendBy': '2026-12-19'}"
        .formatted(n, box, delivery);
  }

  /** Takes an order of these recipients. */
  public static String order(String... recipients) {
    return Owner.posts(
            "/api/gift-orders",
            "{'buyer': {'name': 'Hesper Loomworks'}, 'recipients': [%s]}"
                .formatted(String.join(",", recipients)))
        .statusCode(201)
        .extract()
        .path("id");
  }
}
