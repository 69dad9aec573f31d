package org.barreltally.documents;

import java.time.Instant;
import java.util.UUID;

/**
 * Labels that were printed. Never changed.
 *
 * @param sheet code of the sheet
 * @param startAt the first label used on the first sheet
 * @param reprintOf the print these stand in for; null for a first print
 * @param reason of a reprint
 * @param said what stands on them
 */
public record LabelPrint(
    UUID id,
    String lot,
    String container,
    String sheet,
    int startAt,
    int count,
    UUID reprintOf,
    String reason,
    LabelText said,
    Instant printedAt) {}
