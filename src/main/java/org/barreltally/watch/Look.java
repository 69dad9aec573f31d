package org.barreltally.watch;

import java.time.LocalDate;
import java.util.List;

/** Looks at one kind of thing, as the book stands. */
interface Look {
  List<WatchItem> items(LocalDate today);
}
