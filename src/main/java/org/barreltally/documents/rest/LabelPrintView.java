package org.barreltally.documents.rest;

import java.time.Instant;
import java.util.UUID;
import org.barreltally.documents.LabelPrint;

/**
 * A print of labels as the interface shows it.
 *
 * @param reprint whether these stand in for an earlier print
 */
public record LabelPrintView(
    UUID id,
    String lot,
    String container,
    int count,
    String sheet,
    int startAt,
    Instant printedAt,
    boolean reprint,
    UUID reprintOf,
    String reason) {

  static LabelPrintView of(LabelPrint print) {
    return new LabelPrintView(
        print.id(),
        print.lot(),
        print.container(),
        print.count(),
        print.sheet(),
        print.startAt(),
        print.printedAt(),
        print.reprintOf() != null,
        print.reprintOf(),
        print.reason());
  }
}
