package org.barreltally.stock;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.restassured.response.ValidatableResponse;
import io.restassured.specification.RequestSpecification;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Invariants;
import org.barreltally.ledger.Item;
import org.barreltally.ledger.Items;
import org.barreltally.ledger.Ledger;
import org.barreltally.ledger.Movement;
import org.barreltally.ledger.MovementKind;
import org.barreltally.ledger.Places;
import org.barreltally.lots.Grading;
import org.barreltally.lots.Lot;
import org.barreltally.lots.Lots;
import org.barreltally.measure.Taste;
import org.barreltally.measure.Uncertain;
import org.barreltally.people.CurrentUser;
import org.barreltally.people.Person;
import org.barreltally.people.Role;

/** Lots of jars on the shelf, each test's own, and requests as the owner makes them. */
@ApplicationScoped
public class ShelfFixture {

  static final String PLACE = "cool-room";
  private static final LocalDate PACKED_ON = LocalDate.of(2024, 6, 20);
  private static final String OWNER_PASSWORD = "only for the tests";

  private final Places places;
  private final Lots lots;
  private final Grading grading;
  private final Items items;
  private final Ledger ledger;
  private final Days days;
  private final Invariants invariants;
  private final EntityManager entities;
  private final CurrentUser user;

  ShelfFixture(
      Places places,
      Lots lots,
      Grading grading,
      Items items,
      Ledger ledger,
      Days days,
      Invariants invariants,
      EntityManager entities,
      CurrentUser user) {
    this.places = places;
    this.lots = lots;
    this.grading = grading;
    this.items = items;
    this.ledger = ledger;
    this.days = days;
    this.invariants = invariants;
    this.entities = entities;
    this.user = user;
  }

  /** A place of its own, so that nobody else counts there. */
  public String room() {
    String code = "room-" + UUID.randomUUID().toString().substring(0, 8);
    QuarkusTransaction.requiringNew().run(() -> places.openOut(code, "Room " + code, false));
    return code;
  }

  /** A new lot of amber syrup, so many of its jars of each size in the cool room. */
  public String lotWith(long count, String... sizes) {
    return QuarkusTransaction.requiringNew().call(() -> packed(count, sizes));
  }

  private String packed(long count, String... sizes) {
    user.actAs(new Person(UUID.randomUUID(), "tester", "Tester", Role.OWNER));
    String lot = newLotCode();
    lots.open(lot, Lot.Kind.PACKED, PACKED_ON, List.of(2024), new Uncertain(66.9, 0.1));
    grading.grade(lot, PACKED_ON, 57.0, Taste.CLEAN, null);
    Movement.Builder opening = Movement.of(MovementKind.OPENING, days.during(PACKED_ON));
    for (String size : sizes) {
      Item jars = Item.jars(UUID.randomUUID(), lot, size, BigDecimal.valueOf(628), "amber");
      items.add(List.of(jars));
      opening.move("opening", PLACE, jars.id(), count);
    }
    if (!opening.movesNothing()) {
      ledger.post(opening.build());
    }
    return lot;
  }

  static String newLotCode() {
    return "T" + UUID.randomUUID().toString().substring(0, 13).toUpperCase(Locale.ROOT);
  }

  /** Pieces at a place by the book. */
  public long standing(String place, String lot, String size) {
    return number(
        "SELECT coalesce(sum(b.amount), 0) FROM balances b JOIN items i ON i.id = b.item"
            + " WHERE b.place = '"
            + place
            + "' AND i.lot = '"
            + lot
            + "' AND i.container = '"
            + size
            + "'");
  }

  boolean isHeld(String lot) {
    return lots.at(lot).held();
  }

  /** How many rows there are that a refusal could have left one in. */
  String traces() {
    return entities
        .createNativeQuery(
            """
            SELECT concat_ws(' ', (SELECT count(*) FROM movements), (SELECT count(*) FROM entries),
              (SELECT count(*) FROM balances), (SELECT count(*) FROM items),
              (SELECT count(*) FROM lots), (SELECT count(*) FROM lot_holds),
              (SELECT count(*) FROM fillings), (SELECT count(*) FROM vessels),
              (SELECT count(*) FROM containers), (SELECT count(*) FROM stock_counts),
              (SELECT count(*) FROM requests))
            """)
        .getSingleResult()
        .toString();
  }

  long number(String sql) {
    return ((Number) entities.createNativeQuery(sql).getSingleResult()).longValue();
  }

  String text(String sql) {
    return (String) entities.createNativeQuery(sql).getSingleResult();
  }

  public void assertBookIsWhole() {
    invariants
        .check()
        .forEach(finding -> assertEquals(List.of(), finding.violations(), finding.name()));
  }

  static RequestSpecification asOwner() {
    return given().auth().preemptive().basic("owner", OWNER_PASSWORD);
  }

  static ValidatableResponse post(String path, String json) {
    return post(path, json, UUID.randomUUID());
  }

  static ValidatableResponse post(String path, String json, UUID key) {
    return asOwner()
        .header("Idempotency-Key", key)
        .contentType("application/json")
        .body(json)
        .post(path)
        .then();
  }

  static ValidatableResponse get(String path) {
    return asOwner().get(path).then();
  }
}
