package org.barreltally.stock.pages;

import static org.barreltally.PageReader.page;
import static org.barreltally.PageReader.sentTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.Map;
import org.barreltally.Owner;
import org.barreltally.PageReader;
import org.barreltally.people.PersonFixture;
import org.barreltally.stock.ShelfFixture;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Stock on pages: listed with totals, carried, written off. */
@QuarkusTest
class StockPagesTest {

  @Inject ShelfFixture shelf;
  @Inject PersonFixture people;

  private PageReader owner;
  private String size;
  private String lot;

  @BeforeEach
  void jars_of_a_size_of_their_own() {
    size = Owner.newSize(16);
    lot = shelf.lotWith(40, size);
    owner = PageReader.owner();
  }

  @Test
  void jars_are_added_up_over_lots_and_places() {
    shelf.lotWith(7, size);
    sentTo(relocate("12"));
    Document stock = owner.reads("/stock?container=" + size + "&sort=-jars");
    assertEquals("In all 47 0", stock.select("tfoot tr").text());
    assertEquals(1, stock.select("caption:contains(Added up) ~ tbody tr").size());
    assertEquals(
        java.util.List.of("28", "12", "7"),
        stock.select("caption:contains(By place) ~ tbody td.number").eachText());
  }

  @Test
  void nothing_that_fits_is_said() {
    assertTrue(
        owner
            .reads("/stock?container=" + Owner.newSize(8))
            .select(".empty")
            .text()
            .contains("Can syrup"));
  }

  @Test
  void carrying_more_than_there_is_keeps_what_was_typed() {
    Document refused = page(relocate("41"), 409);
    assertEquals("41", refused.select("#f-count").val());
    assertEquals(lot, refused.select("#f-lot").val());
    assertTrue(refused.title().startsWith("Not done"), refused.title());
    assertEquals(40, shelf.standing("cool-room", lot, size));
  }

  @Test
  void a_double_click_writes_off_once() {
    String address = "/stock/write-off";
    Document form = owner.reads(address + "?place=cool-room&container=" + size + "&lot=" + lot);
    assertTrue(
        page(owner.sends(form, address, "count", "3"), 400)
            .select("#f-cause-message")
            .text()
            .contains("became of them"));
    sentTo(owner.sends(form, address, "count", "3", "cause", "broken"));
    sentTo(owner.sends(form, address, "count", "3", "cause", "broken"));
    assertEquals(37, shelf.standing("cool-room", lot, size));
  }

  @Test
  void supplies_that_run_low_can_be_told_from_the_others() {
    String code = Owner.newTag("CAP").toUpperCase(java.util.Locale.ROOT);
    code = code.substring(0, Math.min(12, code.length()));
    sentTo(
        owner.sends(
            owner.readsWhole("/supplies/new"),
            "/supplies/new",
            "code",
            code,
            "name",
            "Tried caps",
            "kind",
            "cap",
            "container",
            size,
            "perJar",
            "1",
            "lowLine",
            "200"));
    String count = "/supplies/" + code + "/count";
    sentTo(owner.sends(owner.reads(count), count, "count", "150"));
    assertTrue(
        owner.readsWhole("/supplies?low=yes").select("tbody th a").eachText().contains(code));
    String receive = "/supplies/" + code + "/receive";
    sentTo(owner.sends(owner.reads(receive), receive, "count", "500"));
    assertTrue(owner.readsWhole("/supplies").select("tbody th a").eachText().contains(code));
    assertTrue(
        !owner.readsWhole("/supplies?low=yes").select("tbody th a").eachText().contains(code));
  }

  @Test
  void a_size_is_added_and_one_known_already_is_refused_beside_its_code() {
    Document form = owner.reads("/containers/new");
    Document refused =
        page(
            owner.sends(
                form,
                "/containers/new",
                "code",
                size,
                "name",
                "Again",
                "netContents",
                "250",
                "netContents.unit",
                "mL"),
            409);
    assertTrue(refused.select("#f-code-message").hasText(), refused.text());
    assertTrue(owner.readsWhole("/containers").select("tbody th").eachText().contains(size));
  }

  @Test
  void a_bookkeeper_sees_stock_and_moves_nothing() {
    PageReader reader =
        PageReader.as(people.with("bookkeeper", "sums and more sums"), "sums and more sums");
    Document stock = reader.reads("/stock");
    assertEquals(0, stock.select("main a[href^=/stock/]").size());
    assertEquals(403, reader.posts("/stock/write-off", Map.of("count", "1")).statusCode());
  }

  private io.restassured.response.Response relocate(String count) {
    Document form =
        owner.reads("/stock/relocate?place=cool-room&container=" + size + "&lot=" + lot);
    return owner.sends(
        form, "/stock/relocate", "to", "barrel-room", "count", count, "reason", "Shelf repaired");
  }
}
