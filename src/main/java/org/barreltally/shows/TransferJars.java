package org.barreltally.shows;

import java.time.Instant;
import java.util.List;
import java.util.UUID;

/**
 * Jars go from one table to another.
 *
 * @param to the other show
 * @param lines a lot may be left out
 * @param at when; null for now
 */
public record TransferJars(UUID to, List<JarLine> lines, Instant at) {}
