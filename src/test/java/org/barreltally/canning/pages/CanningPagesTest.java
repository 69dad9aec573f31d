package org.barreltally.canning.pages;

import static org.barreltally.Owner.barrel;
import static org.barreltally.Owner.newTag;
import static org.barreltally.Owner.posts;
import static org.barreltally.PageReader.page;
import static org.barreltally.PageReader.sentTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.barreltally.PageReader;
import org.barreltally.SoundBook;
import org.barreltally.people.PersonFixture;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A run through the pages: reckoned while it is typed, refused, looked over, recorded once. */
@QuarkusTest
class CanningPagesTest {

  private static final String MAKE = "/canning/new";

  @Inject EntityManager entities;
  @Inject PersonFixture people;

  private PageReader owner;
  private String first;
  private String second;

  @BeforeEach
  void two_full_barrels() {
    first = newTag("K");
    second = newTag("L");
    for (String tag : List.of(first, second)) {
      posts("/api/barrels", barrel(tag, 2026, "2026-03-14", 486.5, 42.0, 66.9, 62)).statusCode(201);
    }
    owner = PageReader.owner();
  }

  @Test
  void fill_marks_of_all_sizes_are_reckoned_before_one_is_chosen() {
    Document form = owner.reads(MAKE);
    Document part = reckoning(form, all(form, second));
    // A pint, 473.176 mL, at 66.9 °Bx weighs 628.0 g in air at 20 °C (sucrose densities of the
    // CRC Handbook, air buoyancy taken off).
    assertEquals("628.0", row(part, "PT").select("td").get(0).text());
    // 444.5 lb, at 11.0755 lb in air per gallon, are 40.134 gal or 321.07 pints.
    assertEquals("321", row(part, "PT").select("td").last().text());
    assertTrue(part.select("h3").eachText().contains("Fill marks"), part.text());
  }

  @Test
  void shrink_is_shown_by_cause_and_what_is_unexplained_stands_alone() {
    Document form = owner.reads(MAKE);
    Document part =
        reckoning(
            form,
            and(
                all(form, second),
                "filterHoldUp",
                "11.0755",
                "filterHoldUp.unit",
                "lb",
                count(form, "PT"),
                "304",
                broken(form, "PT"),
                "8"));
    // 40.134 gal less 38 in good pints, 1 in broken ones and 1 in the filter: 0.13 unexplained.
    assertEquals(
        List.of(
            "Filter: 1.00 gal", "Overfill: 0.00 gal", "Broken: 1.00 gal", "Unexplained: 0.13 gal"),
        part.select("figcaption li").eachText().stream()
            .map(text -> text.replace('\u00a0', ' ').replaceFirst(" \\(.*", ""))
            .toList());
    assertEquals(4, part.select("svg rect").size());
    assertEquals("0.0", part.select("svg rect.overfill").attr("width"));
    assertEquals("400.0", part.select("svg rect.filter").attr("width"));
    assertFalse(part.html().contains("<html lang"), "a part, not a page");
  }

  @Test
  void what_cannot_be_reckoned_yet_says_why_and_is_no_error() {
    Document form = owner.reads(MAKE);
    assertTrue(reckoning(form).text().startsWith("Not yet: Name at least one barrel"));
    Document misread = reckoning(form, and(all(form, first), "fillTemperature", "hot"));
    assertTrue(misread.text().contains("“hot” is no number"), misread.text());
  }

  @Test
  void the_button_reckons_without_a_script_and_keeps_what_was_typed() {
    Document form = owner.reads(MAKE);
    Document again =
        page(
            owner.sends(
                form, MAKE, and(all(form, second), count(form, "PT"), "100", "do", "reckon")),
            200);
    assertTrue(again.select("#reckoned").text().contains("of what came in"));
    assertNotNull(line(again, second).selectFirst("input[type=checkbox][checked]"));
    assertNull(line(again, first).selectFirst("input[type=checkbox][checked]"));
    assertEquals("100", again.select("input[name=" + quoted(count(again, "PT")) + "]").val());
  }

  @Test
  void a_refusal_stands_in_the_line_of_its_barrel_though_lines_before_it_are_blank() {
    Document form = owner.reads(MAKE);
    Document again =
        page(
            owner.sends(
                form, MAKE, and(ready(form), named(form, second, ".weight"), "470", "do", "look")),
            409);
    assertTrue(again.title().startsWith("Not recorded"), again.title());
    Element wrong = line(again, second);
    assertTrue(wrong.hasClass("wrong"), wrong.outerHtml());
    assertTrue(wrong.select(".message").text().contains("470"), wrong.text());
    assertEquals("470", wrong.select("input[inputmode=decimal]").val());
    assertFalse(line(again, first).hasClass("wrong"));
    assertEquals(1, again.select(".refusal[role=alert]").size());
  }

  @Test
  void a_run_below_the_capping_temperature_is_refused_before_it_is_shown_for_recording() {
    Document form = owner.reads(MAKE);
    Response refused =
        owner.sends(
            form,
            MAKE,
            and(and(ready(form), all(form, first)), "fillTemperature", "170", "do", "look"));
    Document again = page(refused, 422);
    assertEquals("170", again.select("#f-fillTemperature").val());
    assertTrue(again.select(".refusal").text().contains("170"), again.text());
  }

  @Test
  void looking_records_nothing_and_a_double_click_records_once() {
    Document form = owner.reads(MAKE);
    long before = runs();
    Document check =
        page(owner.sends(form, MAKE, and(and(ready(form), all(form, first)), "do", "look")), 200);
    assertEquals(before, runs());
    assertTrue(check.select("main").text().contains(first), check.text());
    assertEquals(0, check.select("main form input:not([type=hidden])").size());

    String run = sentTo(owner.sends(check, "/canning/new/record"));
    assertEquals(run, sentTo(owner.sends(check, "/canning/new/record")));
    assertEquals(before + 1, runs());
    Document shown = owner.reads(run);
    assertEquals("1 pt", row(shown, "PT").select("th .soft").text().replace('\u00a0', ' '));
    assertEquals("300", row(shown, "PT").select("td").get(2).text());
    assertTrue(shown.select("a[href$=/labels]").hasText());
    assertTrue(owner.readsWhole("/canning").select("tbody th a").eachAttr("href").contains(run));
    SoundBook.check();
  }

  @Test
  void what_was_looked_over_can_be_changed() {
    Document form = owner.reads(MAKE);
    Document check =
        page(owner.sends(form, MAKE, and(and(ready(form), all(form, first)), "do", "look")), 200);
    FormFields fields = FormFields.of(check, "/canning/new/record");
    Document again = page(owner.posts(MAKE, fields.with("do", "change")), 200);
    assertEquals("57", again.select("#f-transmittance").val());
    assertNotNull(line(again, first).selectFirst("input[type=checkbox][checked]"));
  }

  @Test
  void a_size_that_takes_the_rest_is_for_thinking_and_not_for_recording() {
    Document form = owner.reads(MAKE);
    String count = count(form, "HP");
    Document again =
        page(
            owner.sends(
                form,
                MAKE,
                and(
                    and(ready(form), all(form, first)),
                    count.replace(".count", ".rest"),
                    "true",
                    "do",
                    "look")),
            400);
    assertTrue(again.select("#f-fills + .message").text().contains("what-if"), again.text());
  }

  @Test
  void a_bookkeeper_reads_runs_and_makes_none() {
    PageReader reader =
        PageReader.as(people.with("bookkeeper", "sums and more sums"), "sums and more sums");
    assertEquals(0, reader.reads("/canning").select("a[href=/canning/new]").size());
    assertEquals(403, reader.posts(MAKE, Map.of("do", "look")).statusCode());
    assertEquals(403, reader.posts("/canning/new/record", Map.of()).statusCode());
  }

  @Test
  void a_form_without_the_sessions_token_is_not_taken() {
    long before = runs();
    Document form = owner.reads(MAKE);
    Document check =
        page(owner.sends(form, MAKE, and(and(ready(form), all(form, first)), "do", "look")), 200);
    assertEquals(
        403, owner.sends(check, "/canning/new/record", "token", "somebody else’s").statusCode());
    assertEquals(before, runs());
  }

  private Document reckoning(Document form, String... typed) {
    Map<String, String> said = FormFields.of(form, MAKE).with(typed);
    return page(owner.posts("/canning/new/reckoning", said), 200);
  }

  /** Everything but the draws. */
  private static String[] ready(Document form) {
    return new String[] {
      "on", "2026-06-20", count(form, "PT"), "300", "transmittance", "57", "taste", "clean"
    };
  }

  private static String[] and(String[] some, String... more) {
    List<String> all = new ArrayList<>(Arrays.asList(some));
    all.addAll(Arrays.asList(more));
    return all.toArray(String[]::new);
  }

  private static String[] all(Document form, String tag) {
    return new String[] {named(form, tag, ".all"), "true"};
  }

  /** The field of a barrel's line. */
  private static String named(Document form, String tag, String field) {
    return line(form, tag).selectFirst("input[type=hidden]").attr("name").replace(".barrel", field);
  }

  private static Element line(Document form, String tag) {
    return form.selectFirst("tr:has(input[type=hidden][value=" + tag + "])");
  }

  private static String count(Document form, String size) {
    return form.selectFirst("input[type=hidden][value=" + size + "]")
        .attr("name")
        .replace(".container", ".count");
  }

  private static String broken(Document form, String size) {
    return count(form, size).replace(".count", ".broken");
  }

  private static String quoted(String name) {
    return "\"" + name + "\"";
  }

  private static Element row(Document page, String size) {
    return page.select("tbody tr").stream()
        .filter(row -> row.select("th").text().startsWith(size + " "))
        .filter(row -> row.select("input").isEmpty())
        .findFirst()
        .orElseThrow();
  }

  @Transactional
  long runs() {
    return ((Number)
            entities.createNativeQuery("SELECT count(*) FROM canning_runs").getSingleResult())
        .longValue();
  }
}
