package org.barreltally.shares;

import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import java.util.List;
import org.barreltally.stock.JarLine;

/**
 * Jars are handed to a landowner.
 *
 * @param on null for today
 * @param room at home that they leave; null for the cool room
 */
public record HandOver(
    LocalDate on,
    String room,
    List<JarLine> lines,
    @Size(max = 500, message = "Keep it within 500 characters.") String note) {}
