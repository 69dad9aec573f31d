package org.barreltally.cost.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The published example of OpenStax, Principles of Accounting, volume 1, sections 10.2 and 10.3,
 * perpetual: opening 150 at 21, sale 120 at 36, purchase 225 at 27, sale 180 at 39, purchase 210 at
 * 33. Published: moving average 7253 gone and 8902 left (unrounded 7252.94 and 8902.06); first in
 * first out 7200 and 8955; specific identification 7260 and 8895; sales 11340.
 */
class PoolTest {

  private static final BigDecimal SALES = money("11340.00"); // 120 × 36 + 180 × 39

  @Test
  void moving_average_as_published() {
    Pool pool = Pool.movingAverage(2);
    BigDecimal gone = play(pool);
    assertEquals(money("7252.94"), gone);
    assertEquals(money("8902.06"), pool.value());
    assertEquals(285, pool.amount());
    assertEquals(money("4087.06"), SALES.subtract(gone));
  }

  @Test
  void first_in_first_out_as_published() {
    Pool pool = Pool.firstInFirstOut(2);
    BigDecimal gone = play(pool);
    assertEquals(money("7200.00"), gone);
    assertEquals(money("8955.00"), pool.value());
    assertEquals(285, pool.amount());
    assertEquals(money("4140.00"), SALES.subtract(gone));
  }

  /** Of the second sale 20 were of the opening stock and 160 of the first purchase. */
  @Test
  void by_specific_lot_as_published() {
    Pool opening = Pool.movingAverage(2);
    Pool first = Pool.movingAverage(2);
    Pool second = Pool.movingAverage(2);
    opening.in(150, money("3150.00"));
    BigDecimal gone = out(opening, 120);
    first.in(225, money("6075.00"));
    gone = gone.add(out(opening, 20)).add(out(first, 160));
    second.in(210, money("6930.00"));
    assertEquals(money("7260.00"), gone);
    assertEquals(money("8895.00"), opening.value().add(first.value()).add(second.value()));
  }

  private static BigDecimal play(Pool pool) {
    pool.in(150, money("3150.00"));
    BigDecimal gone = out(pool, 120);
    pool.in(225, money("6075.00"));
    gone = gone.add(out(pool, 180));
    pool.in(210, money("6930.00"));
    return gone;
  }

  @Test
  void what_comes_back_brings_the_cost_it_took_along() {
    Pool pool = Pool.firstInFirstOut(2);
    pool.in(2, money("4.00"));
    pool.in(2, money("6.00"));
    assertEquals(money("7.00"), out(pool, 3)); // 2 + 2 + 3
    assertEquals(money("5.00"), back(pool, 2)); // the newest two that went: 3 + 2
    assertEquals(money("8.00"), pool.value());
    assertEquals(money("2.00"), out(pool, 1)); // the cheap one is first in line again
  }

  @Test
  void what_is_sold_before_the_book_has_it_is_trued_up_when_it_comes() {
    Pool pool = Pool.movingAverage(2);
    pool.in(1, money("5.00"));
    assertEquals(money("15.00"), out(pool, 3)); // one stands, two are owed at its cost
    assertEquals(-2, pool.amount());
    assertEquals(money("-10.00"), pool.value());
    List<Pool.TruedUp> more = pool.in(4, money("28.00")); // 7 each: two pay what was owed
    assertEquals(List.of(new Pool.TruedUp("customer", money("4.00"))), more);
    assertEquals(2, pool.amount());
    assertEquals(money("14.00"), pool.value()); // 5 + 28 = 15 + 4 + 14
  }

  @Test
  void what_is_owed_can_come_back_before_it_came() {
    Pool pool = Pool.firstInFirstOut(2);
    assertEquals(money("7.50"), pool.out(3, "customer", () -> new BigDecimal("2.5")));
    assertEquals(money("5.00"), back(pool, 2));
    assertEquals(-1, pool.amount());
    assertEquals(money("-2.50"), pool.value());
  }

  @Test
  void thirds_leave_no_cent_behind() {
    Pool pool = Pool.movingAverage(2);
    pool.in(3, money("10.00"));
    assertEquals(money("3.33"), out(pool, 1));
    assertEquals(money("3.34"), out(pool, 1)); // 6.67 ÷ 2 = 3.335, half up
    assertEquals(money("3.33"), out(pool, 1));
    assertEquals(money("0.00"), pool.value());
  }

  static BigDecimal out(Pool pool, long amount) {
    return pool.out(amount, "customer", () -> BigDecimal.ZERO);
  }

  static BigDecimal back(Pool pool, long amount) {
    return pool.back(amount, "customer", () -> BigDecimal.ZERO).value();
  }

  static BigDecimal money(String amount) {
    return new BigDecimal(amount);
  }
}
