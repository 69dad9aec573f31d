package org.barreltally.lots;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.quarkus.test.TestTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import org.barreltally.SoundBook;
import org.barreltally.measure.Uncertain;
import org.hibernate.exception.ConstraintViolationException;
import org.junit.jupiter.api.Test;

@QuarkusTest
class FamilyTest {

  @Inject Family family;
  @Inject Lots lots;
  @Inject EntityManager entities;

  @Test
  @TestTransaction
  void shares_follow_the_grams_and_an_unwashed_vessel_has_none() {
    String jars = lot();
    String barrel = lot();
    String heel = lot();
    String film = lot();
    family.join(jars, Map.of(barrel, 3000L, heel, 1000L, film, 0L));
    assertEquals(Map.of(barrel, 0.75, heel, 0.25, film, 0.0), shares(jars));
    assertEquals(List.of(new Parent(jars, film, 0, 0)), family.below(film));
    SoundBook.check();
  }

  @Test
  @TestTransaction
  void where_nothing_but_unwashed_vessels_went_in_each_is_as_likely() {
    String jars = lot();
    String one = lot();
    String other = lot();
    family.join(jars, Map.of(one, 0L, other, 0L));
    assertEquals(Map.of(one, 0.5, other, 0.5), shares(jars));
    SoundBook.check();
  }

  @Test
  @TestTransaction
  void a_lot_of_no_parents_has_no_links() {
    String lot = lot();
    family.join(lot, Map.of());
    assertEquals(List.of(), family.above(lot));
    assertEquals(List.of(), family.below(lot));
  }

  @Test
  @TestTransaction
  void a_lot_is_not_its_own_parent() {
    String lot = lot();
    assertThrows(ConstraintViolationException.class, () -> family.join(lot, Map.of(lot, 5L)));
  }

  @Test
  @TestTransaction
  void every_link_above_and_below_is_found_once() {
    String top = lot();
    String left = lot();
    String right = lot();
    String jars = lot();
    family.join(left, Map.of(top, 10L));
    family.join(right, Map.of(top, 10L));
    family.join(jars, Map.of(left, 5L, right, 5L));
    assertEquals(4, family.above(jars).size());
    assertEquals(4, family.below(top).size());
    assertEquals(1.0, Shares.ofAncestors(jars, family.above(jars)).get(top), 1e-12);
  }

  private String lot() {
    String code = "T-" + UUID.randomUUID().toString().substring(24).toUpperCase(Locale.ROOT);
    lots.open(code, Lot.Kind.BULK, LocalDate.of(2024, 3, 14), List.of(2024), Uncertain.exact(66.9));
    entities.flush();
    return code;
  }

  private Map<String, Double> shares(String child) {
    Map<String, Double> shares = new HashMap<>();
    family.above(child).forEach(link -> shares.put(link.parent(), link.share()));
    return shares;
  }
}
