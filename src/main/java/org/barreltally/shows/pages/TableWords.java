package org.barreltally.shows.pages;

import io.quarkus.qute.TemplateExtension;
import org.barreltally.shows.TableLine;

/** What a page says of a line of a table beside its parts. */
@TemplateExtension
final class TableWords {

  private TableWords() {}

  /** Whether anything of it came to the table or left it, all taken together. */
  static boolean moved(TableLine line) {
    return line.packedOut() != 0
        || line.received() != 0
        || line.given() != 0
        || line.back() != 0
        || line.broken() != 0
        || line.sampled() != 0
        || line.sold() != 0
        || line.otherwise() != 0
        || line.onTable() != 0;
  }
}
