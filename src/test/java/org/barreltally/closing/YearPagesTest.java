package org.barreltally.closing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import org.barreltally.Owner;
import org.barreltally.PageReader;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;

/** Years of the book and backups as pages; no year is closed here, since that is for ever. */
@QuarkusTest
class YearPagesTest {

  @Test
  void a_year_is_not_closed_unless_it_is_typed_once_more() {
    PageReader owner = PageReader.owner();
    Owner.posts(
            "/api/barrels",
            Owner.barrel(Owner.newTag("B-"), 2025, "2025-03-14", 486.5, 42, 66.9, 62))
        .statusCode(201);
    Document past = owner.reads("/years/2025");
    String form = "form[action='/years/2025']";
    Response refused = owner.sends(past, form, "year", "2024");
    assertEquals(400, refused.statusCode());
    assertTrue(PageReader.beside(refused, "year").contains("2025"));
    assertEquals("2024", Jsoup.parse(refused.asString()).selectFirst("[name=year]").val());
    assertTrue(owner.reads("/years").text().contains("2025 open"));
    Owner.reads("/api/years/2025").body("state", org.hamcrest.Matchers.equalTo("open"));
  }

  @Test
  void a_backup_is_made_and_offered() {
    PageReader owner = PageReader.owner();
    owner.sends(owner.reads("/backups"), "form[action='/backups']").then().statusCode(303);
    Document list = owner.reads("/backups");
    String file = list.selectFirst("a[href^='/api/backups/']").attr("href");
    assertEquals(200, Owner.asks().get(file).statusCode());
  }
}
