package org.barreltally.stock;

import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;

/**
 * Jars are carried from one own place to another.
 *
 * @param count pieces
 */
public record RelocateJars(
    @NotBlank(message = JarWords.PLACE) @Size(max = 40, message = JarWords.PLACE) String from,
    @NotBlank(message = JarWords.PLACE) @Size(max = 40, message = JarWords.PLACE) String to,
    @NotBlank(message = JarWords.CONTAINER) @Size(max = 12, message = JarWords.CONTAINER)
        String container,
    @NotBlank(message = JarWords.LOT) @Size(max = 20, message = JarWords.LOT) String lot,
    @NotNull(message = JarWords.COUNT)
        @Min(value = 1, message = JarWords.COUNT)
        @Max(value = JarWords.COUNT_MAX, message = JarWords.COUNT)
        Long count,
    @NotBlank(message = "Say why they are carried.")
        @Size(max = JarWords.REASON_MAX, message = JarWords.REASON)
        String reason) {}
