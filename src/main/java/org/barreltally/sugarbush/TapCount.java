package org.barreltally.sugarbush;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.LocalDate;

/**
 * So many taps from a day on.
 *
 * @param kind null where it is told for the kind that governs
 * @param note why it changed; may be null
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record TapCount(LocalDate from, Integer count, TapKind kind, String note) {}
