package org.barreltally.shops;

import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import java.util.List;
import org.barreltally.stock.JarLine;

/**
 * Jars are brought to a shop, or fetched home from it.
 *
 * @param on null for today
 * @param room at home that they leave or go to; null for the cool room
 */
public record MoveJars(
    LocalDate on,
    String room,
    List<JarLine> lines,
    @Size(max = 500, message = "Keep it within 500 characters.") String note) {}
