package org.barreltally.sugarbush.boiling;

import java.time.Instant;

/** That an entry was taken back: it counts for nothing and stays to be read. */
public record Reversed(String reason, Instant at) {}
