package org.barreltally.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.barreltally.PagePaths;
import org.barreltally.start.Program;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every page that links lead to from the first one, once with nothing in the book and once with the
 * demo's season: nothing in the way of anybody by WCAG 2.2 A and AA (axe-core), no wider than a
 * phone or a laptop, targets of 44 px, nothing that moves once seen, and no complaint of the
 * browser.
 */
class EveryPageIT {

  private static final int LEAST_PAGES = 60;

  /** How many pages of one shape are looked at. */
  private static final int OF_A_SHAPE = Integer.getInteger("barreltally.of-a-shape", 1);

  @TempDir Path folder;

  /** Looks at all pages, as many of each shape as set, and gives their paths. */
  private static Set<String> pages(
      Screen screen, String what, boolean judged, List<String> faults) {
    Set<String> found = new LinkedHashSet<>();
    Map<String, Integer> times = new HashMap<>();
    Set<String> seen = new HashSet<>();
    Deque<String> ahead = new ArrayDeque<>(List.of("/"));
    while (!ahead.isEmpty()) {
      String path = ahead.remove();
      if (!seen.add(path)
          || !PagePaths.isPage(path)
          || times.merge(PagePaths.shape(path), 1, Integer::sum) > OF_A_SHAPE) {
        continue;
      }
      assertEquals(200, screen.opens(path), path);
      found.add(path);
      ahead.addAll(screen.links());
      look(screen, what + " phone " + path, judged, faults);
      screen.becomes(Screen.LAPTOP);
      fits(screen, what + " laptop " + path, faults);
      screen.becomes(Screen.PHONE);
    }
    return found;
  }

  private static void look(Screen screen, String where, boolean judged, List<String> faults) {
    if (judged) {
      screen.barriers().forEach(fault -> faults.add(where + "  " + fault));
    }
    screen.smallTargets().forEach(fault -> faults.add(where + "  small target " + fault));
    screen.complaints().forEach(fault -> faults.add(where + "  browser: " + fault));
    fits(screen, where, faults);
    if (screen.shifted() > 0 && movesAgain(screen)) {
      faults.add(where + "  moved by " + screen.shifted());
    }
    if (screen.page().title().isBlank() || screen.page().locator("h1").count() != 1) {
      faults.add(where + "  no title, or not one heading");
    }
  }

  /**
   * A page that came in parts was shown in parts; what moves by itself moves whenever it is opened.
   */
  private static boolean movesAgain(Screen screen) {
    screen.opens(screen.path());
    return screen.shifted() > 0;
  }

  private static void fits(Screen screen, String where, List<String> faults) {
    if (screen.tooWide() > 0) {
      faults.add(where + "  too wide by " + screen.tooWide() + " px");
    }
    screen.picture(where);
  }

  private void everywhere(boolean demo) throws Exception {
    Map<String, String> settings = Program.ownBook(folder);
    String what = demo ? "season" : "empty";
    List<String> faults = new ArrayList<>();
    try (Program program = demo ? Program.startSeason(settings) : Program.start(settings);
        Screen screen = Screen.of(program.awaitReady(), Screen.PHONE).isLetIn()) {
      // The season's pages hold all that those of an empty book do but what says that it is empty.
      boolean judged = demo || OF_A_SHAPE > 1;
      if (judged) {
        screen.judgesEveryPage();
      }
      Set<String> pages = pages(screen, what, judged, faults);
      assertTrue(pages.size() >= (demo ? LEAST_PAGES : LEAST_PAGES / 2), () -> "only " + pages);
    }
    assertEquals("", String.join("\n", faults));
  }

  @Test
  void with_nothing_in_the_book() throws Exception {
    everywhere(false);
  }

  @Test
  void with_a_season() throws Exception {
    everywhere(true);
  }
}
