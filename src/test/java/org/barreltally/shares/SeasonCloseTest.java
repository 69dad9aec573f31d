package org.barreltally.shares;

import static org.barreltally.Owner.newSize;
import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.barreltally.shares.SharesOverRestTest.handOver;
import static org.barreltally.shares.SharesOverRestTest.lease;
import static org.barreltally.shares.SharesOverRestTest.line;
import static org.barreltally.shares.SharesOverRestTest.newName;
import static org.barreltally.shares.SharesOverRestTest.priceList;
import static org.barreltally.shares.SharesOverRestTest.statement;
import static org.barreltally.shares.SharesOverRestTest.tap;
import static org.barreltally.shares.SharesOverRestTest.terms;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import org.barreltally.stock.ShelfFixture;
import org.junit.jupiter.api.Test;

/** What is left of a lease goes on; every sum worked out by hand beside it. */
@QuarkusTest
class SeasonCloseTest {

  @Inject ShelfFixture shelf;

  /**
   * 2025 by volume: 8.4 gal owed, 3 handed over, 5.4 go on. 2026 at $60: 420 × $1.20 = $504, 8.4
   * gal; with 5.4, now worth 5.4 × 60 = $324, 13.8 gal or $828. Nothing handed over.
   */
  @Test
  void what_is_left_goes_on_to_the_next_season_once() {
    String gallon = newSize(128);
    String lot = shelf.lotWith(20, gallon);
    String owner = newName();
    String first =
        lease(owner, 2025, terms("volume", "set", "1.10", "55.00"), tap("2025-02-14", 420));
    handOver(first, line(gallon, lot, 3)).statusCode(201);
    posts("/api/leases/" + first + "/close", "{'on': '2026-01-05'}")
        .statusCode(201)
        .body("carriedVolume.value", equalTo(5.4f));
    String second =
        lease(owner, 2026, terms("volume", "set", "1.20", "60.00"), tap("2026-02-14", 420));

    statement(second)
        .body("carriedIn", hasSize(1))
        .body("carriedIn[0].season", equalTo(2025))
        .body("carriedIn[0].volume.value", equalTo(5.4f))
        .body("carriedIn[0].value.amount", equalTo(324.0f))
        .body("carriedVolume.value", equalTo(13.8f))
        .body("carried.amount", equalTo(828.0f));
    reads("/api/leases/" + first + "/statement?season=2026")
        .body("carried.amount", equalTo(828.0f));
    handOver(first, line(gallon, lot, 1)).statusCode(409).body("code", equalTo("lease-closed"));
    posts("/api/leases/" + first + "/close", "{}")
        .statusCode(409)
        .body("code", equalTo("lease-closed"));
    String third =
        lease(owner, 2027, terms("volume", "set", "1.20", "60.00"), tap("2027-02-14", 1));
    statement(third).body("carriedIn", empty());
  }

  @Test
  void a_lease_agreed_before_the_close_takes_what_is_left_and_too_much_is_carried_below_zero() {
    String gallon = newSize(128);
    String lot = shelf.lotWith(20, gallon);
    String owner = newName();
    String first =
        lease(owner, 2025, terms("volume", "set", "1.10", "55.00"), tap("2025-02-14", 100));
    String second =
        lease(
            owner,
            2026,
            terms("list-value", "set", "1.00", "50.00")
                + ", 'priceList': '%s'".formatted(priceList(gallon, "60.00")),
            tap("2026-02-14", 100));
    handOver(first, line(gallon, lot, 3)).statusCode(201);
    // 100 × 1.10 = $110, 2 gal at $55; three handed over, one too many: $55 go on as money.
    posts("/api/leases/" + first + "/close", "{}").statusCode(201);
    statement(second)
        .body("carriedIn[0].value.amount", equalTo(-55.0f))
        .body("carried.amount", equalTo(45.0f));
  }
}
