package org.barreltally.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;
import org.barreltally.web.StartPageFigures;
import org.barreltally.web.StartPageNotice;
import org.junit.jupiter.api.Test;

/** What the page of today says of what it is told. */
@QuarkusTest
class StartPageTest {

  private static final LocalDate DUE = LocalDate.of(2026, 3, 14);

  @Inject PageFarm farm;

  private record Figures(Syrup syrup, Shelf shelf) implements StartPageFigures {}

  private record Told(List<Line> lines) implements TodayPart {
    @Override
    public String words() {
      return "today.shows";
    }

    @Override
    public int order() {
      return 1;
    }
  }

  private static final Figures EMPTY =
      new Figures(
          new StartPageFigures.Syrup(
              0, Quantity.of(0, Unit.LB), Quantity.of(0, Unit.GAL), List.of()),
          new StartPageFigures.Shelf(List.of(), List.of()));

  private static final Figures FULL =
      new Figures(
          new StartPageFigures.Syrup(
              2,
              Quantity.of("671.0", Unit.LB),
              Quantity.of("60.53", Unit.GAL),
              List.of(
                  new StartPageFigures.SyrupOfGrade("amber", 1, Quantity.of("40.13", Unit.GAL)),
                  new StartPageFigures.SyrupOfGrade(null, 1, Quantity.of("20.40", Unit.GAL)))),
          new StartPageFigures.Shelf(
              List.of("golden", "amber"),
              List.of(new StartPageFigures.SizeRow("HP", List.of(8L, 1320L), 1328))));

  @Test
  void an_empty_sugarhouse_is_told_what_comes_first() {
    String page = page(EMPTY, List.of(), List.of());
    assertTrue(page.contains("No barrel holds syrup."), page);
    assertTrue(page.contains("No jars yet."), page);
    assertTrue(page.contains("Nothing is due"), page);
    assertFalse(page.contains("<table"), page);
  }

  @Test
  void syrup_is_summed_by_grade_and_jars_by_size_and_grade() {
    String page = text(page(FULL, List.of(), List.of()));
    assertTrue(page.contains("2 barrels and heels: 671.0 lb, 60.53 gal at 68 °F"), page);
    assertTrue(page.contains("Amber, rich taste 1 40.13 not graded 1 20.40"), page);
    assertTrue(page.contains("HP 8 1,320 1,328"), page);
  }

  @Test
  void what_is_past_its_day_says_so() {
    TodayPart.Line late = new TodayPart.Line("Pay for <b>Fernby</b>", "/shows/1", DUE, true);
    String page = page(EMPTY, List.of(), List.of(new Told(List.of(late))));
    assertTrue(text(page).contains("Mar 14, 2026 (past): Pay for &lt;b&gt;Fernby"), page);
    assertTrue(page.contains("href=\"/shows/1\""), page);
    assertFalse(page.contains("Nothing is due"), page);
  }

  @Test
  void a_part_with_nothing_to_see_to_is_left_out() {
    String page = page(EMPTY, List.of(), List.of(new Told(List.of())));
    assertFalse(page.contains(">Shows</h2>"), page);
  }

  @Test
  void notices_come_first_and_what_is_in_order_is_not_said() {
    String page =
        page(
            EMPTY,
            List.of(Optional::empty, () -> Optional.of("The cellar <b>is</b> wet.")),
            List.of());
    assertTrue(page.contains("role=\"status\">The cellar &lt;b&gt;is&lt;/b&gt; wet."), page);
    assertEquals(1, page.split("class=\"notice\"", -1).length - 1);
    assertTrue(page.indexOf("cellar") < page.indexOf("No barrel"), page);
  }

  private String page(Figures figures, List<StartPageNotice> notices, List<TodayPart> parts) {
    return new StartPage(figures, notices, parts, farm).show().render();
  }

  private static String text(String page) {
    return page.replace('\u00a0', ' ').replaceAll("<[^>]*>", " ").replaceAll("\\s+", " ");
  }
}
