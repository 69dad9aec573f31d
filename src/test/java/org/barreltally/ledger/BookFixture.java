package org.barreltally.ledger;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.barreltally.lots.Grading;
import org.barreltally.lots.Lot;
import org.barreltally.lots.Lots;
import org.barreltally.measure.Taste;
import org.barreltally.measure.Uncertain;

/** A small world of its own for a test: places, lots and items that no other test touches. */
@ApplicationScoped
class BookFixture {

  static final LocalDate DAY = LocalDate.of(2024, 6, 20);
  static final int GRAMS_EACH = 600;
  private static final int LOTS = 5;
  private static final int SIZES = 3;

  record World(BookModel model, List<String> lots, List<String> sizes, List<UUID> items) {}

  private final EntityManager entities;
  private final Lots lots;
  private final Grading grading;
  private final Items items;

  BookFixture(EntityManager entities, Lots lots, Grading grading, Items items) {
    this.entities = entities;
    this.lots = lots;
    this.grading = grading;
    this.items = items;
  }

  /** The model knows the same places, lots and items as the book; nothing has moved yet. */
  World world() {
    return QuarkusTransaction.requiringNew().call(this::make);
  }

  private World make() {
    String own = UUID.randomUUID().toString().substring(0, 6);
    BookModel model = new BookModel();
    spot(model, "home-" + own, "home", false);
    spot(model, "attic-" + own, "home", false);
    spot(model, "shop-" + own, "out", false);
    spot(model, "table-" + own, "out", true);
    for (String outside : List.of("opening", "customer", "broken", "unexplained", "packing")) {
      model.spots.put(outside, new BookModel.Spot(outside, false, false, true));
    }
    List<String> sizes = new ArrayList<>();
    for (int n = 0; n < SIZES; n++) {
      sizes.add(("C" + own + n).toUpperCase(Locale.ROOT));
      size(sizes.get(n));
    }
    List<String> codes = new ArrayList<>();
    for (int n = 0; n < LOTS; n++) {
      codes.add(("L" + own + n).toUpperCase(Locale.ROOT));
      lot(model, codes.get(n), sizes, 10 + 20 * n);
    }
    List<UUID> sorted =
        model.things.values().stream()
            .sorted(Comparator.comparing(thing -> thing.lot() + thing.container()))
            .map(BookModel.Thing::id)
            .toList();
    return new World(model, codes, sizes, sorted);
  }

  private void spot(BookModel model, String code, String kind, boolean belowZero) {
    entities
        .createNativeQuery("INSERT INTO places VALUES (:code, :name, :kind, :below)")
        .setParameter("code", code)
        .setParameter("name", "Of a test")
        .setParameter("kind", kind)
        .setParameter("below", belowZero)
        .executeUpdate();
    model.spots.put(
        code, new BookModel.Spot(code, kind.equals("home"), kind.equals("out"), belowZero));
  }

  /** A container that others may look up: the ledger itself asks for none. */
  private void size(String code) {
    entities
        .createNativeQuery(
            "INSERT INTO containers (code, name, net_value, net_unit, net_ml, material)"
                + " VALUES (:code, 'Of a test', 500, 'mL', 500, 'glass')")
        .setParameter("code", code)
        .executeUpdate();
  }

  private void lot(BookModel model, String code, List<String> sizes, double transmittance) {
    lots.open(code, Lot.Kind.PACKED, DAY, List.of(2024), new Uncertain(66.9, 0.1));
    String grade = grading.grade(code, DAY, transmittance, Taste.CLEAN, null).code();
    model.grade(code, grade);
    List<Item> made = new ArrayList<>();
    made.add(Item.syrup(UUID.randomUUID(), code));
    for (String size : sizes) {
      made.add(Item.jars(UUID.randomUUID(), code, size, BigDecimal.valueOf(GRAMS_EACH), grade));
    }
    items.add(made);
    made.forEach(
        item ->
            model.things.put(item.id(), new BookModel.Thing(item.id(), code, item.container())));
  }
}
