package org.barreltally.bulk;

/**
 * A bulk sale with its buyer, as it stands.
 *
 * @param takenBack whether its movement was reversed since
 */
public record SoldBulk(BulkSale sale, String buyerName, String buyerDetails, boolean takenBack) {}
