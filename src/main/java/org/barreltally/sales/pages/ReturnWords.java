package org.barreltally.sales.pages;

import io.quarkus.qute.TemplateExtension;
import org.barreltally.sales.away.Returned;

/** What a page says of a return beside its parts. */
@TemplateExtension
final class ReturnWords {

  private ReturnWords() {}

  /** Whether some of its jars wait for inspection. */
  static boolean waits(Returned returned) {
    return returned.lines().stream().anyMatch(line -> line.toInspect() > 0);
  }
}
