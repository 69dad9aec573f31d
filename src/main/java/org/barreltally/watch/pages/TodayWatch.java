package org.barreltally.watch.pages;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import org.barreltally.watch.Watch;
import org.barreltally.watch.WatchItem;
import org.barreltally.web.pages.TodayPart;

/** What is low, held for long, warm, or ageing. */
@ApplicationScoped
class TodayWatch implements TodayPart {

  private static final int LINES_MAX = 30;

  private final Watch watch;

  TodayWatch(Watch watch) {
    this.watch = watch;
  }

  @Override
  public String words() {
    return "today.look-at";
  }

  @Override
  public int order() {
    return 30;
  }

  @Override
  public List<Line> lines() {
    return watch.list(null, LINES_MAX).stream()
        .map(item -> new Line(item.reason(), link(item), null, false))
        .toList();
  }

  private static String link(WatchItem item) {
    if (item.tag() != null) {
      return "/barrels/" + item.tag();
    }
    return item.lot() == null ? null : "/lots/" + item.lot();
  }
}
