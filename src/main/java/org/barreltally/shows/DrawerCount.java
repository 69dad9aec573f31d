package org.barreltally.shows;

import java.time.Instant;
import java.util.UUID;
import org.barreltally.pricing.Money;

/**
 * A count of a cash drawer as it is kept.
 *
 * @param counted by its notes and coins; the total written down where nobody counted them
 * @param finding why it does not add up; null where it does
 */
public record DrawerCount(
    UUID id, String drawer, Drawer said, Money counted, String finding, Instant at) {}
