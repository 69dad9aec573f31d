package org.barreltally.web.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import org.barreltally.web.Page;
import org.barreltally.web.PageRequest;

/** All parts of a list of the interface, for a page that sorts it. */
public final class WholeList {

  /** More rows than a person looks through; what lies beyond is reached with filters. */
  private static final int ROWS_MAX = 5_000;

  private WholeList() {}

  /**
   * @param part the list for a limit and what the part before said as {@code next}
   */
  public static <T> List<T> of(BiFunction<String, String, Page<T>> part) {
    List<T> all = new ArrayList<>();
    String after = null;
    do {
      Page<T> page = part.apply(String.valueOf(PageRequest.LIMIT_MAX), after);
      all.addAll(page.items());
      after = page.next();
    } while (after != null && all.size() < ROWS_MAX);
    return all;
  }
}
