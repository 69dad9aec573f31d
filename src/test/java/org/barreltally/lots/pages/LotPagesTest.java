package org.barreltally.lots.pages;

import static org.barreltally.Owner.barrel;
import static org.barreltally.Owner.newTag;
import static org.barreltally.Owner.posts;
import static org.barreltally.PageReader.page;
import static org.barreltally.PageReader.sentTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.barreltally.PageReader;
import org.barreltally.people.PersonFixture;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A packed lot on its page: family, whereabouts, hold, grading, labels. */
@QuarkusTest
class LotPagesTest {

  @Inject PersonFixture people;

  private PageReader owner;
  private String bulk;
  private String packed;

  /** Half a barrel in pints. */
  @BeforeEach
  void a_run() {
    String tag = newTag("M");
    bulk =
        posts("/api/barrels", barrel(tag, 2026, "2026-03-14", 486.5, 42.0, 66.9, 62))
            .statusCode(201)
            .extract()
            .path("lot");
    packed =
        posts(
                "/api/canning/runs",
                """
                {'on': '2026-06-20', 'draws': [{'barrel': '%s', 'weight': {'value': 222, 'unit': 'lb'}}],
                 'fillTemperature': {'value': 185, 'unit': 'degF'},
                 'fills': [{'container': 'PT', 'count': 160}], 'transmittance': 57, 'taste': 'clean'}
                """
                    .formatted(tag))
            .statusCode(201)
            .extract()
            .path("lot");
    owner = PageReader.owner();
  }

  @Test
  void the_family_is_drawn_with_shares_and_stands_beside_as_text() {
    Document lot = owner.reads("/lots/" + packed);
    assertEquals(
        List.of(bulk, "100.0 %"),
        lot.select("svg.tree a text").eachText().stream().map(LotPagesTest::plain).toList());
    assertEquals("/lots/" + bulk, lot.select("svg.tree a").attr("href"));
    assertEquals("100.0 %", plain(lot.select("svg.tree text.share").text()));
    assertEquals(1, lot.select("svg.tree title").size());
    assertTrue(lot.select("h3:contains(Made of) + table th a").eachText().contains(bulk));
    assertTrue(
        owner
            .reads("/lots/" + bulk)
            .select("h3:contains(Went into) + table th a")
            .eachText()
            .contains(packed));
  }

  @Test
  void whereabouts_are_told_in_words() {
    Document lot = owner.reads("/lots/" + packed);
    assertTrue(lot.text().contains("The book knows where 160 of 160 jars are"), lot.text());
    assertEquals(
        "Cool room " + packed + " PT 160 sure",
        lot.select("h2:contains(Where its jars) ~ table tbody tr").first().text());
  }

  @Test
  void a_hold_needs_a_reason_and_a_release_undoes_it() {
    String hold = "/lots/" + packed + "/hold";
    Document refused = page(owner.sends(owner.reads(hold), hold), 400);
    assertEquals("true", refused.select("#f-reason").attr("aria-invalid"));
    assertEquals(
        "/lots/" + packed,
        sentTo(owner.sends(owner.reads(hold), hold, "reason", "Mold in two pints")));
    assertEquals("held", owner.reads("/lots/" + packed).select("h1 .held").text());
    sentTo(owner.sends(owner.reads(hold), hold, "reason", "Loose caps"));
    assertEquals(0, owner.reads("/lots/" + packed).select("h1 .held").size());
  }

  @Test
  void a_grading_changes_the_grade() {
    String grade = "/lots/" + packed + "/grade";
    sentTo(
        owner.sends(
            owner.reads(grade),
            grade,
            "on",
            "2026-09-10",
            "transmittance",
            "48",
            "taste",
            "clean"));
    assertTrue(owner.reads("/lots/" + packed).text().contains("Dark, robust taste"));
  }

  @Test
  void a_print_of_labels_is_recorded_once_and_can_be_opened() {
    String labels = "/lots/" + packed + "/labels";
    Document form = owner.reads(labels);
    Document refused = page(owner.sends(form, labels, "startAt", "400", "count", "12"), 400);
    assertEquals("12", refused.select("#f-count").val());
    assertTrue(refused.select("#f-startAt-message").hasText(), refused.text());
    sentTo(owner.sends(form, labels, "count", "12", "startAt", "3"));
    sentTo(owner.sends(form, labels, "count", "12", "startAt", "3"));
    Document done = owner.reads(labels);
    assertEquals(1, done.select("h2:contains(Prints) + table tbody tr").size());
    assertTrue(done.select("table a").attr("href").endsWith("/labels.pdf"));
  }

  @Test
  void weighed_jars_are_judged_and_a_misread_weight_keeps_the_others() {
    String check = "/canning/runs/" + packed + "/net-contents";
    Document form = owner.reads(check);
    Document refused =
        page(owner.sends(form, check, "lotSize", "160", "netWeights", "625.16 x2 626.08"), 400);
    assertEquals("625.16 x2 626.08", refused.select("#f-netWeights").val());
    assertTrue(refused.select("#f-netWeights-message").text().contains("x2"), refused.text());
    // Twelve pints with mean 626.9 g and s 1.9 g: −1.1 is not below −0.635 × 1.9 = −1.21, passes
    // (average test of NIST Handbook 133, factor t/√n).
    sentTo(
        owner.sends(
            form,
            check,
            "lotSize",
            "160",
            "regime",
            "us",
            "netWeights",
            "625.16 628.33 626.08 629.96\n624.45 627.41 626.59 628.84 625.78 627.0 624.04 629.16"));
    Document judged = owner.reads(check);
    assertEquals("passes", judged.select(".result dd").first().text());
    assertTrue(plain(judged.select(".result").text()).contains("Mean 626.90 g"), judged.text());
  }

  @Test
  void a_bookkeeper_reads_and_is_offered_nothing_to_do() {
    PageReader reader =
        PageReader.as(people.with("bookkeeper", "sums and more sums"), "sums and more sums");
    Document lot = reader.reads("/lots/" + packed);
    assertEquals(
        0, lot.select("main a[href$=/hold], main a[href$=/grade], main a[href^=/recalls]").size());
    assertEquals(
        403, reader.posts("/lots/" + packed + "/hold", Map.of("reason", "x")).statusCode());
    assertEquals(0, reader.reads("/lots/" + packed + "/labels").select("main form").size());
  }

  private static String plain(String text) {
    return text.replace('\u00a0', ' ');
  }
}
