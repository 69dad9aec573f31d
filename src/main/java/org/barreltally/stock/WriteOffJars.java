package org.barreltally.stock;

import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;

/**
 * Jars are gone for a named cause.
 *
 * @param count pieces
 * @param reason further words; may be null
 */
public record WriteOffJars(
    @NotBlank(message = JarWords.PLACE) @Size(max = 40, message = JarWords.PLACE) String place,
    @NotBlank(message = JarWords.CONTAINER) @Size(max = 12, message = JarWords.CONTAINER)
        String container,
    @NotBlank(message = JarWords.LOT) @Size(max = 20, message = JarWords.LOT) String lot,
    @NotNull(message = JarWords.COUNT)
        @Min(value = 1, message = JarWords.COUNT)
        @Max(value = JarWords.COUNT_MAX, message = JarWords.COUNT)
        Long count,
    @NotNull(message = "Say what became of them: broken, sampled, discarded, given or unexplained.")
        Cause cause,
    @Size(max = JarWords.REASON_MAX, message = JarWords.REASON) String reason) {}
