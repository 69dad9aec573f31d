package org.barreltally.sugarbush;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.UUID;

/**
 * On whose land trees are tapped.
 *
 * @param address lines, may be null
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Landowner(UUID id, String name, String address) {}
