package org.barreltally.netcontents;

import java.time.Instant;
import java.util.UUID;
import org.barreltally.measure.Quantity;

/**
 * How much one jar may be short in the US manner, as the owner read it in the handbook: for a
 * container, or for nominal contents over one volume up to and with another.
 *
 * @param id null until it is entered
 * @param container null where a range is given
 * @param over null where a container is given
 * @param upTo null where a container is given
 * @param allowed a weight or a volume
 * @param source where it was read, for example the table and its year
 * @param enteredAt null until it is entered
 */
public record AllowedVariation(
    UUID id,
    String container,
    Quantity over,
    Quantity upTo,
    Quantity allowed,
    String source,
    Instant enteredAt) {}
