package org.barreltally.bulk;

import java.time.Instant;

/**
 * A bulk sale with its buyer, as it stands.
 *
 * @param takenBack whether its movement was reversed since
 */
public record SoldBulk(
    BulkSale sale, Instant recordedAt, String buyerName, String buyerDetails, boolean takenBack) {}
