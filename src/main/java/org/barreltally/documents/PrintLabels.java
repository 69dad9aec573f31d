package org.barreltally.documents;

import java.math.BigDecimal;
import java.util.UUID;

/**
 * Says that labels are printed.
 *
 * @param sheet null for the owner's
 * @param startAt null for the first label
 * @param panelArea of the container, square inches; null for a guess
 * @param gtin the owner's number of such a jar; may be null
 * @param award whether the lot's newest ribbon stands on them; null for no
 * @param reprintOf null for a first print
 * @param reason needed for a reprint
 */
public record PrintLabels(
    String container,
    Integer count,
    String sheet,
    Integer startAt,
    BigDecimal panelArea,
    String gtin,
    Boolean award,
    UUID reprintOf,
    String reason) {

  JarLabel label() {
    return new JarLabel(container, panelArea, gtin, Boolean.TRUE.equals(award));
  }
}
