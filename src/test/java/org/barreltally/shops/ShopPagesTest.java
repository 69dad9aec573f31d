package org.barreltally.shops;

import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.Map;
import java.util.UUID;
import org.barreltally.Owner;
import org.barreltally.PageReader;
import org.barreltally.SoundBook;
import org.barreltally.gifts.GiftShelf;
import org.barreltally.people.PersonFixture;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;

/** Shops on consignment as pages. */
@QuarkusTest
class ShopPagesTest {

  private static final String OPEN = "form[action='/shops/new']";
  private static final String ROWS = "form[method=post].broad";

  @Inject GiftShelf shelf;
  @Inject PersonFixture people;

  private final String name = "Store " + UUID.randomUUID().toString().substring(0, 8);

  @Test
  void a_shop_is_opened_brought_jars_counted_and_pays() {
    PageReader owner = PageReader.owner();
    Response refused =
        owner.sends(owner.reads("/shops/new"), OPEN, "name", name, "commissionPercent", "100");
    assertEquals(400, refused.statusCode());
    assertTrue(PageReader.beside(refused, "commissionPercent").contains("under 100 percent"));
    Document again = Jsoup.parse(refused.asString());
    assertEquals(name, again.selectFirst("[name=name]").val());
    String at =
        owner
            .sends(again, OPEN, "commissionPercent", "40")
            .then()
            .statusCode(303)
            .extract()
            .header("Location");
    String shop = at.substring(at.indexOf("/shops/"));

    String size = GiftShelf.newSize("8", "floz");
    String lot = shelf.lot(size, "amber", 6, "2024-06-01");
    Document bring = owner.reads(shop + "/bring");
    String row = bring.selectFirst("input[value='" + lot + "']").attr("name").replace(".lot", "");
    owner.sends(bring, ROWS, row + ".count", "5").then().statusCode(303);
    owner.sends(bring, ROWS, row + ".count", "5").then().statusCode(303);
    assertEquals(1, shelf.standing("cool-room", lot), "sent twice, brought once");
    String place = "shop-" + shop.substring("/shops/".length());
    assertEquals(5, shelf.standing(place, lot));

    Response priceless = owner.sends(owner.reads(shop + "/count"), ROWS, "lines[0].count", "3");
    assertEquals(422, priceless.statusCode());
    assertTrue(PageReader.beside(priceless, "lines[0]").length() > 0);
    Response bad = owner.sends(owner.reads(shop + "/count"), ROWS, "lines[0].count", "-1");
    assertEquals(400, bad.statusCode());
    assertTrue(PageReader.beside(bad, "lines[0].count").contains("from 0"));
    assertEquals("-1", Jsoup.parse(bad.asString()).selectFirst("[name='lines[0].count']").val());
    owner
        .sends(owner.reads(shop + "/count?by=size"), ROWS, "lines[0].count", "5")
        .then()
        .statusCode(303);
    Document fetch = owner.reads(shop + "/fetch");
    owner.sends(fetch, ROWS, "lines[0].count", "2").then().statusCode(303);
    assertEquals(3, shelf.standing(place, lot));

    Document page = owner.reads(shop);
    owner.sends(page, "form:has(input[value=pay])", "amount", "30.00").then().statusCode(303);
    Owner.reads("/api" + shop + "/statement").body("paid.amount", equalTo(30.0f));
    assertTrue(owner.readsWhole("/shops").text().contains(name));
    assertEquals(2, owner.reads(shop).select("a[href$='/note.pdf']").size());
    SoundBook.check();
  }

  @Test
  void a_bookkeeper_gets_no_form_and_may_send_none() {
    String person = people.with("bookkeeper", "sums and more sums");
    PageReader bookkeeper = PageReader.as(person, "sums and more sums");
    assertNull(bookkeeper.reads("/shops/new").selectFirst(OPEN));
    assertEquals(403, bookkeeper.posts("/shops/new", Map.of("name", "x")).statusCode());
  }
}
