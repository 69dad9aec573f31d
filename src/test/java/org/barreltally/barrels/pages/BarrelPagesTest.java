package org.barreltally.barrels.pages;

import static org.barreltally.Owner.barrel;
import static org.barreltally.Owner.newTag;
import static org.barreltally.Owner.posts;
import static org.barreltally.PageReader.page;
import static org.barreltally.PageReader.sentTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import java.util.List;
import org.barreltally.PageReader;
import org.barreltally.SoundBook;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What is done to a barrel on its pages: emptied, topped up, sold, bought. */
@QuarkusTest
class BarrelPagesTest {

  private PageReader owner;
  private String tag;

  @BeforeEach
  void a_half_full_barrel() {
    tag = newTag("V");
    posts("/api/barrels", barrel(tag, 2026, "2026-03-14", 268.0, 41.5, 66.9, 62)).statusCode(201);
    owner = PageReader.owner();
  }

  @Test
  void a_drained_barrel_leaves_the_list_and_is_there_for_who_asks() {
    String out = "/barrels/" + tag + "/take-out";
    Document refused =
        page(owner.sends(owner.reads(out), out, "all", "true", "weight", "3", "reason", "x"), 400);
    assertTrue(refused.select("#f-weight-message").hasText(), refused.text());
    assertEquals("3", refused.select("#f-weight").val());
    assertTrue(tags("/barrels?sort=tag").contains(tag));
    sentTo(
        owner.sends(owner.reads(out), out, "all", "true", "cause", "discarded", "reason", "Mold"));
    assertFalse(tags("/barrels").contains(tag));
    assertTrue(tags("/barrels?state=any").contains(tag));
    assertTrue(tags("/barrels?state=drained").contains(tag));
    assertEquals(0, owner.reads("/barrels/" + tag).select("a[href$=/top-up]").size());
    SoundBook.check();
  }

  @Test
  void a_top_up_without_a_reheat_record_is_refused_and_with_it_opens_a_blend_lot() {
    String topUp = "/barrels/" + tag + "/top-up";
    String before = lot();
    String[] typed = {
      "on", "2026-03-22",
      "weighing.gross", "486",
      "density.reading", "66.8",
      "density.temperature", "68",
      "density.instrument", "refractometer",
      "transmittance", "58",
      "taste", "clean"
    };
    Document refused = page(owner.sends(owner.reads(topUp), topUp, typed), 422);
    assertTrue(refused.select(".refusal").text().toLowerCase().contains("heat"), refused.text());
    assertEquals("486", refused.select("#f-weighing-gross").val());
    assertEquals(before, lot());
    String[] heated = java.util.Arrays.copyOf(typed, typed.length + 4);
    heated[typed.length] = "reheat.temperature";
    heated[typed.length + 1] = "180 °F";
    heated[typed.length + 2] = "reheat.by";
    heated[typed.length + 3] = "Orla";
    sentTo(owner.sends(owner.reads(topUp), topUp, heated));
    assertFalse(before.equals(lot()));
    SoundBook.check();
  }

  /** Agreed 225 lb of dark at $2.20: 495.00; ours 226.5 lb of amber at $2.35: 532.28. */
  @Test
  void a_barrel_sold_whole_is_paid_on_the_agreed_figures_and_compared_with_ours() {
    String sell = "/barrels/" + tag + "/sell";
    String[] said = {
      "on", "2026-05-12",
      "buyer.name", "Thistledown Packers",
      "ours.weight", "226.5",
      "ours.grade", "amber",
      "theirs.weight", "224",
      "theirs.grade", "dark",
      "agreed.weight", "225",
      "agreed.grade", "dark",
      "prices.dark", "2.20"
    };
    Document form = owner.reads(sell);
    Document refused = page(owner.sends(form, sell, said), 400);
    assertTrue(refused.select("#f-prices-amber-message").hasText(), refused.text());
    assertEquals("2.20", refused.select("#f-prices-dark").val());
    String[] priced = java.util.Arrays.copyOf(said, said.length + 2);
    priced[said.length] = "prices.amber";
    priced[said.length + 1] = "$2.35";
    String sale = sentTo(owner.sends(form, sell, priced));
    assertEquals(sale, sentTo(owner.sends(form, sell, priced)));
    Document shown = owner.reads(sale);
    assertTrue(shown.text().contains("To be paid $495.00"), shown.text());
    assertTrue(shown.text().contains("In all -$37.28"), shown.text());
    assertTrue(owner.reads("/bulk-sales").text().contains("Thistledown Packers"));
    SoundBook.check();
  }

  @Test
  void bought_syrup_is_listed_with_who_sold_it() {
    String bought = newTag("X");
    Document form = owner.reads("/purchases/new");
    Document refused = page(owner.sends(form, "/purchases/new", "tag", bought), 400);
    assertTrue(refused.select("#f-supplier").hasText(), refused.text());
    assertEquals(
        "/barrels/" + bought,
        sentTo(
            owner.sends(
                form,
                "/purchases/new",
                "supplier.name",
                "Fennimore Ash",
                "tag",
                bought,
                "season",
                "2026",
                "on",
                "2026-05-02",
                "weighing.gross",
                "470",
                "weighing.tare",
                "43",
                "density.reading",
                "67",
                "density.temperature",
                "68",
                "density.instrument",
                "refractometer",
                "transmittance",
                "55",
                "taste",
                "clean")));
    assertTrue(owner.reads("/purchases").text().contains("Fennimore Ash"));
  }

  private List<String> tags(String list) {
    return owner.readsWhole(list).select("tbody th a").eachText();
  }

  private String lot() {
    return owner.reads("/barrels/" + tag).select("dd a[href^=/lots/]").text();
  }
}
