package org.barreltally.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.barreltally.web.StartPageFigures;
import org.barreltally.web.StartPageFigures.BarrelRow;
import org.barreltally.web.StartPageFigures.JarRow;
import org.barreltally.web.StartPageNotice;
import org.junit.jupiter.api.Test;

@QuarkusTest
class StartPageTest {

  private record Figures(List<BarrelRow> barrels, List<JarRow> jars) implements StartPageFigures {}

  @Test
  void an_empty_sugarhouse_is_told_what_comes_first() {
    String page = page(List.of(), List.of());
    assertTrue(page.contains("No barrel filled yet."), page);
    assertTrue(page.contains("No jars yet."), page);
    assertFalse(page.contains("<table"), page);
  }

  @Test
  void barrels_are_listed_with_what_they_hold_together() {
    String page = page(List.of(barrel("B-01", "444.5", false), barrel("B-02", "226.5", true)));
    assertTrue(text(page).contains("2 barrels and heels, 671.0 lb, 80.26 gal at 68"), page);
    assertTrue(text(page).contains("B-02 F-24-001 Amber, Rich full held 226.5 40.13 66.9"), page);
    assertEquals(1, page.split("class=\"held\"", -1).length - 1);
  }

  @Test
  void what_is_not_known_yet_is_said_and_not_left_blank() {
    BarrelRow ungraded =
        new BarrelRow("B-03", null, null, "full", false, BigDecimal.ONE, BigDecimal.ONE, null);
    assertTrue(text(page(List.of(ungraded))).contains("B-03 – not graded full 1.0 1.00 –"));
  }

  @Test
  void jars_are_listed_by_lot_and_place() {
    String page =
        page(List.of(), List.of(new JarRow("cool-room", "HP", null, "PL-24-07", 320, 12)));
    assertTrue(text(page).contains("HP not graded PL-24-07 cool-room 320 12"), page);
  }

  @Test
  void what_people_typed_stays_text() {
    String page = page(List.of(barrel("<script>alert(1)</script>", "1", false)));
    assertFalse(page.contains("<script"), page);
    assertTrue(page.contains("&lt;script&gt;"), page);
  }

  @Test
  void what_there_is_to_see_to_is_said_first_and_what_is_in_order_is_not() {
    String page =
        page(
            List.of(),
            List.of(),
            List.of(Optional::empty, () -> Optional.of("The cellar <b>is</b> wet.")));
    assertTrue(page.contains("role=\"status\">The cellar &lt;b&gt;is&lt;/b&gt; wet."), page);
    assertEquals(1, page.split("class=\"notice\"", -1).length - 1);
    assertTrue(page.indexOf("cellar") < page.indexOf("No barrel"), page);
  }

  private static BarrelRow barrel(String tag, String pounds, boolean held) {
    return new BarrelRow(
        tag,
        "F-24-001",
        "Amber, Rich",
        "full",
        held,
        new BigDecimal(pounds),
        new BigDecimal("40.134"),
        new BigDecimal("66.9"));
  }

  private static String page(List<BarrelRow> barrels) {
    return page(barrels, List.of());
  }

  private static String page(List<BarrelRow> barrels, List<JarRow> jars) {
    return page(barrels, jars, List.of());
  }

  private static String page(
      List<BarrelRow> barrels, List<JarRow> jars, List<StartPageNotice> notices) {
    return new StartPage(new Figures(barrels, jars), notices).show().render();
  }

  private static String text(String page) {
    return page.replaceAll("<[^>]*>", " ").replaceAll("\\s+", " ");
  }
}
