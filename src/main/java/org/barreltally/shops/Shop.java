package org.barreltally.shops;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;

/**
 * A shop that sells on consignment.
 *
 * @param details address and whom to ask; null where nothing is known
 * @param place its shelf in the ledger
 * @param terms that hold today, or the first that will
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Shop(
    String code, String name, String details, String place, Instant since, Terms terms) {}
